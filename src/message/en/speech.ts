import type { PrintedBand, Unit } from '../../quantity/index.js'
import type { SpeechWords } from '../catalogue.js'
import { splitDuration, splitFraction, splitNumeral } from '../phrases.js'

const ONES =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  )
const TENS = '- - twenty thirty forty fifty sixty seventy eighty ninety'.split(' ')

function spellBelowThousand(value: number): string {
  if (value < 20) return ONES[value] ?? ''
  if (value < 100) {
    const remainder = value % 10
    return `${TENS[Math.floor(value / 10)]}${remainder === 0 ? '' : `-${ONES[remainder]}`}`
  }
  const remainder = value % 100
  return `${ONES[Math.floor(value / 100)]} hundred${remainder === 0 ? '' : ` and ${spellBelowThousand(remainder)}`}`
}

function spellWholeNumber(value: number): string {
  if (value < 1000) return spellBelowThousand(value)
  const [size, name] = value < 1_000_000 ? [1000, 'thousand'] : ([1_000_000, 'million'] as const)
  const remainder = value % Number(size)
  const joiner = remainder > 0 && remainder < 100 ? ' and ' : ' '
  return `${spellWholeNumber(Math.floor(value / Number(size)))} ${name}${remainder === 0 ? '' : `${joiner}${spellWholeNumber(remainder)}`}`
}

/**
 * `-8.90` as `minus eight point nine`: zeros at the end are not spoken. More than nine digits before the point are spoken
 * one by one.
 */
function numeral(digits: string): string {
  const parts = splitNumeral(digits)
  if (parts === undefined) return digits
  const { isNegative, before, after } = parts
  const spellDigits = (text: string) => Array.from(text, (digit) => ONES[Number(digit)]).join(' ')
  const wholeWords = before.length > 9 ? spellDigits(before) : spellWholeNumber(Number(before))
  return `${isNegative ? 'minus ' : ''}${wholeWords}${after === '' ? '' : ` point ${spellDigits(after)}`}`
}

/** Singular and plural, as people say them. */
const UNIT_NAMES: Readonly<Record<Unit, readonly [string, string]>> = {
  'N.m': ['newton metre', 'newton metres'],
  'cN.m': ['centinewton metre', 'centinewton metres'],
  'dN.m': ['decinewton metre', 'decinewton metres'],
  'kN.m': ['kilonewton metre', 'kilonewton metres'],
  'lbf.ft': ['foot-pound', 'foot-pounds'],
  'lbf.in': ['inch-pound', 'inch-pounds'],
  'ozf.in': ['inch-ounce', 'inch-ounces'],
  'kgf.m': ['kilogram-force metre', 'kilogram-force metres'],
  'kgf.cm': ['kilogram-force centimetre', 'kilogram-force centimetres'],
  mL: ['millilitre', 'millilitres'],
  L: ['litre', 'litres'],
  cm3: ['cc', 'cc'],
  fl_oz_us: ['US fluid ounce', 'US fluid ounces'],
  pt_us: ['US pint', 'US pints'],
  qt_us: ['US quart', 'US quarts'],
  gal_us: ['US gallon', 'US gallons'],
  fl_oz_imp: ['imperial fluid ounce', 'imperial fluid ounces'],
  pt_imp: ['imperial pint', 'imperial pints'],
  qt_imp: ['imperial quart', 'imperial quarts'],
  gal_imp: ['imperial gallon', 'imperial gallons'],
  mm: ['millimetre', 'millimetres'],
  cm: ['centimetre', 'centimetres'],
  m: ['metre', 'metres'],
  in: ['inch', 'inches'],
  ft: ['foot', 'feet'],
  km: ['kilometre', 'kilometres'],
  mi: ['mile', 'miles'],
  N: ['newton', 'newtons'],
  kN: ['kilonewton', 'kilonewtons'],
  lbf: ['pound-force', 'pounds-force'],
  kPa: ['kilopascal', 'kilopascals'],
  MPa: ['megapascal', 'megapascals'],
  bar: ['bar', 'bar'],
  psi: ['pound per square inch', 'pounds per square inch'],
  degC: ['degree Celsius', 'degrees Celsius'],
  degF: ['degree Fahrenheit', 'degrees Fahrenheit'],
  K: ['kelvin', 'kelvins'],
  degC_diff: ['Celsius degree', 'Celsius degrees'],
  degF_diff: ['Fahrenheit degree', 'Fahrenheit degrees'],
  K_diff: ['kelvin', 'kelvins'],
  g: ['gram', 'grams'],
  kg: ['kilogram', 'kilograms'],
  oz: ['ounce', 'ounces'],
  lb: ['pound', 'pounds'],
  h: ['hour', 'hours'],
  min: ['minute', 'minutes'],
  s: ['second', 'seconds'],
  d: ['day', 'days'],
  deg: ['degree', 'degrees'],
  'km/h': ['kilometre per hour', 'kilometres per hour'],
  mph: ['mile per hour', 'miles per hour'],
  'mm2/s': ['square millimetre per second', 'square millimetres per second'],
  'mPa.s': ['millipascal second', 'millipascal seconds'],
  'kg/m3': ['kilogram per cubic metre', 'kilograms per cubic metre'],
}

