/** A text being read, and the current position in it. */
export interface TextCursor {
  readonly text: string
  at: number
  /** The decimal mark that the caller stated, or that another number in the text shows. */
  mark: '.' | ',' | undefined
}

/**
 * A number found in a text. `value` is a figure without its sign; `problem` is the reason for a missing
 * figure.
 */
export interface FoundNumber {
  readonly isNegative: boolean
  readonly value: string
  /** The fraction as written, in the plain form `7 1/2`. */
  readonly fraction?: string
  readonly problem?: 'no-figure' | 'unclear' | 'does-not-end'
  /** Both readings if the mark is unclear. */
  readonly readings?: readonly [withPoint: string, withComma: string]
}

const POINT = 46
const COMMA = 44
const SPACE = 32
const APOSTROPHE = 39
const HYPHEN = 45
const SLASH = 47

/** Reads a number at the current position; undefined, without moving on, if there is none. */
export function readNumber(reading: TextCursor): FoundNumber | undefined {
  const { text } = reading
  let at = reading.at
  const sign = text.charCodeAt(at)
  const isNegative = sign === HYPHEN
  if (isNegative || sign === 43) at += 1
  while (isNegative && text.charCodeAt(at) === SPACE) at += 1
  const start = at
  at = findDigitsEnd(text, at)
  const wholeEnd = at
  let marks = 0
  for (;;) {
    const mark = text.charCodeAt(at)
    if (mark !== POINT && mark !== COMMA && mark !== SPACE && mark !== APOSTROPHE) break
    const next = findDigitsEnd(text, at + 1)
    if (next === at + 1 || (at === start && mark > COMMA + 2)) break
    // spaces and apostrophes only separate groups of three
    if (
      (mark === SPACE || mark === APOSTROPHE) &&
      (next !== at + 4 || at === start || isFractionBar(text, next))
    )
      break
    marks += 1
    at = next
  }
  if (at === start) return undefined
  const fraction = marks === 0 ? readFraction(text, start, wholeEnd) : undefined
  if (fraction) {
    reading.at = fraction.end
    return { isNegative, ...fraction.found }
  }
  reading.at = at
  if (marks === 0) return makeFoundNumber(isNegative, text.slice(start, at))
  const mark = text.charAt(wholeEnd)
  if (marks === 1 && mark !== ' ' && mark !== "'" && (reading.mark === undefined || reading.mark === mark)) {
    // groups have three digits, with one to three digits before the first
    const hasGroups =
      at - wholeEnd === 4 && wholeEnd > start && wholeEnd - start < 4 && text.charCodeAt(start) !== 48
    if (!hasGroups || reading.mark === mark) {
      reading.mark = mark as '.' | ','
      return makeFoundNumber(
        isNegative,
        `${text.slice(start, wholeEnd) || '0'}.${text.slice(wholeEnd + 1, at)}`,
      )
    }
  }
  return readMarkedNumber(isNegative, text.slice(start, at), reading)
}

function readMarkedNumber(isNegative: boolean, written: string, reading: TextCursor): FoundNumber {
  const withPoint = reading.mark === ',' ? undefined : readWithMark(written, '.')
  const withComma = reading.mark === '.' ? undefined : readWithMark(written, ',')
  if (withPoint !== undefined && withComma !== undefined) {
    if (withPoint === withComma) return makeFoundNumber(isNegative, withPoint)
    return { isNegative, value: '0', problem: 'unclear', readings: [withPoint, withComma] }
  }
  const value = withPoint ?? withComma
  if (value === undefined) return { isNegative, value: '0', problem: 'no-figure' }
  if (value.includes('.')) reading.mark = withPoint === undefined ? ',' : '.'
  return makeFoundNumber(isNegative, value)
}

