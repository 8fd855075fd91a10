import type { PrintedBand, Unit } from '../../quantity/index.js'
import type { SpeechWords } from '../catalogue.js'
import { splitDuration, splitFraction, splitNumeral } from '../phrases.js'

const ONES =
  'null eins zwei drei vier fünf sechs sieben acht neun zehn elf zwölf dreizehn vierzehn fünfzehn sechzehn siebzehn achtzehn neunzehn'.split(
    ' ',
  )
const TENS = '- - zwanzig dreißig vierzig fünfzig sechzig siebzig achtzig neunzig'.split(' ')

/** `ein` inside a longer word, `eins` alone or at the end. */
const joinable = (value: number): string => (value === 1 ? 'ein' : (ONES[value] ?? ''))

function spellBelowThousand(value: number): string {
  if (value < 20) return ONES[value] ?? ''
  if (value < 100) {
    const remainder = value % 10
    return `${remainder === 0 ? '' : `${joinable(remainder)}und`}${TENS[Math.floor(value / 10)]}`
  }
  const remainder = value % 100
  return `${joinable(Math.floor(value / 100))}hundert${remainder === 0 ? '' : spellBelowThousand(remainder)}`
}

function spellBelowMillion(value: number): string {
  if (value < 1000) return spellBelowThousand(value)
  const remainder = value % 1000
  const thousands = spellBelowThousand(Math.floor(value / 1000)).replace(/eins$/, 'ein')
  return `${thousands}tausend${remainder === 0 ? '' : spellBelowThousand(remainder)}`
}

function spellWholeNumber(value: number): string {
  if (value < 1_000_000) return spellBelowMillion(value)
  const millions = Math.floor(value / 1_000_000)
  const remainder = value % 1_000_000
  const name = millions === 1 ? 'eine Million' : `${spellBelowMillion(millions)} Millionen`
  return `${name}${remainder === 0 ? '' : ` ${spellBelowMillion(remainder)}`}`
}

/**
 * `-8.90` as `minus acht Komma neun`: zeros at the end are not spoken. More than nine digits before the point are spoken
 * one by one.
 */
function numeral(digits: string): string {
  const parts = splitNumeral(digits)
  if (parts === undefined) return digits
  const { isNegative, before, after } = parts
  const spellDigits = (text: string) => Array.from(text, (digit) => ONES[Number(digit)]).join(' ')
  const wholeWords = before.length > 9 ? spellDigits(before) : spellWholeNumber(Number(before))
  return `${isNegative ? 'minus ' : ''}${wholeWords}${after === '' ? '' : ` Komma ${spellDigits(after)}`}`
}

/** The word for one of it, singular and plural, as people say them. */
const UNIT_NAMES: Readonly<Record<Unit, readonly ['ein' | 'eine', string, string]>> = {
  'N.m': ['ein', 'Newtonmeter', 'Newtonmeter'],
  'cN.m': ['ein', 'Zentinewtonmeter', 'Zentinewtonmeter'],
  'dN.m': ['ein', 'Dezinewtonmeter', 'Dezinewtonmeter'],
  'kN.m': ['ein', 'Kilonewtonmeter', 'Kilonewtonmeter'],
  'lbf.ft': ['ein', 'Foot-pound', 'Foot-pounds'],
  'lbf.in': ['ein', 'Inch-pound', 'Inch-pounds'],
  'ozf.in': ['eine', 'Inch-ounce', 'Inch-ounces'],
  'kgf.m': ['ein', 'Kilopondmeter', 'Kilopondmeter'],
  'kgf.cm': ['ein', 'Kilopondzentimeter', 'Kilopondzentimeter'],
  mL: ['ein', 'Milliliter', 'Milliliter'],
  L: ['ein', 'Liter', 'Liter'],
  cm3: ['ein', 'Kubikzentimeter', 'Kubikzentimeter'],
  fl_oz_us: ['eine', 'US-Flüssigunze', 'US-Flüssigunzen'],
  pt_us: ['ein', 'US-Pint', 'US-Pints'],
  qt_us: ['ein', 'US-Quart', 'US-Quarts'],
  gal_us: ['eine', 'US-Gallone', 'US-Gallonen'],
  fl_oz_imp: ['eine', 'britische Flüssigunze', 'britische Flüssigunzen'],
  pt_imp: ['ein', 'britisches Pint', 'britische Pints'],
  qt_imp: ['ein', 'britisches Quart', 'britische Quarts'],
  gal_imp: ['eine', 'britische Gallone', 'britische Gallonen'],
  mm: ['ein', 'Millimeter', 'Millimeter'],
  cm: ['ein', 'Zentimeter', 'Zentimeter'],
  m: ['ein', 'Meter', 'Meter'],
  in: ['ein', 'Zoll', 'Zoll'],
  ft: ['ein', 'Fuß', 'Fuß'],
  km: ['ein', 'Kilometer', 'Kilometer'],
  mi: ['eine', 'Meile', 'Meilen'],
  N: ['ein', 'Newton', 'Newton'],
  kN: ['ein', 'Kilonewton', 'Kilonewton'],
  lbf: ['ein', 'Pound-force', 'Pound-force'],
  kPa: ['ein', 'Kilopascal', 'Kilopascal'],
  MPa: ['ein', 'Megapascal', 'Megapascal'],
  bar: ['ein', 'Bar', 'Bar'],
  psi: ['ein', 'Pfund pro Quadratzoll', 'Pfund pro Quadratzoll'],
  degC: ['ein', 'Grad Celsius', 'Grad Celsius'],
  degF: ['ein', 'Grad Fahrenheit', 'Grad Fahrenheit'],
  K: ['ein', 'Kelvin', 'Kelvin'],
  degC_diff: ['ein', 'Celsiusgrad', 'Celsiusgrade'],
  degF_diff: ['ein', 'Fahrenheitgrad', 'Fahrenheitgrade'],
  K_diff: ['ein', 'Kelvin', 'Kelvin'],
  g: ['ein', 'Gramm', 'Gramm'],
  kg: ['ein', 'Kilogramm', 'Kilogramm'],
  oz: ['eine', 'Unze', 'Unzen'],
  lb: ['ein', 'Pfund', 'Pfund'],
  h: ['eine', 'Stunde', 'Stunden'],
  min: ['eine', 'Minute', 'Minuten'],
  s: ['eine', 'Sekunde', 'Sekunden'],
  d: ['ein', 'Tag', 'Tage'],
  deg: ['ein', 'Grad', 'Grad'],
  'km/h': ['ein', 'Kilometer pro Stunde', 'Kilometer pro Stunde'],
  mph: ['eine', 'Meile pro Stunde', 'Meilen pro Stunde'],
  'mm2/s': ['ein', 'Quadratmillimeter pro Sekunde', 'Quadratmillimeter pro Sekunde'],
  'mPa.s': ['eine', 'Millipascalsekunde', 'Millipascalsekunden'],
  'kg/m3': ['ein', 'Kilogramm pro Kubikmeter', 'Kilogramm pro Kubikmeter'],
}

