import { type FoundNumber, readNumber, type TextCursor } from './readNumber.js'
import { readUnitName } from './readUnit.js'

/** The parts of a string, in any order. */
export interface QuantityParts {
  readonly kind: 'nominal' | 'range' | 'tolerance' | 'plus and minus' | 'min' | 'max'
  readonly numbers: readonly FoundNumber[]
  readonly isPercent: boolean
  /** The unit's name without spaces, dots and hyphens; `written` is as written. */
  readonly name: string
  readonly written: string
}

const BOUND_PATTERN = /^(?:(≥|>=|min\.?|at least)|≤|<=|max\.?|at most|up to) *(?=[-+0-9.,])/i
const RANGE_PATTERN = / *(?:–|-|\.\.\.?|to ) *(?=[-+0-9.,])/y
const TOLERANCE_PATTERN = / *(?:±|\+\/-|\+-) *(?=[0-9.,])/y
const PLUS_PATTERN = / *(?=\+ *[0-9.,])/y
const MINUS_PATTERN = / *\/? *(?=- *[0-9.,])/y
const PERCENT_PATTERN = / *%/y

/** Reads a word or sign for a single limit, such as `max` or `≥`. */
export function readBound(reading: TextCursor): 'nominal' | 'min' | 'max' {
  const code = reading.text.charCodeAt(0)
  const found = code >= 48 && code <= 57 ? null : BOUND_PATTERN.exec(reading.text)
  if (found === null) return 'nominal'
  reading.at = found[0].length
  return found[1] === undefined ? 'max' : 'min'
}

/** Reads the numbers and the unit in any order: `20 ± 2 N·m`, `20 N·m ± 2 N·m`, `20 N·m ± 10 %`. */
export function readParts(
  reading: TextCursor,
  first: FoundNumber,
  bound: 'nominal' | 'min' | 'max',
): QuantityParts {
  const { text } = reading
  const start = reading.at
  const name = readUnitName(reading)
  const written = text.slice(start, reading.at).trim()
  if (bound !== 'nominal' || reading.at === text.length)
    return { kind: bound, numbers: [first], isPercent: false, name, written }
  const numbers = [first]
  const kind = readOtherNumbers(reading, numbers)
  const isPercent = kind !== 'nominal' && kind !== 'range' && skipMatch(reading, PERCENT_PATTERN)
  const place = reading.at
  const second = readUnitName(reading)
  if (name !== '' && second !== '' && second !== name) reading.at = place
  return {
    kind,
    numbers,
    isPercent,
    ...(name === '' ? { name: second, written: text.slice(place, reading.at).trim() } : { name, written }),
  }
}

function readOtherNumbers(reading: TextCursor, numbers: FoundNumber[]): QuantityParts['kind'] {
  const start = reading.at
  const kind = readKind(reading)
  if (kind === 'nominal') return kind
  const second = readNumber(reading)
  const thirdNumber =
    kind === 'plus and minus' && skipMatch(reading, MINUS_PATTERN) ? readNumber(reading) : undefined
  if (second) numbers.push(second)
  if (thirdNumber) numbers.push(thirdNumber)
  if (numbers.length === (kind === 'plus and minus' ? 3 : 2)) return kind
  // do not read an incomplete tolerance
  numbers.length = 1
  reading.at = start
  return 'nominal'
}

function readKind(reading: TextCursor): QuantityParts['kind'] {
  if (skipMatch(reading, RANGE_PATTERN)) return 'range'
  if (skipMatch(reading, TOLERANCE_PATTERN)) return 'tolerance'
  return skipMatch(reading, PLUS_PATTERN) ? 'plus and minus' : 'nominal'
}

function skipMatch(reading: TextCursor, pattern: RegExp): boolean {
  pattern.lastIndex = reading.at
  if (!pattern.test(reading.text)) return false
  reading.at = pattern.lastIndex
  return true
}
