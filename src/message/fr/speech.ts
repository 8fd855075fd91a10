import type { PrintedBand, Unit } from '../../quantity/index.js'
import type { SpeechWords } from '../catalogue.js'
import { splitDuration, splitFraction, splitNumeral } from '../phrases.js'

const ONES =
  'zéro un deux trois quatre cinq six sept huit neuf dix onze douze treize quatorze quinze seize dix-sept dix-huit dix-neuf'.split(
    ' ',
  )
const TENS = '- - vingt trente quarante cinquante soixante soixante quatre-vingt quatre-vingt'.split(' ')

/** Seventy and ninety count on from sixty and eighty. `et` joins one and eleven, but not after eighty. */
function spellBelowHundred(value: number): string {
  if (value < 20) return ONES[value] ?? ''
  const tens = Math.floor(value / 10)
  const remainder = tens === 7 || tens === 9 ? value - (tens - 1) * 10 : value % 10
  if (remainder === 0) return value === 80 ? 'quatre-vingts' : (TENS[tens] ?? '')
  const joiner = tens < 8 && (remainder === 1 || remainder === 11) ? ' et ' : '-'
  return `${TENS[tens]}${joiner}${ONES[remainder]}`
}

function spellBelowThousand(value: number): string {
  if (value < 100) return spellBelowHundred(value)
  const hundreds = Math.floor(value / 100)
  const remainder = value % 100
  const word = hundreds === 1 ? 'cent' : `${ONES[hundreds]} cent`
  if (remainder === 0) return hundreds === 1 ? word : `${word}s`
  return `${word} ${spellBelowHundred(remainder)}`
}

/** `quatre-vingts` and `cents` lose their s before `mille`, which is a numeral, but not before `million`, a noun. */
function spellWholeNumber(value: number): string {
  if (value < 1000) return spellBelowThousand(value)
  if (value < 1_000_000) {
    const thousands = Math.floor(value / 1000)
    const word =
      thousands === 1 ? 'mille' : `${spellBelowThousand(thousands).replace(/(vingt|cent)s$/, '$1')} mille`
    return value % 1000 === 0 ? word : `${word} ${spellBelowThousand(value % 1000)}`
  }
  const millions = Math.floor(value / 1_000_000)
  const word = `${spellWholeNumber(millions)} million${millions === 1 ? '' : 's'}`
  return value % 1_000_000 === 0 ? word : `${word} ${spellWholeNumber(value % 1_000_000)}`
}

const spellDigits = (text: string) => Array.from(text, (digit) => ONES[Number(digit)]).join(' ')

/**
 * `-8.25` as `moins huit virgule vingt-cinq`: decimals are said as a number after their zeros, and zeros at the end are
 * not spoken. More than nine digits before the mark, or six after it, are spoken one by one.
 */
function numeral(digits: string): string {
  const parts = splitNumeral(digits)
  if (parts === undefined) return digits
  const { isNegative, before, after } = parts
  const whole = before.length > 9 ? spellDigits(before) : spellWholeNumber(Number(before))
  const [zeros = ''] = /^0*/.exec(after) ?? []
  const decimals =
    after.length > 6
      ? spellDigits(after)
      : [spellDigits(zeros), spellWholeNumber(Number(after))].filter((word) => word !== '').join(' ')
  return `${isNegative ? 'moins ' : ''}${whole}${after === '' ? '' : ` virgule ${decimals}`}`
}

type UnitName = readonly [singular: string, plural: string, gender?: 'f']

