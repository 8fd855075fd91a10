import { fc, test } from '@fast-check/vitest'
import { describe, expect, it } from 'vitest'
import { en } from '../../src/message/en/index.js'
import { UNITS_BY_MEASURE } from '../../src/quantity/unit.js'

const { numeral, quantity, band, range, duration } = en.speech

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

/** Reads number words back, written from the rules of English and not from the code under test. */
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
  // Worked by hand.
  it.each([
    ['0', 'zero'],
    ['8.9', 'eight point nine'],
    ['10.0', 'ten point zero'],
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

  test.prop([fc.integer({ min: 0, max: 999_999_999 })])('any whole number is read back', (value) => {
    expect(readWords(numeral(String(value)))).toBe(value)
  })

  it('names every unit of the table, one and many', () => {
    for (const unit of Object.values(UNITS_BY_MEASURE).flat()) {
      expect(quantity('1', unit)).toMatch(/^one [A-Za-z]/)
      expect(quantity('2', unit)).toMatch(/^two [A-Za-z]/)
      expect(quantity('2', unit)).not.toMatch(/[0-9_./]/)
    }
    expect(quantity('8.9', 'lbf.ft')).toBe('eight point nine pound-feet')
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
