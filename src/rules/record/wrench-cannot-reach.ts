import { MAX_NUMBER } from '../../base/index.js'
import type { TorqueWrench } from '../../spec/index.js'
import { judgeWrenchSetting } from '../../torque/index.js'
import { isPlausibleScale } from '../lookup/isPlausibleScale.js'
import { lookUp } from '../lookup/lookUp.js'
import { recordedTighteningRule } from '../ruleMakers.js'

/**
 * A torque recorded with a wrench that has no such setting: above its highest mark, below its lowest, outside
 * the range declared by its maker, or between two marks. The plug was not tightened to that torque.
 * Judges: Every recorded `torque set` above zero whose `tool` is in a toolbox of the set. Skipped if the
 * scale or its graduation is implausible, or the accuracy is 100 % or more. Finds a torque at which no scale
 * of the wrench has a mark inside the declared range.
 * Place: `<tightening>`
 * Params: part: the name of the part (see terms); wrench: its name; torque: as recorded; because: code and params of
 * each reason
 * Harm: machine
 * Source: the judgement of `judgeWrenchSetting`. ISO 6789:2017 as quoted by tool makers.
 */
export const rule = recordedTighteningRule(
  'record/wrench-cannot-reach',
  'error',
  ({ path, done, part }, { set }) => {
    if (done.kind !== 'torque set' || done.torque.value <= 0) return []
    const wrench = set.toolboxes
      .map(({ document }) => lookUp(document.wrenches, done.tool))
      .find((found) => found !== undefined)
    if (wrench === undefined || !isPlausibleWrench(wrench)) return []
    const torque = { ...done.torque, value: Math.min(done.torque.value, MAX_NUMBER) }
    const { verdict, reasons } = judgeWrenchSetting(wrench, torque, '2017')
    if (verdict === 'can') return []
    const because = reasons.map((reason) => ({ ...reason }))
    return [{ path, params: { part, wrench: wrench.name, torque: { ...done.torque }, because } }]
  },
)

/** Whether the scales and the accuracy are plausible; toolbox rules report implausible ones. */
function isPlausibleWrench({ scales, accuracy, declaredRange }: TorqueWrench): boolean {
  const { min = { value: 0 }, max = { value: 1 } } = declaredRange ?? {}
  return (
    (accuracy.kind === 'ISO 6789' || accuracy.percent < 100) &&
    scales.every(isPlausibleScale) &&
    max.value > 0 &&
    max.value <= MAX_NUMBER &&
    min.value <= MAX_NUMBER
  )
}