/** Singular and plural, as people say them. */
const UNIT_NAMES: Readonly<Record<Unit, UnitName>> = {
  'N.m': ['newton-mètre', 'newtons-mètres'],
  'cN.m': ['centinewton-mètre', 'centinewtons-mètres'],
  'dN.m': ['décinewton-mètre', 'décinewtons-mètres'],
  'kN.m': ['kilonewton-mètre', 'kilonewtons-mètres'],
  'lbf.ft': ['livre-pied', 'livres-pieds', 'f'],
  'lbf.in': ['livre-pouce', 'livres-pouces', 'f'],
  'ozf.in': ['once-pouce', 'onces-pouces', 'f'],
  'kgf.m': ['kilogramme-force mètre', 'kilogrammes-force mètre'],
  'kgf.cm': ['kilogramme-force centimètre', 'kilogrammes-force centimètre'],
  mL: ['millilitre', 'millilitres'],
  L: ['litre', 'litres'],
  cm3: ['centimètre cube', 'centimètres cubes'],
  fl_oz_us: ['once liquide américaine', 'onces liquides américaines', 'f'],
  pt_us: ['pinte américaine', 'pintes américaines', 'f'],
  qt_us: ['quart américain', 'quarts américains'],
  gal_us: ['gallon américain', 'gallons américains'],
  fl_oz_imp: ['once liquide impériale', 'onces liquides impériales', 'f'],
  pt_imp: ['pinte impériale', 'pintes impériales', 'f'],
  qt_imp: ['quart impérial', 'quarts impériaux'],
  gal_imp: ['gallon impérial', 'gallons impériaux'],
  mm: ['millimètre', 'millimètres'],
  cm: ['centimètre', 'centimètres'],
  m: ['mètre', 'mètres'],
  in: ['pouce', 'pouces'],
  ft: ['pied', 'pieds'],
  km: ['kilomètre', 'kilomètres'],
  mi: ['mille', 'milles'],
  N: ['newton', 'newtons'],
  kN: ['kilonewton', 'kilonewtons'],
  lbf: ['livre-force', 'livres-force', 'f'],
  kPa: ['kilopascal', 'kilopascals'],
  MPa: ['mégapascal', 'mégapascals'],
  bar: ['bar', 'bars'],
  psi: ['livre-force par pouce carré', 'livres-force par pouce carré', 'f'],
  degC: ['degré Celsius', 'degrés Celsius'],
  degF: ['degré Fahrenheit', 'degrés Fahrenheit'],
  K: ['kelvin', 'kelvins'],
  degC_diff: ['degré Celsius d’écart', 'degrés Celsius d’écart'],
  degF_diff: ['degré Fahrenheit d’écart', 'degrés Fahrenheit d’écart'],
  K_diff: ['kelvin', 'kelvins'],
  g: ['gramme', 'grammes'],
  kg: ['kilogramme', 'kilogrammes'],
  oz: ['once', 'onces', 'f'],
  lb: ['livre', 'livres', 'f'],
  h: ['heure', 'heures', 'f'],
  min: ['minute', 'minutes', 'f'],
  s: ['seconde', 'secondes', 'f'],
  d: ['jour', 'jours'],
  deg: ['degré', 'degrés'],
  'km/h': ['kilomètre par heure', 'kilomètres par heure'],
  mph: ['mille par heure', 'milles par heure'],
  'mm2/s': ['millimètre carré par seconde', 'millimètres carrés par seconde'],
  'mPa.s': ['millipascal-seconde', 'millipascals-secondes'],
  'kg/m3': ['kilogramme par mètre cube', 'kilogrammes par mètre cube'],
}

/** `d’heures`, `de litres` */
const elideOf = (noun: string) => (/^[aeiouh]/.test(noun) ? `d’${noun}` : `de ${noun}`)

/** Below two, a French noun is singular. `million` needs `de` before it, and a whole number ending in one has a gender. */
function quantity(digits: string, unit: Unit): string {
  const [singular, plural, gender] = UNIT_NAMES[unit]
  const words = numeral(digits)
  const isWhole = !words.includes('virgule')
  const gendered = isWhole && gender === 'f' ? words.replace(/(^|[ -])un$/, '$1une') : words
  const noun = Math.abs(Number(digits.replace('−', '-'))) < 2 ? singular : plural
  return `${gendered} ${/millions?$/.test(gendered) ? elideOf(noun) : noun}`
}

