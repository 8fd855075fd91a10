import type { JsonPointer } from '../../base/index.js'
import { calculateMaxTorque } from '../lookup/fastenings.js'
import { pickFirstPrinted } from '../lookup/printedValues.js'
import { hasDisagreement, readStatedRange } from '../lookup/statedValues.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * Torques of the fill and drain plugs of one gearcase that differ by a factor of eight or more, without
 * stated threads that explain it. One has the wrong unit (inch-pounds for foot-pounds differ by a factor of
 * 12).
 * Judges: Every gearcase: the torques of an opening for draining and of another for filling but not draining,
 * if neither is turned by hand and one has no `thread`. Uses the first printed figures of the base sheet.
 * Finds each such pair whose higher figure is at least 8 times the other. Skipped if another printed figure
 * of either torque disagrees, or `torque/large-for-drive` reports one of them.
 * Place: the higher torque
 * Params: gearcase: its name; high: the higher torque as printed; low: the lower torque
 * Harm: machine
 * Common practice, no source: the factor of 8 is our own estimate, below the factors 9.8 and 12 of unit
 * mistakes.
 */
export const rule = sheetRule('torque/fill-and-drain-far-apart', 'warning', ({ sheet }) => {
  const plugs = sheet.tightenings.flatMap(({ path, tightening, on }) => {
    if (tightening.kind !== 'torque' || on.kind !== 'opening' || !path.startsWith(on.path)) return []
    const range = readStatedRange(tightening.torque, 'N.m')
    const at: JsonPointer = `${path}/torque`
    if (range === undefined || on.part.drive.kind === 'hand' || hasDisagreement(sheet, at)) return []
    if (range.high > (calculateMaxTorque(on)?.limit ?? Infinity)) return []
    return [{ at, on, printed: pickFirstPrinted(tightening.torque), torque: range.high }]
  })
  const drainPlugs = plugs.filter(({ on }) => on.part.uses.some(({ role }) => role === 'drain'))
  const fillPlugs = plugs.filter(
    (plug) => !drainPlugs.includes(plug) && plug.on.part.uses.some(({ role }) => role === 'fill'),
  )
  return drainPlugs.flatMap((drain) =>
    fillPlugs.flatMap((fill) => {
      if (fill.on.gearcase !== drain.on.gearcase) return []
      if (fill.on.part.thread !== undefined && drain.on.part.thread !== undefined) return []
      const [lowPlug, highPlug] = fill.torque < drain.torque ? [fill, drain] : [drain, fill]
      if (highPlug.torque < MIN_RATIO * lowPlug.torque) return []
      const params = { gearcase: drain.on.gearcase.name, high: highPlug.printed, low: lowPlug.printed }
      return [{ path: highPlug.at, params }]
    }),
  )
})

const MIN_RATIO = 8
