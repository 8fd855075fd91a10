import { compareExact, exactOf } from '../quantity/index.js'
import type { TorqueWrench } from '../spec/index.js'
import { exactTorque } from './exactTorque.js'
import type { Deviation } from './findScaleMark.js'

/**
 * The wrench's permissible error. ISO 6789 for a setting tool (type II class A), of the reference reading: ±6
 * % if the tool's maximum is at most 10 N·m, else ±4 %. If one scale ends at 10 N·m or less, ±6 %.
 * `undefined` for other types, whose figures were not read in a source.
 */
export function findWrenchDeviation(wrench: TorqueWrench): Deviation | undefined {
  const { accuracy } = wrench
  if (accuracy.kind !== 'ISO 6789')
    return { percent: accuracy.percent, of: accuracy.kind === 'of reading' ? 'reading' : 'full scale' }
  if (wrench.type !== 'click') return undefined
  const highestValues = wrench.declaredRange
    ? [wrench.declaredRange.max]
    : wrench.scales.map(({ highest, unit }) => ({ value: highest, unit }))
  const isSmall = highestValues.some((max) => compareExact(exactTorque(max, 'N.m'), exactOf(10)) <= 0)
  return { percent: isSmall ? 6 : 4, of: 'reading' }
}
