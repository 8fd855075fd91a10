import { compareExact, exactOf } from '../quantity/index.js'
import type { TorqueWrench } from '../spec/index.js'
import { exactTorque } from './exactTorque.js'
import type { Deviation } from './scaleMark.js'

/**
 * The wrench's permissible error. ISO 6789 for a setting tool (type II class A): ±6 % where the tool's maximum is up
 * to and including 10 N·m, else ±4 %, of the reference reading; where scales or the declared range disagree about
 * which side of 10 N·m the tool ends on, the wider error is used. For other types the figure of the standard was not
 * read in a source: `undefined`.
 */
export function wrenchDeviation(wrench: TorqueWrench): Deviation | undefined {
  const { accuracy } = wrench
  if (accuracy.kind !== 'ISO 6789')
    return { percent: accuracy.percent, of: accuracy.kind === 'of reading' ? 'reading' : 'full scale' }
  if (wrench.type !== 'click') return undefined
  const tops = wrench.declaredRange
    ? [wrench.declaredRange.max]
    : wrench.scales.map(({ highest, unit }) => ({ value: highest, unit }))
  const small = tops.some((top) => compareExact(exactTorque(top, 'N.m'), exactOf(10)) <= 0)
  return { percent: small ? 6 : 4, of: 'reading' }
}