const FRACTION_NAMES: Readonly<Record<string, readonly [string, string]>> = {
  '2': ['demi', 'demis'],
  '3': ['tiers', 'tiers'],
  '4': ['quart', 'quarts'],
  '8': ['huitième', 'huitièmes'],
  '16': ['seizième', 'seizièmes'],
}

/** `three quarters` in words, without a unit; undefined for a fraction without a name. */
function spellParts(numerator: string, denominator: string): string | undefined {
  const names = FRACTION_NAMES[denominator]
  return names && `${numeral(numerator)} ${numerator === '1' ? names[0] : names[1]}`
}

/** `7 1/2` as `sept livres-pieds et demie`; undefined if the text is not such a fraction. */
function spellFraction(asPrinted: string, unit: Unit): string | undefined {
  const { whole, numerator = '', denominator = '' } = splitFraction(asPrinted) ?? {}
  const part = spellParts(numerator, denominator)
  if (part === undefined) return undefined
  const [singular, , gender] = UNIT_NAMES[unit]
  const isHalf = denominator === '2'
  if (whole === undefined)
    return isHalf ? `${gender === 'f' ? 'une' : 'un'} demi-${singular}` : `${part} ${elideOf(singular)}`
  const half = gender === 'f' ? 'demie' : 'demi'
  return `${quantity(whole, unit)} et ${isHalf ? half : part}`
}

/**
 * A name with its numbers in words: `douille 10 mm` as `douille dix millimètres`; one with another fraction stays as it
 * is.
 */
function name(written: string): string {
  const text = written.replace(
    /\b([0-9]{1,2})\/([0-9]{1,2})\b(?![/.])([ \u00a0]?(?:in\b|po\b|"))?/g,
    (match, numerator, denominator, inch) => {
      const words = spellParts(numerator, denominator)
      if (words === undefined || Number(numerator) >= Number(denominator)) return match
      return inch === undefined ? words : `${words} de pouce`
    },
  )
  if (text.includes('/')) return text
  return text
    .replace(/(?<=[0-9])[ \u00a0]?mm\b/g, ' millimètres')
    .replace(
      /[-–]?([0-9]{1,9}(?:[.,][0-9]{1,6})?)(?![0-9])/g,
      (_match, digits: string) => ` ${numeral(digits.replace(',', '.'))} `,
    )
    .replace(/[ \u00a0]{2,}/g, ' ')
    .replace(/ (?=[,.)]|$)/g, '')
    .trim()
}

function band(value: PrintedBand): string {
  const { asPrinted = '' } = value
  if (/\bcc\b/i.test(asPrinted) && value.unit === 'mL') return band({ ...value, unit: 'cm3' })
  if (value.kind === 'nominal')
    return spellFraction(asPrinted, value.unit) ?? quantity(value.value, value.unit)
  if (value.kind === 'nominal with tolerance') {
    const { value: nominal, minus, plus, unit } = value
    if (minus === plus) return `${numeral(nominal)} plus ou moins ${quantity(plus, unit)}`
    return `${numeral(nominal)} plus ${numeral(plus)} moins ${quantity(minus, unit)}`
  }
  const { min, max, unit } = value
  if (min !== undefined && max !== undefined) return `${numeral(min)} à ${quantity(max, unit)}`
  return min === undefined ? `au plus ${quantity(max ?? '', unit)}` : `au moins ${quantity(min, unit)}`
}

const duration = (seconds: number): string =>
  splitDuration(seconds)
    .map(({ count, unit }) => quantity(String(count), unit))
    .join(' ')

/** French numbers and units for speech. */
export const speechWords: SpeechWords = {
  numeral,
  quantity,
  name,
  range: (from, to) => `${from} à ${to}`,
  band,
  duration,
}
