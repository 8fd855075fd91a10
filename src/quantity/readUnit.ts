import type { Finding } from '../finding.js'
import type { QuantityCodes } from './codes.js'
import { measureOf } from './measureOf.js'
import type { Reading } from './readNumber.js'
import { textFinding } from './textFinding.js'
import type { Measure, Unit } from './unit.js'
import { unitNamed } from './unitNames.js'

const SPACE = 32
const HYPHEN = 45

/** What is left out of a name: spaces, brackets, dots, hyphens and other signs of a product. */
const LEFT_OUT = ' ().*^×-'

/** Signs that end a unit because a number or a tolerance follows. */
const ENDS = '±+–%≥≤<>,;='

/** The name that stands where the reading is, without spaces, dots and hyphens; `''`, and no step, where none does. */
export function readUnitName(reading: Reading): string {
  const { text } = reading
  let name = ''
  let at = reading.at
  for (; at < text.length; at++) {
    const sign = text.charAt(at)
    const code = text.charCodeAt(at)
    if (code >= 48 && code <= 57) {
      // only a digit right behind its letter or `^` belongs to the unit
      if (!/[a-z^]/i.test(text.charAt(at - 1))) break
      name += sign
    } else if (ENDS.includes(sign)) break
    else if (code === HYPHEN && /^- *[0-9]/.test(text.slice(at, at + 4))) break
    else if (code === SPACE && text.startsWith(' to ', at)) break
    else if (!LEFT_OUT.includes(sign)) name += sign
  }
  if (name !== '') reading.at = at
  return name
}

/** How a name is decided that could mean more than one unit. */
export interface NameOptions {
  readonly measure?: Measure
  readonly assume?: readonly Unit[]
}

/** The unit that a name means to this caller; what stands against it goes into `findings`. */
export function unitMeant(
  name: string,
  written: string,
  options: NameOptions,
  findings: Finding[],
): Unit | undefined {
  const meaning = unitNamed(name)
  if (meaning === undefined) {
    findings.push(textFinding('quantity/unit-is-unknown', { text: written }))
    return undefined
  }
  const { measure, assume } = options
  const { units, trouble } = meaning
  const differences = measure === 'temperatureDifference'
  const known = differences ? units.map(asDifference) : units
  const fitting = measure === undefined ? known : known.filter((unit) => measureOf(unit) === measure)
  const [first] = fitting
  if (first === undefined) {
    const unit = known[0] ?? 'N.m'
    findings.push(
      textFinding('quantity/unit-is-of-another-measure', { unit, measure: measure ?? measureOf(unit) }),
    )
    return undefined
  }
  if (trouble === undefined) return first
  if (trouble === 'mass-for-force') {
    findings.push(textFinding('quantity/unit-is-mass-for-force', { text: written, unit: first }, 'warning'))
    return first
  }
  if (trouble === 'ambiguous') {
    const assumed = fitting.find((unit) => assume?.includes(unit))
    if (assumed) return assumed
    if (fitting.length === 1 && measure !== undefined) return first
  }
  findings.push(textFinding(TROUBLE_CODES[trouble], { text: written, candidates: fitting }))
  return undefined
}

const TROUBLE_CODES = {
  ambiguous: 'quantity/unit-is-ambiguous',
  'a-ratio': 'quantity/unit-is-a-ratio',
  'another-case': 'quantity/unit-is-another-case',
} as const satisfies { [trouble: string]: keyof QuantityCodes }

function asDifference(unit: Unit): Unit {
  if (unit === 'degC') return 'degC_diff'
  if (unit === 'degF') return 'degF_diff'
  return unit === 'K' ? 'K_diff' : unit
}
