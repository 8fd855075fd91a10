import type { JsonPointer } from '../../base/index.js'
import { calculateMaxTorque } from '../lookup/calculateMaxTorque.js'
import { isDisputed } from '../lookup/isDisputed.js'
import { pickFirstPrinted } from '../lookup/pickFirstPrinted.js'
import { readStatedRange } from '../lookup/readStatedRange.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * Torques of the fill and the drain plug of one gearcase that are eight times or more apart, and no stated thread
 * explains it: one of the two has the wrong unit (inch-pounds for foot-pounds is twelve times off).
 * Judges: Every gearcase: the torques of an opening that drains and of another that fills but does not drain, neither
 * turned by hand, if one of the two has no `thread`, by the first printed figures of the base sheet. Finds each such
 * pair whose higher figure is at least 8 times the other. Not judged if a printed figure beside one of them
 * disagrees, or `torque/large-for-drive` finds one of them.
 * Place: the higher torque
 * Params: gearcase: its name; high: the higher torque as printed; low: the other one
 * Harm: machine
 * Common practice, no source: the factor of 8 is our own estimate, below the unit mistakes of 9.8 and 12.
 */
export const rule = sheetRule('torque/fill-and-drain-far-apart', 'warning', ({ sheet }) => {
  const plugs = sheet.tightenings.flatMap(({ path, tightening, on }) => {
    if (tightening.kind !== 'torque' || on.kind !== 'opening' || !path.startsWith(on.path)) return []
    const range = readStatedRange(tightening.torque, 'N.m')
    const at: JsonPointer = `${path}/torque`
    if (range === undefined || on.part.drive.kind === 'hand' || isDisputed(sheet, at)) return []
    if (range.high > (calculateMaxTorque(on)?.limit ?? Infinity)) return []
    return [{ at, on, printed: pickFirstPrinted(tightening.torque), torque: range.high }]
  })
  const drains = plugs.filter(({ on }) => on.part.uses.some(({ role }) => role === 'drain'))
  const fills = plugs.filter(
    (plug) => !drains.includes(plug) && plug.on.part.uses.some(({ role }) => role === 'fill'),
  )
  return drains.flatMap((drain) =>
    fills.flatMap((fill) => {
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
