import type { PrintedBand, Unit } from '../../quantity/index.js'
import type { SpeechWords } from '../catalogue.js'
import { splitDuration, splitFraction, splitNumeral } from '../phrases.js'
import { join } from './words.js'

// Source of the forms: RAE, Libro de estilo de la Justicia, 14.3.1 Numerales cardinales.
const ONES =
  'cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis diecisiete dieciocho diecinueve veinte veintiuno veintidós veintitrés veinticuatro veinticinco veintiséis veintisiete veintiocho veintinueve'.split(
    ' ',
  )
const TENS = '- - - treinta cuarenta cincuenta sesenta setenta ochenta noventa'.split(' ')
const HUNDREDS =
  '- ciento doscientos trescientos cuatrocientos quinientos seiscientos setecientos ochocientos novecientos'.split(
    ' ',
  )

/** Alone (`veintiuno`), before a masculine noun (`veintiún litros`) or a feminine one (`veintiuna horas`). */
type Agreement = 'alone' | 'masculine' | 'feminine'

function agree(word: string, agreement: Agreement): string {
  if (agreement === 'alone') return word
  if (agreement === 'feminine')
    return word.replace(/uno$/, 'una').replace(/cientos$|quinientos$/, (end) => end.replace(/os$/, 'as'))
  return word.replace(/veintiuno$/, 'veintiún').replace(/uno$/, 'un')
}

function spellBelowThousand(value: number, agreement: Agreement): string {
  if (value < 30) return agree(ONES[value] ?? '', agreement)
  if (value < 100) {
    const remainder = value % 10
    const tens = TENS[Math.floor(value / 10)] ?? ''
    return remainder === 0 ? tens : `${tens} y ${agree(ONES[remainder] ?? '', agreement)}`
  }
  if (value === 100) return 'cien'
  const hundreds = agree(HUNDREDS[Math.floor(value / 100)] ?? '', agreement)
  const remainder = value % 100
  return remainder === 0 ? hundreds : `${hundreds} ${spellBelowThousand(remainder, agreement)}`
}

function spellWholeNumber(value: number, agreement: Agreement = 'alone'): string {
  if (value < 1000) return spellBelowThousand(value, agreement)
  const [size, isMillion] = value < 1_000_000 ? [1000, false] : [1_000_000, true]
  const count = Math.floor(value / size)
  const remainder = value % size
  // `millón` is a masculine noun; `mil` lets a feminine noun through: `doscientas mil horas`.
  const countForm = isMillion || agreement !== 'feminine' ? 'masculine' : 'feminine'
  const countWords = spellWholeNumber(count, countForm)
  const words = isMillion
    ? `${countWords} ${count === 1 ? 'millón' : 'millones'}`
    : count === 1
      ? 'mil'
      : `${countWords} mil`
  return remainder === 0 ? words : `${words} ${spellWholeNumber(remainder, agreement)}`
}

/**
 * `-8.90` as `menos ocho coma nueve`: zeros at the end are not spoken. More than nine digits before the mark are spoken
 * one by one.
 */
function spellNumeral(digits: string, agreement: Agreement): string {
  const parts = splitNumeral(digits)
  if (parts === undefined) return digits
  const { isNegative, before, after } = parts
  const spellDigits = (text: string) => Array.from(text, (digit) => ONES[Number(digit)]).join(' ')
  const wholeWords =
    before.length > 9
      ? spellDigits(before)
      : spellWholeNumber(Number(before), after === '' ? agreement : 'alone')
  return `${isNegative ? 'menos ' : ''}${wholeWords}${after === '' ? '' : ` coma ${spellDigits(after)}`}`
}

const numeral = (digits: string) => spellNumeral(digits, 'alone')

/** `dos`, `veintiuna`: a count of feminine things. */
export const countFeminine = (count: number) => spellNumeral(String(count), 'feminine')

type UnitName = readonly [singular: string, plural: string, gender?: 'f']

