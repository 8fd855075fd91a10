import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { en } from '../../src/message/en/index.js'
import { UNITS_BY_MEASURE, type Unit } from '../../src/quantity/unit.js'
import { law } from '../support/law.js'

const { numeral, quantity, name, band, range, duration } = en.speech

const DIGITS = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine']
const TEENS = [
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
]
const TENS = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety']

/** Reads number words back, according to the rules of English, not with the code under test. */
function readWords(words: string): number {
  let total = 0
  let current = 0
  for (const word of words.replace(/ and /g, ' ').split(/[ -]/)) {
    if (DIGITS.includes(word)) current += DIGITS.indexOf(word)
    else if (TEENS.includes(word)) current += 10 + TEENS.indexOf(word)
    else if (TENS.includes(word)) current += 20 + 10 * TENS.indexOf(word)
    else if (word === 'hundred') current *= 100
    else {
      total += current * (word === 'thousand' ? 1_000 : 1_000_000)
      current = 0
    }
  }
  return total + current
}

describe('numbers in words', () => {
  // Typed by hand.
  it.each([
    ['0', 'zero'],
    ['8.9', 'eight point nine'],
    ['10.0', 'ten'],
    ['0.50', 'zero point five'],
    ['100.00', 'one hundred'],
    ['-12.05', 'minus twelve point zero five'],
    ['−3', 'minus three'],
    ['21', 'twenty-one'],
    ['100', 'one hundred'],
    ['450', 'four hundred and fifty'],
    ['1001', 'one thousand and one'],
    ['14021', 'fourteen thousand and twenty-one'],
    ['2500', 'two thousand five hundred'],
    ['1000000', 'one million'],
    ['1234567890', 'one two three four five six seven eight nine zero'],
    ['½', '½'],
  ])('%s is %s', (digits, words) => {
    expect(numeral(digits)).toBe(words)
  })

  it('says names as people read them', () => {
    expect(name('SAE 80W-90, API GL-5')).toBe('SAE eighty W ninety, API GL five')
    expect(name('10 mm hex bit socket')).toBe('ten millimetre hex bit socket')
    expect(name('Brodmark WB-4')).toBe('Brodmark WB four')
    expect(name('1/2 in torque wrench')).toBe('half inch torque wrench')
    expect(name('3/8 in square key')).toBe('three eighths inch square key')
    expect(name('1/2 to 3/8 in adaptor')).toBe('half to three eighths inch adaptor')
    expect(name('bracket 11/2')).toBe('bracket 11/2')
  })

  it('says a printed fraction and a printed cc', () => {
    const say = (value: string, asPrinted: string, unit: Unit) =>
      band({ kind: 'nominal', value, asPrinted, unit })
    expect(say('7.5', '7 1/2', 'lbf.ft')).toBe('seven and a half foot-pounds')
    expect(say('0.5', '½', 'qt_us')).toBe('half a US quart')
    expect(say('2.875', '2⅞', 'qt_us')).toBe('two and seven eighths US quarts')
    expect(say('0.75', '3/4', 'pt_us')).toBe('three quarters of a US pint')
    expect(say('450', '450 cc', 'mL')).toBe('four hundred and fifty cc')
    expect(quantity('450', 'cm3')).toBe('four hundred and fifty cc')
  })

  const figure = fc
    .tuple(fc.integer({ min: 0, max: 999_999_999 }), fc.stringMatching(/^[0-9]{0,6}$/))
    .map(([whole, decimals]) => (decimals === '' ? String(whole) : `${whole}.${decimals}`))
  it('every figure in every unit is read back as the same number', () => {
    law(200, figure, fc.constantFrom(...Object.values(UNITS_BY_MEASURE).flat()), (digits, unit) => {
      const spoken = quantity(digits, unit)
      const unitName = quantity('2', unit).slice('two '.length)
      const singular = quantity('1', unit).slice('one '.length)
      const ending = spoken.endsWith(` ${unitName}`) ? unitName : singular
      expect(spoken.endsWith(` ${ending}`)).toBe(true)
      const [whole = '', decimals = ''] = spoken.slice(0, -ending.length - 1).split(' point ')
      const after = decimals.split(' ').map((word) => DIGITS.indexOf(word))
      expect(Number(`${readWords(whole)}.${decimals === '' ? '0' : after.join('')}`)).toBe(Number(digits))
      expect(spoken).not.toMatch(/[0-9]/)
    })
  })

  it('any whole number is read back', () => {
    law(200, fc.integer({ min: 0, max: 999_999_999 }), (value) => {
      expect(readWords(numeral(String(value)))).toBe(value)
    })
  })

  it('names every unit of the table, one and many', () => {
    for (const unit of Object.values(UNITS_BY_MEASURE).flat()) {
      expect(quantity('1', unit)).toMatch(/^one [A-Za-z]/)
      expect(quantity('2', unit)).toMatch(/^two [A-Za-z]/)
      expect(quantity('2', unit)).not.toMatch(/[0-9_./]/)
    }
    expect(quantity('8.9', 'lbf.ft')).toBe('eight point nine foot-pounds')
    expect(quantity('1', 'N.m')).toBe('one newton metre')
  })

  it('says bands and ranges', () => {
    expect(band({ kind: 'nominal', value: '30', unit: 'N.m' })).toBe('thirty newton metres')
    expect(band({ kind: 'limits', min: '20', max: '25', unit: 'N.m' })).toBe(
      'twenty to twenty-five newton metres',
    )
    expect(band({ kind: 'limits', min: '20', unit: 'N.m' })).toBe('at least twenty newton metres')
    expect(band({ kind: 'limits', max: '20', unit: 'N.m' })).toBe('at most twenty newton metres')
    expect(band({ kind: 'nominal with tolerance', value: '20', minus: '2', plus: '2', unit: 'N.m' })).toBe(
      'twenty plus or minus two newton metres',
    )
    expect(band({ kind: 'nominal with tolerance', value: '20', minus: '2', plus: '3', unit: 'N.m' })).toBe(
      'twenty plus three minus two newton metres',
    )
    expect(range('two', 'three')).toBe('two to three')
  })

  it('says durations', () => {
    expect(duration(3661)).toBe('one hour one minute one second')
    expect(duration(120)).toBe('two minutes')
    expect(duration(0)).toBe('zero seconds')
  })
})
