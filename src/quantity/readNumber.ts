/** A text being read, and the current place in it. */
export interface Reading {
  readonly text: string
  at: number
  /** The decimal mark that the caller declared, or that another number of the text shows. */
  mark: '.' | ',' | undefined
}

/** A number found in a text. `value` is a figure without its sign; `problem` says why it has no figure. */
export interface NumberFound {
  readonly negative: boolean
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

/** Reads a number at the current place; undefined, without moving on, if none begins there. */
export function readNumber(reading: Reading): NumberFound | undefined {
  const { text } = reading
  let at = reading.at
  const sign = text.charCodeAt(at)
  const negative = sign === HYPHEN
  if (negative || sign === 43) at += 1
  while (negative && text.charCodeAt(at) === SPACE) at += 1
  const start = at
  at = digitsEnd(text, at)
  const wholeEnd = at
  let marks = 0
  for (;;) {
    const mark = text.charCodeAt(at)
    if (mark !== POINT && mark !== COMMA && mark !== SPACE && mark !== APOSTROPHE) break
    const next = digitsEnd(text, at + 1)
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
    return { negative, ...fraction.found }
  }
  reading.at = at
  if (marks === 0) return plainFigure(negative, text.slice(start, at))
  const mark = text.charAt(wholeEnd)
  if (marks === 1 && mark !== ' ' && mark !== "'" && (reading.mark === undefined || reading.mark === mark)) {
    // groups have three digits, with one to three digits before the first
    const grouped =
      at - wholeEnd === 4 && wholeEnd > start && wholeEnd - start < 4 && text.charCodeAt(start) !== 48
    if (!grouped || reading.mark === mark) {
      reading.mark = mark as '.' | ','
      return plainFigure(negative, `${text.slice(start, wholeEnd) || '0'}.${text.slice(wholeEnd + 1, at)}`)
    }
  }
  return markedNumber(negative, text.slice(start, at), reading)
}

function markedNumber(negative: boolean, written: string, reading: Reading): NumberFound {
  const withPoint = reading.mark === ',' ? undefined : readWith(written, '.')
  const withComma = reading.mark === '.' ? undefined : readWith(written, ',')
  if (withPoint !== undefined && withComma !== undefined) {
    if (withPoint === withComma) return plainFigure(negative, withPoint)
    return { negative, value: '0', problem: 'unclear', readings: [withPoint, withComma] }
  }
  const value = withPoint ?? withComma
  if (value === undefined) return { negative, value: '0', problem: 'no-figure' }
  if (value.includes('.')) reading.mark = withPoint === undefined ? ',' : '.'
  return plainFigure(negative, value)
}

/** The digits with a point, if the text is a number with that decimal mark; groups have three digits and one kind of mark. */
function readWith(written: string, decimal: '.' | ','): string | undefined {
  const cut = written.indexOf(decimal)
  const whole = cut < 0 ? written : written.slice(0, cut)
  const decimals = cut < 0 ? '' : written.slice(cut + 1)
  if (digitsEnd(decimals, 0) !== decimals.length) return undefined
  let digits = whole
  const first = digitsEnd(whole, 0)
  if (first < whole.length) {
    const mark = whole.charAt(first)
    const groups = whole.split(mark)
    if (first === 0 || first > 3 || whole.startsWith('0')) return undefined
    if (groups.some((group, place) => place > 0 && (group.length !== 3 || digitsEnd(group, 0) !== 3)))
      return undefined
    digits = groups.join('')
  }
  return cut < 0 ? digits : `${digits || '0'}.${decimals}`
}

function plainFigure(negative: boolean, value: string): NumberFound {
  const point = value.indexOf('.')
  const whole = point < 0 ? value.length : point
  const tooLong = whole > 9 || value.length - whole > 7
  if (tooLong || (whole > 1 && value.charCodeAt(0) === 48))
    return { negative, value: '0', problem: 'no-figure' }
  return { negative, value }
}

interface Fraction {
  readonly end: number
  readonly found: Omit<NumberFound, 'negative'>
}

/** Reads a proper fraction of halves to sixty-fourths, or of thirds: `1/2`, `7 1/2`, `7-1/2`. */
function readFraction(text: string, start: number, wholeEnd: number): Fraction | undefined {
  let topStart = start
  let topEnd = wholeEnd
  if (text.charCodeAt(wholeEnd) !== SLASH) {
    topStart = wholeEnd
    while (text.charCodeAt(topStart) === SPACE) topStart += 1
    if (topStart === wholeEnd && text.charCodeAt(topStart) === HYPHEN) topStart += 1
    topEnd = digitsEnd(text, topStart)
    if (topEnd === topStart || topStart === wholeEnd || text.charCodeAt(topEnd) !== SLASH) return undefined
  }
  const end = digitsEnd(text, topEnd + 1)
  if (end === topEnd + 1) return undefined
  const written = `${text.slice(topStart, topEnd)}/${text.slice(topEnd + 1, end)}`
  const whole = topStart === start ? '' : text.slice(start, wholeEnd)
  const top = Number(text.slice(topStart, topEnd))
  const bottom = Number(text.slice(topEnd + 1, end))
  const isUsual = [2, 3, 4, 8, 16, 32, 64].includes(bottom) && top > 0 && top < bottom
  if (!isUsual || whole.length > 9 || (whole.length > 1 && whole.startsWith('0')))
    return { end, found: { value: '0', problem: 'no-figure' } }
  const fraction = whole === '' || whole === '0' ? written : `${whole} ${written}`
  // 64ths end within six decimals, thirds never do
  const decimals = String(Math.round((top * 1e6) / bottom)).padStart(6, '0')
  const value = `${whole || '0'}.${bottom === 3 ? decimals : decimals.replace(/0+$/, '')}`
  return { end, found: { value, fraction, ...(bottom === 3 && { problem: 'does-not-end' as const }) } }
}

/** Whether the digits before are a numerator. */
function isFractionBar(text: string, at: number): boolean {
  return text.charCodeAt(at) === SLASH && digitsEnd(text, at + 1) > at + 1
}

function digitsEnd(text: string, from: number): number {
  let at = from
  for (let code = text.charCodeAt(at); code >= 48 && code <= 57; code = text.charCodeAt(at)) at += 1
  return at
}