/** The digits with a point, if the text is a number with that decimal mark; groups have three digits and one kind of mark. */
function readWithMark(written: string, decimal: '.' | ','): string | undefined {
  const markPosition = written.indexOf(decimal)
  const whole = markPosition < 0 ? written : written.slice(0, markPosition)
  const decimals = markPosition < 0 ? '' : written.slice(markPosition + 1)
  if (findDigitsEnd(decimals, 0) !== decimals.length) return undefined
  let digits = whole
  const first = findDigitsEnd(whole, 0)
  if (first < whole.length) {
    const mark = whole.charAt(first)
    const groups = whole.split(mark)
    if (first === 0 || first > 3 || whole.startsWith('0')) return undefined
    if (groups.some((group, place) => place > 0 && (group.length !== 3 || findDigitsEnd(group, 0) !== 3)))
      return undefined
    digits = groups.join('')
  }
  return markPosition < 0 ? digits : `${digits || '0'}.${decimals}`
}

function makeFoundNumber(isNegative: boolean, value: string): FoundNumber {
  const point = value.indexOf('.')
  const whole = point < 0 ? value.length : point
  const isTooLong = whole > 9 || value.length - whole > 7
  if (isTooLong || (whole > 1 && value.charCodeAt(0) === 48))
    return { isNegative, value: '0', problem: 'no-figure' }
  return { isNegative, value }
}

interface Fraction {
  readonly end: number
  readonly found: Omit<FoundNumber, 'isNegative'>
}

/** Reads a proper fraction of halves to sixty-fourths, or of thirds: `1/2`, `7 1/2`, `7-1/2`. */
function readFraction(text: string, start: number, wholeEnd: number): Fraction | undefined {
  let numeratorStart = start
  let numeratorEnd = wholeEnd
  if (text.charCodeAt(wholeEnd) !== SLASH) {
    numeratorStart = wholeEnd
    while (text.charCodeAt(numeratorStart) === SPACE) numeratorStart += 1
    if (numeratorStart === wholeEnd && text.charCodeAt(numeratorStart) === HYPHEN) numeratorStart += 1
    numeratorEnd = findDigitsEnd(text, numeratorStart)
    if (
      numeratorEnd === numeratorStart ||
      numeratorStart === wholeEnd ||
      text.charCodeAt(numeratorEnd) !== SLASH
    )
      return undefined
  }
  const end = findDigitsEnd(text, numeratorEnd + 1)
  if (end === numeratorEnd + 1) return undefined
  const written = `${text.slice(numeratorStart, numeratorEnd)}/${text.slice(numeratorEnd + 1, end)}`
  const whole = numeratorStart === start ? '' : text.slice(start, wholeEnd)
  const numerator = Number(text.slice(numeratorStart, numeratorEnd))
  const denominator = Number(text.slice(numeratorEnd + 1, end))
  const isUsual = [2, 3, 4, 8, 16, 32, 64].includes(denominator) && numerator > 0 && numerator < denominator
  if (!isUsual || whole.length > 9 || (whole.length > 1 && whole.startsWith('0')))
    return { end, found: { value: '0', problem: 'no-figure' } }
  const fraction = whole === '' || whole === '0' ? written : `${whole} ${written}`
  // 64ths have at most six decimals, thirds infinitely many
  const decimals = String(Math.round((numerator * 1e6) / denominator)).padStart(6, '0')
  const value = `${whole || '0'}.${denominator === 3 ? decimals : decimals.replace(/0+$/, '')}`
  return { end, found: { value, fraction, ...(denominator === 3 && { problem: 'does-not-end' as const }) } }
}

/** Whether the digits before this position are a numerator. */
function isFractionBar(text: string, at: number): boolean {
  return text.charCodeAt(at) === SLASH && findDigitsEnd(text, at + 1) > at + 1
}

function findDigitsEnd(text: string, from: number): number {
  let at = from
  for (let code = text.charCodeAt(at); code >= 48 && code <= 57; code = text.charCodeAt(at)) at += 1
  return at
}
