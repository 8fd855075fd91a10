import { type Finding, type FindingMaker, makeFinding, type Severity } from '../base/index.js'
import type { QuantityCodes } from './codes.js'
import { findDifferenceUnit, measureOf } from './measureOf.js'
import type { TextCursor } from './readNumber.js'
import type { Measure, Unit } from './unit.js'
import { findUnitName } from './unitNames.js'

/**
 * Reads a unit name without spaces, dots and hyphens; `''`, without moving on, if there is none at the
 * current position.
 */
export function readUnitName(reading: TextCursor): string {
  const { text } = reading
  let name = ''
  let at = reading.at
  let kept = at
  for (; at < text.length; at++) {
    const part = classifyCharacter(text, at)
    if (part === 'kept') continue
    if (at > kept) name += text.slice(kept, at)
    kept = at + 1
    if (part === 'end') break
  }
  if (at > kept) name += text.slice(kept, at)
  if (name !== '') reading.at = at
  return name
}

/** Classifies a character: part of the unit's name, left out, or after its end. */
function classifyCharacter(text: string, at: number): 'kept' | 'left out' | 'end' {
  const code = text.charCodeAt(at)
  // letters, and the signs after them in ASCII
  if (code > 96 && code < 127) return 'kept'
  switch (code) {
    case 32: // space
      return text.startsWith(' to ', at) ? 'end' : 'left out'
    case 45: // hyphen
      return /^- *[0-9]/.test(text.slice(at, at + 4)) ? 'end' : 'left out'
    case 40: // brackets, product signs, power sign
    case 41:
    case 42:
    case 46:
    case 94:
    case 0xb7:
    case 0xd7:
      return 'left out'
    case 37: // % + , ; < = > ± – ≤ ≥
    case 43:
    case 44:
    case 59:
    case 60:
    case 61:
    case 62:
    case 0xb1:
    case 0x2013:
    case 0x2264:
    case 0x2265:
      return 'end'
    default:
      // a digit belongs to the unit only directly after a letter or `^`
      return code >= 48 && code <= 57 && !/[a-z^]/i.test(text.charAt(at - 1)) ? 'end' : 'kept'
  }
}

/** Options that choose between several meanings of a name. */
interface UnitNameOptions {
  readonly measure?: Measure
  readonly assume?: readonly Unit[]
}

/** Whether each part is a separate unit: `m in` is not a minute. */
function areSeparateUnits(written: string, [unit = 'N.m']: readonly Unit[]): boolean {
  return (
    ['length', 'distance', 'volume', 'mass', 'duration'].includes(measureOf(unit)) &&
    written.split(/ +/).every((part) => findUnitName(part) !== undefined)
  )
}

/** Finds the unit that a name means to this caller; doubts are added to `findings`. */
export function findIntendedUnit(
  name: string,
  written: string,
  options: UnitNameOptions,
  findings: Finding<QuantityCodes>[],
): Unit | undefined {
  const meaning = findUnitName(name)
  if (meaning === undefined || (written.includes(' ') && areSeparateUnits(written, meaning.units))) {
    findings.push(makeTextFinding('quantity/unit-is-unknown', { text: written }))
    return undefined
  }
  const { measure, assume } = options
  const { units, problem } = meaning
  const [single] = units
  if (single !== undefined && problem === undefined && measure === undefined) return single
  const isDifference = measure === 'temperatureDifference'
  const possibleUnits = isDifference ? units.map(findDifferenceUnit) : units
  const fittingUnits =
    measure === undefined ? possibleUnits : possibleUnits.filter((unit) => measureOf(unit) === measure)
  const [first] = fittingUnits
  if (first === undefined) {
    const unit = possibleUnits[0] ?? 'N.m'
    findings.push(
      makeTextFinding('quantity/unit-of-other-measure', { unit, measure: measure ?? measureOf(unit) }),
    )
    return undefined
  }
  if (problem === undefined) return first
  if (problem === 'mass-for-force') {
    findings.push(makeTextFinding('quantity/mass-unit-for-force', { text: written, unit: first }, 'warning'))
    return first
  }
  if (problem === 'ambiguous') {
    const assumedUnit = fittingUnits.find((unit) => assume?.includes(unit))
    if (assumedUnit) return assumedUnit
    if (fittingUnits.length === 1 && measure !== undefined) return first
  }
  findings.push(makeTextFinding(UNIT_CODES_BY_PROBLEM[problem], { text: written, candidates: fittingUnits }))
  return undefined
}

const UNIT_CODES_BY_PROBLEM = {
  ambiguous: 'quantity/unit-is-ambiguous',
  'a-ratio': 'quantity/ratio-of-units',
  'another-case': 'quantity/unit-in-wrong-case',
} as const satisfies { [problem: string]: keyof QuantityCodes }

const makeQuantityFinding = makeFinding as FindingMaker<QuantityCodes>

/** Makes a finding about a text that is not a document. */
export function makeTextFinding<Code extends keyof QuantityCodes>(
  code: Code,
  params: QuantityCodes[Code],
  severity: Severity = 'error',
): Finding<Pick<QuantityCodes, Code>> {
  return makeQuantityFinding(code, severity, { kind: 'text' }, '', params)
}
