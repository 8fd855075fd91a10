import { type NumberFound, type Reading, readNumber } from './readNumber.js'
import { readUnitName } from './readUnit.js'

/** The parts of a text, whatever their order. */
export interface Parts {
  readonly kind: 'nominal' | 'range' | 'tolerance' | 'plus and minus' | 'min' | 'max'
  readonly numbers: readonly NumberFound[]
  readonly percent: boolean
  /** The unit's name without spaces, dots and hyphens, and as written. */
  readonly name: string
  readonly written: string
}

const BOUND = /^(?:(≥|>=|min\.?|at least)|≤|<=|max\.?|at most|up to) *(?=[-+0-9.,])/i
const RANGE = / *(?:–|-|\.\.\.?|to ) *(?=[-+0-9.,])/y
const TOLERANCE = / *(?:±|\+\/-|\+-) *(?=[0-9.,])/y
const PLUS = / *(?=\+ *[0-9.,])/y
const MINUS = / *\/? *(?=- *[0-9.,])/y
const PERCENT = / *%/y

/** Reads a word or sign for a single limit, such as `max` or `≥`. */
export function readBound(reading: Reading): 'nominal' | 'min' | 'max' {
  const code = reading.text.charCodeAt(0)
  const found = code >= 48 && code <= 57 ? null : BOUND.exec(reading.text)
  if (found === null) return 'nominal'
  reading.at = found[0].length
  return found[1] === undefined ? 'max' : 'min'
}

/** Reads the numbers and the unit in any order: `20 ± 2 N·m`, `20 N·m ± 2 N·m`, `20 N·m ± 10 %`. */
export function readParts(reading: Reading, first: NumberFound, bound: 'nominal' | 'min' | 'max'): Parts {
  const { text } = reading
  const start = reading.at
  const name = readUnitName(reading)
  const written = text.slice(start, reading.at).trim()
  if (bound !== 'nominal' || reading.at === text.length)
    return { kind: bound, numbers: [first], percent: false, name, written }
  const numbers = [first]
  const kind = readOtherNumbers(reading, numbers)
  const percent = kind !== 'nominal' && kind !== 'range' && skipMatch(reading, PERCENT)
  const place = reading.at
  const second = readUnitName(reading)
  if (name !== '' && second !== '' && second !== name) reading.at = place
  return {
    kind,
    numbers,
    percent,
    ...(name === '' ? { name: second, written: text.slice(place, reading.at).trim() } : { name, written }),
  }
}

function readOtherNumbers(reading: Reading, numbers: NumberFound[]): Parts['kind'] {
  const start = reading.at
  const kind = readKind(reading)
  if (kind === 'nominal') return kind
  const second = readNumber(reading)
  const third = kind === 'plus and minus' && skipMatch(reading, MINUS) ? readNumber(reading) : undefined
  if (second) numbers.push(second)
  if (third) numbers.push(third)
  if (numbers.length === (kind === 'plus and minus' ? 3 : 2)) return kind
  // an incomplete tolerance is not read
  numbers.length = 1
  reading.at = start
  return 'nominal'
}

function readKind(reading: Reading): Parts['kind'] {
  if (skipMatch(reading, RANGE)) return 'range'
  if (skipMatch(reading, TOLERANCE)) return 'tolerance'
  return skipMatch(reading, PLUS) ? 'plus and minus' : 'nominal'
}

function skipMatch(reading: Reading, pattern: RegExp): boolean {
  pattern.lastIndex = reading.at
  if (!pattern.test(reading.text)) return false
  reading.at = pattern.lastIndex
  return true
}