/** As people say them; in `newtons metro` only the first noun has a plural, as in RAE's `kilovatios hora`. */
const UNIT_NAMES: Readonly<Record<Unit, UnitName>> = {
  'N.m': ['newton metro', 'newtons metro'],
  'cN.m': ['centinewton metro', 'centinewtons metro'],
  'dN.m': ['decinewton metro', 'decinewtons metro'],
  'kN.m': ['kilonewton metro', 'kilonewtons metro'],
  'lbf.ft': ['libra pie', 'libras pie', 'f'],
  'lbf.in': ['libra pulgada', 'libras pulgada', 'f'],
  'ozf.in': ['onza pulgada', 'onzas pulgada', 'f'],
  'kgf.m': ['kilogramo fuerza metro', 'kilogramos fuerza metro'],
  'kgf.cm': ['kilogramo fuerza centímetro', 'kilogramos fuerza centímetro'],
  mL: ['mililitro', 'mililitros'],
  L: ['litro', 'litros'],
  cm3: ['centímetro cúbico', 'centímetros cúbicos'],
  fl_oz_us: ['onza líquida estadounidense', 'onzas líquidas estadounidenses', 'f'],
  pt_us: ['pinta estadounidense', 'pintas estadounidenses', 'f'],
  qt_us: ['cuarto de galón estadounidense', 'cuartos de galón estadounidense'],
  gal_us: ['galón estadounidense', 'galones estadounidenses'],
  fl_oz_imp: ['onza líquida imperial', 'onzas líquidas imperiales', 'f'],
  pt_imp: ['pinta imperial', 'pintas imperiales', 'f'],
  qt_imp: ['cuarto de galón imperial', 'cuartos de galón imperial'],
  gal_imp: ['galón imperial', 'galones imperiales'],
  mm: ['milímetro', 'milímetros'],
  cm: ['centímetro', 'centímetros'],
  m: ['metro', 'metros'],
  in: ['pulgada', 'pulgadas', 'f'],
  ft: ['pie', 'pies'],
  km: ['kilómetro', 'kilómetros'],
  mi: ['milla', 'millas', 'f'],
  N: ['newton', 'newtons'],
  kN: ['kilonewton', 'kilonewtons'],
  lbf: ['libra fuerza', 'libras fuerza', 'f'],
  kPa: ['kilopascal', 'kilopascales'],
  MPa: ['megapascal', 'megapascales'],
  bar: ['bar', 'bares'],
  psi: ['libra por pulgada cuadrada', 'libras por pulgada cuadrada', 'f'],
  degC: ['grado Celsius', 'grados Celsius'],
  degF: ['grado Fahrenheit', 'grados Fahrenheit'],
  K: ['kelvin', 'kelvins'],
  degC_diff: ['grado Celsius', 'grados Celsius'],
  degF_diff: ['grado Fahrenheit', 'grados Fahrenheit'],
  K_diff: ['kelvin', 'kelvins'],
  g: ['gramo', 'gramos'],
  kg: ['kilogramo', 'kilogramos'],
  oz: ['onza', 'onzas', 'f'],
  lb: ['libra', 'libras', 'f'],
  h: ['hora', 'horas', 'f'],
  min: ['minuto', 'minutos'],
  s: ['segundo', 'segundos'],
  d: ['día', 'días'],
  deg: ['grado', 'grados'],
  'km/h': ['kilómetro por hora', 'kilómetros por hora'],
  mph: ['milla por hora', 'millas por hora', 'f'],
  'mm2/s': ['milímetro cuadrado por segundo', 'milímetros cuadrados por segundo'],
  'mPa.s': ['milipascal segundo', 'milipascales segundo'],
  'kg/m3': ['kilogramo por metro cúbico', 'kilogramos por metro cúbico'],
}

const genderOf = (unit: UnitName): Agreement => (unit[2] === 'f' ? 'feminine' : 'masculine')

/** `ocho coma nueve libras pie`; whole millions take `de`: `un millón de horas`. */
function speakQuantity(digits: string, unit: UnitName): string {
  const words = spellNumeral(digits, genderOf(unit))
  const name = unit[digits === '1' ? 0 : 1]
  return `${words} ${/mill(ón|ones)$/.test(words) ? 'de ' : ''}${name}`
}

const quantity = (digits: string, unit: Unit) => speakQuantity(digits, UNIT_NAMES[unit])

const FRACTION_NAMES: Readonly<Record<string, string>> = {
  '2': 'medio',
  '3': 'tercio',
  '4': 'cuarto',
  '8': 'octavo',
  '16': 'dieciseisavo',
}

/** `un cuarto`, `tres octavos`; undefined if the fraction has no usual name. */
function nameFraction(numerator: string, denominator: string): string | undefined {
  const fraction = FRACTION_NAMES[denominator]
  if (fraction === undefined || Number(numerator) < 1 || Number(numerator) >= Number(denominator))
    return undefined
  return numerator === '1' ? `un ${fraction}` : `${numeral(numerator)} ${fraction}s`
}

