import { type Reason, requireNumber, requireObject } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import type { IntervalStated, TorqueWrench } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { requireWrench } from './requireInput.js'

const MAX_CYCLES = 5000

export interface CalibrationInputs {
  /** Date of the last calibration; absent if not in the toolbox. */
  readonly from?: DateText
  /** The interval to count from that date. */
  readonly interval: IntervalStated
  readonly cycles: { readonly limit: number; readonly used?: number }
  /** The verdict from the cycles alone: due when the limit is reached. */
  readonly byCycles: 'due' | 'not due' | 'cannot tell'
  readonly reasons: readonly Reason[]
}

/**
 * Reads the calibration date, the limits and the cycles of a torque wrench. It is due after 12 months or 5,000 cycles, whichever comes first.
 * `service/` combines date and interval.
 *
 * Source: ISO 6789:2003 default, as quoted in a torque-tool maker's article. A workshop's own procedure takes
 * precedence.
 */
export function readCalibrationInputs(wrench: TorqueWrench): CalibrationInputs {
  requireWrench('wrench', wrench)
  const { calibration } = wrench
  if (calibration !== undefined) requireObject('wrench.calibration', calibration)
  const used = calibration?.cyclesSince
  if (used !== undefined) requireNumber('wrench.calibration.cyclesSince', used, { min: 0 })
  const reasons: Reason[] = []
  if (calibration === undefined) reasons.push(torqueReason('torque/calibration-date-missing', {}))
  if (used === undefined) reasons.push(torqueReason('torque/cycles-not-counted', { limit: MAX_CYCLES }))
  else if (used >= MAX_CYCLES)
    reasons.push(torqueReason('torque/cycles-used-up', { used, limit: MAX_CYCLES }))
  else reasons.push(torqueReason('torque/cycles-left', { used, limit: MAX_CYCLES }))
  return {
    ...(calibration === undefined ? {} : { from: calibration.date }),
    interval: { kind: 'interval', period: 'P12M' },
    cycles: { limit: MAX_CYCLES, ...(used === undefined ? {} : { used }) },
    byCycles: used === undefined ? 'cannot tell' : used >= MAX_CYCLES ? 'due' : 'not due',
    reasons,
  }
}