function quantity(digits: string, unit: Unit): string {
  return `${numeral(digits)} ${UNIT_NAMES[unit][digits === '1' ? 0 : 1]}`
}

const FRACTION_NAMES: Readonly<Record<string, string>> = {
  '2': 'half',
  '3': 'third',
  '4': 'quarter',
  '8': 'eighth',
  '16': 'sixteenth',
}

/** `7 1/2` as `seven and a half`; undefined if the text is not such a fraction. */
function spellFraction(asPrinted: string, [singular, plural]: readonly [string, string]): string | undefined {
  const { whole, numerator = '', denominator = '' } = splitFraction(asPrinted) ?? {}
  const name = FRACTION_NAMES[denominator]
  if (name === undefined) return undefined
  const article = name.startsWith('e') ? 'an' : 'a'
  const part = numerator === '1' ? `${article} ${name}` : `${numeral(numerator)} ${name}s`
  if (whole !== undefined) return `${numeral(whole)} and ${part} ${plural}`
  return name === 'half' ? `half a ${singular}` : `${part} of a ${singular}`
}

/**
 * A name with its numbers in words: `10 mm socket` as `ten millimetre socket`; one with another fraction stays as it
 * is.
 */
function name(written: string): string {
  const text = written.replace(
    /\b([0-9]{1,2})\/([0-9]{1,2})\b(?![/.])([ \u00a0]?in\b)?/g,
    (match, numerator, denominator, inch) => {
      const fraction = FRACTION_NAMES[denominator]
      if (fraction === undefined || Number(numerator) >= Number(denominator)) return match
      const words = numerator === '1' ? fraction : `${numeral(numerator)} ${fraction}s`
      return inch === undefined ? words : `${words} inch`
    },
  )
  if (text.includes('/')) return text
  return text
    .replace(/(?<=[0-9])[ \u00a0]?mm\b/g, ' millimetre')
    .replace(
      /[-–]?([0-9]{1,9}(?:\.[0-9]{1,6})?)(?![0-9])/g,
      (_match, digits: string) => ` ${numeral(digits)} `,
    )
    .replace(/[ \u00a0]{2,}/g, ' ')
    .replace(/ (?=[,.;:)]|$)/g, '')
    .trim()
}

function band(value: PrintedBand): string {
  const { asPrinted = '' } = value
  if (/\bcc\b/i.test(asPrinted) && value.unit === 'mL') return band({ ...value, unit: 'cm3' })
  if (value.kind === 'nominal')
    return spellFraction(asPrinted, UNIT_NAMES[value.unit]) ?? quantity(value.value, value.unit)
  if (value.kind === 'nominal with tolerance') {
    const { value: nominal, minus, plus, unit } = value
    if (minus === plus) return `${numeral(nominal)} plus or minus ${quantity(plus, unit)}`
    return `${numeral(nominal)} plus ${numeral(plus)} minus ${quantity(minus, unit)}`
  }
  const { min, max, unit } = value
  if (min !== undefined && max !== undefined) return `${numeral(min)} to ${quantity(max, unit)}`
  return min === undefined ? `at most ${quantity(max ?? '', unit)}` : `at least ${quantity(min, unit)}`
}

const duration = (seconds: number): string =>
  splitDuration(seconds)
    .map(({ count, unit }) => quantity(String(count), unit))
    .join(' ')

/** English numbers and units for speech. */
export const speechWords: SpeechWords = {
  numeral,
  quantity,
  name,
  range: (from, to) => `${from} to ${to}`,
  band,
  duration,
}