/** `media`, `medio`: half of a unit agrees with it. */
const writeHalf = (unit: UnitName) => (unit[2] === 'f' ? 'media' : 'medio')

/** `7 1/2` as `siete libras pie y media`; undefined if the text is not such a fraction. */
function spellFraction(asPrinted: string, unit: UnitName): string | undefined {
  const { whole, numerator = '', denominator = '' } = splitFraction(asPrinted) ?? {}
  const fraction = nameFraction(numerator, denominator)
  if (fraction === undefined) return undefined
  const isHalf = denominator === '2'
  if (whole !== undefined) return `${speakQuantity(whole, unit)} y ${isHalf ? writeHalf(unit) : fraction}`
  return isHalf ? `${writeHalf(unit)} ${unit[0]}` : `${fraction} de ${unit[0]}`
}

/** The nouns that a number in a name agrees with: units, and the periods of {@link cardWords}. */
const FEMININE_NOUN = /^[ \u00a0](?:semanas?|horas?|pulgadas?|vueltas?)\b/u
const MASCULINE_NOUN = /^[ \u00a0](?:años?|mes(?:es)?|días?|milímetros?|tornillos?)(?!\p{L})/u

function findAgreement(rest: string): Agreement {
  if (FEMININE_NOUN.test(rest)) return 'feminine'
  return MASCULINE_NOUN.test(rest) ? 'masculine' : 'alone'
}

/** A name with its numbers in words: `vaso de 10 mm` as `vaso de diez milímetros`; one with another fraction stays as it is. */
function name(written: string): string {
  const text = written.replace(
    /\b([0-9]{1,2})\/([0-9]{1,2})\b(?![/.,])([ \u00a0]?in\b)?/g,
    (match, numerator, denominator, inch) => {
      const fraction = nameFraction(numerator, denominator)
      if (fraction === undefined) return match
      if (inch === undefined) return fraction
      return denominator === '2' ? 'media pulgada' : `${fraction} de pulgada`
    },
  )
  if (text.includes('/')) return text
  return text
    .replace(/(?<=[0-9])[ \u00a0]?mm\b/g, ' milímetros')
    .replace(/(?<![0-9.,])1 milímetros/g, '1 milímetro')
    .replace(
      /[-–]?([0-9]{1,9})(?:[.,]([0-9]{1,6}))?(?![0-9])/g,
      (match, whole: string, decimals: string | undefined, place: number, all: string) => {
        const agreement = findAgreement(all.slice(place + match.length))
        return ` ${spellNumeral(decimals === undefined ? whole : `${whole}.${decimals}`, agreement)} `
      },
    )
    .replace(/[ \u00a0]{2,}/g, ' ')
    .replace(/ (?=[,.;:)”]|$)/g, '')
    .trim()
}

function band(value: PrintedBand): string {
  const { asPrinted = '' } = value
  if (/\bcc\b/i.test(asPrinted) && value.unit === 'mL') return band({ ...value, unit: 'cm3' })
  if (value.kind === 'nominal')
    return spellFraction(asPrinted, UNIT_NAMES[value.unit]) ?? quantity(value.value, value.unit)
  if (value.kind === 'nominal with tolerance') {
    const { value: nominal, minus, plus, unit } = value
    if (minus === plus) return `${numeral(nominal)} más menos ${quantity(plus, unit)}`
    return `${numeral(nominal)} más ${numeral(plus)} menos ${quantity(minus, unit)}`
  }
  const { min, max, unit } = value
  if (min !== undefined && max !== undefined)
    return `${spellNumeral(min, genderOf(UNIT_NAMES[unit]) === 'feminine' ? 'feminine' : 'alone')} a ${quantity(max, unit)}`
  return min === undefined ? `como máximo ${quantity(max ?? '', unit)}` : `al menos ${quantity(min, unit)}`
}

const duration = (seconds: number): string =>
  join(
    splitDuration(seconds).map(({ count, unit }) => quantity(String(count), unit)),
    'y',
  )

/** Spanish numbers and units for speech. */
export const speechWords: SpeechWords = {
  numeral,
  quantity,
  name,
  range: (from, to) => `${from} a ${to}`,
  band,
  duration,
}