/** `ein Liter`, `minus eine Minute`, `zwei Liter`. */
function quantity(digits: string, unit: Unit): string {
  const [one, singular, plural] = UNIT_NAMES[unit]
  const words = numeral(digits)
  return /^(?:minus )?eins$/.test(words) ? `${words.replace('eins', one)} ${singular}` : `${words} ${plural}`
}

/** Written as one word with their numerator, since an adjective would need the gender of every unit. */
const FRACTION_NAMES: Readonly<Record<string, string>> = {
  '2': 'halb',
  '3': 'drittel',
  '4': 'viertel',
  '8': 'achtel',
  '16': 'sechzehntel',
}

/** `dreiviertel`, `einhalb`, `einsechzehntel`. */
const spellPart = (numerator: string, name: string): string => `${joinable(Number(numerator))}${name}`

/** `7 1/2` as `siebeneinhalb`, `2 3/4` as `zwei dreiviertel`; undefined if the text is not such a fraction. */
function spellFraction(asPrinted: string, unit: Unit): string | undefined {
  const { whole, numerator = '', denominator = '' } = splitFraction(asPrinted) ?? {}
  const name = FRACTION_NAMES[denominator]
  if (name === undefined) return undefined
  const part = spellPart(numerator, name)
  const wholeWords = whole === undefined ? '' : numeral(whole)
  const words =
    name === 'halb' ? `${wholeWords.replace(/eins$/, 'ein')}${part}` : `${wholeWords} ${part}`.trim()
  return `${words} ${UNIT_NAMES[unit][2]}`
}

/**
 * A name with its numbers in words: `Steckschlüssel 10 mm` as `Steckschlüssel zehn Millimeter`; one with another
 * fraction stays as it is.
 */
function name(written: string): string {
  const text = written.replace(
    /\b([0-9]{1,2})\/([0-9]{1,2})\b(?![/.])([ \u00a0]?in\b)?/g,
    (match, numerator, denominator, inch) => {
      const fraction = FRACTION_NAMES[denominator]
      if (fraction === undefined || Number(numerator) >= Number(denominator)) return match
      const words = spellPart(numerator, fraction)
      return inch === undefined ? words : `${words} Zoll`
    },
  )
  if (text.includes('/')) return text
  return text
    .replace(/(?<=[0-9])[ \u00a0-]?mm\b/g, ' Millimeter')
    .replace(
      /[-–]?([0-9]{1,9}(?:[.,][0-9]{1,6})?)(?![0-9])/g,
      (match, digits: string, place: number, all: string) => {
        const rest = all.slice(place + match.length)
        const words =
          digits === '1' && /^[- \u00a0]\p{L}/u.test(rest) ? 'ein' : numeral(digits.replace(',', '.'))
        return ` ${words}${rest.startsWith('-') ? '' : ' '}`
      },
    )
    .replace(/[ \u00a0]{2,}/g, ' ')
    .replace(/ (?=[,.;:)]|$)/g, '')
    .trim()
}

function band(value: PrintedBand): string {
  const { asPrinted = '' } = value
  if (/\bcc\b/i.test(asPrinted) && value.unit === 'mL') return band({ ...value, unit: 'cm3' })
  if (value.kind === 'nominal')
    return spellFraction(asPrinted, value.unit) ?? quantity(value.value, value.unit)
  if (value.kind === 'nominal with tolerance') {
    const { value: nominal, minus, plus, unit } = value
    if (minus === plus) return `${numeral(nominal)} plus oder minus ${quantity(plus, unit)}`
    return `${numeral(nominal)} plus ${numeral(plus)} minus ${quantity(minus, unit)}`
  }
  const { min, max, unit } = value
  if (min !== undefined && max !== undefined) return `${numeral(min)} bis ${quantity(max, unit)}`
  return min === undefined ? `höchstens ${quantity(max ?? '', unit)}` : `mindestens ${quantity(min, unit)}`
}

const duration = (seconds: number): string =>
  splitDuration(seconds)
    .map(({ count, unit }) => quantity(String(count), unit))
    .join(' ')

/** German numbers and units for speech. */
export const speechWords: SpeechWords = {
  numeral,
  quantity,
  name,
  range: (from, to) => `${from} bis ${to}`,
  band,
  duration,
}
