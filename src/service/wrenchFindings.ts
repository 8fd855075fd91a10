import type { Finding } from '../base/index.js'
import { addPeriod, compareDates, type DateText } from '../calendar/index.js'
import type { Id, Toolbox, WrenchScale } from '../spec/index.js'
import { calibrationInputs } from '../torque/index.js'
import { type ServiceCodes, serviceFinding } from './codes.js'

/**
 * The toolbox without wrenches whose scale ends below where it begins: no setting can be read off such a scale, and
 * one slip of the pen should not keep the other wrenches from work. A rule tells it too; a plan may be asked without.
 */
export function leaveOutWrenches(toolbox: Toolbox): {
  readonly toolbox: Toolbox
  readonly findings: readonly Finding<ServiceCodes>[]
} {
  const document = { kind: 'toolbox', id: toolbox.id } as const
  const findings = Object.entries(toolbox.wrenches).flatMap(([id, { name, scales }]) =>
    scales.flatMap((scale, place) => {
      if (!isReversed(scale)) return []
      const { lowest, highest, unit } = scale
      return [
        serviceFinding('service/scale-reversed', 'error', document, `/wrenches/${id}/scales/${place}`, {
          wrench: name,
          lowest: { value: lowest, unit },
          highest: { value: highest, unit },
        }),
      ]
    }),
  )
  const wrenches = Object.entries(toolbox.wrenches).filter(([, { scales }]) => !scales.some(isReversed))
  return { toolbox: { ...toolbox, wrenches: Object.fromEntries(wrenches) }, findings }
}

function isReversed({ lowest, highest }: WrenchScale): boolean {
  return highest < lowest
}

const LAST_FULL_YEAR = '9999-01-01'

/** Findings for the wrenches that a visit uses whose calibration has run out, or whose date nobody kept. */
export function checkCalibration(
  toolbox: Toolbox,
  wrenches: readonly Id[],
  today: DateText,
): readonly Finding<ServiceCodes>[] {
  const document = { kind: 'toolbox', id: toolbox.id } as const
  return wrenches.flatMap((id): readonly Finding<ServiceCodes>[] => {
    const wrench = toolbox.wrenches[id]
    if (wrench === undefined) return []
    const { from, interval, cycles, byCycles } = calibrationInputs(wrench)
    const path = `/wrenches/${id}`
    if (from === undefined)
      return [
        serviceFinding('service/calibration-not-recorded', 'info', document, path, { wrench: wrench.name }),
      ]
    const found: Finding<ServiceCodes>[] = []
    // A date to come has not run out, and the calendar ends with the year 9999.
    const mayHaveRunOut = compareDates(from, today) <= 0 && compareDates(from, LAST_FULL_YEAR) < 0
    const dueOn =
      interval.period === undefined || !mayHaveRunOut ? undefined : addPeriod(from, interval.period)
    if (dueOn !== undefined && compareDates(dueOn, today) <= 0)
      found.push(
        serviceFinding('service/calibration-run-out', 'warning', document, `${path}/calibration/date`, {
          wrench: wrench.name,
          dueOn,
        }),
      )
    if (byCycles === 'due')
      found.push(
        serviceFinding(
          'service/calibration-cycles-run-out',
          'warning',
          document,
          `${path}/calibration/cyclesSince`,
          { wrench: wrench.name, cycles: cycles.used ?? cycles.limit, limit: cycles.limit },
        ),
      )
    return found
  })
}
