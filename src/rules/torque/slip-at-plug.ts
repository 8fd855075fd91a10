import { findTorqueSlip } from '../../torque/index.js'
import { hasFigure, pickFirstPrinted } from '../lookup/printedValues.js'
import { hasDisagreement } from '../lookup/statedValues.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A plug torque far from the usual torque of its thread, but usual when multiplied or divided by 12 or by
 * 9.80665. Inch-pounds were taken for foot-pounds, or kilogram-force metres for newton metres.
 * Judges: Every torque of an opening with a thread, including overrides, by its first printed figure, against
 * the plug table's band for thread and housing. The figure is the nominal, the middle of two limits, or the
 * single limit. The band includes its ends. Finds, outside the band, a factor (× 12, ÷ 12, × 9.80665, ÷
 * 9.80665) that moves it inside; of several, the first that explains the printed unit. A figure below the
 * band is not judged if the plug is turned by hand or has an o-ring: such caps need far less torque than a
 * plug with a washer. Skipped if a second printed figure disagrees with the first, since that finding explains
 * it.
 * Place: `<tightening>/torque`
 * Params: part: the name of the part (see terms); thread: as written; torque: as first printed; factor: the
 * factor; becomes: the torque times the factor; meant: the probable unit, absent if unknown
 * Harm: machine
 * Source: plug torques of an engine maker's works standards MTN 5183-1 and -6, from a secondary source. Its threads are
 * oiled; a dry plug is compared with the same band, whose width is for such differences. The sheet's own figure always
 * comes before a general table.
 */
export const rule = sheetRule('torque/slip-at-plug', 'warning', ({ sheet }) =>
  sheet.tightenings.flatMap(({ path, tightening, on }) => {
    if (tightening.kind !== 'torque' || on.kind !== 'opening' || !hasFigure(tightening.torque)) return []
    const at = `${path}/torque`
    if (hasDisagreement(sheet, at)) return []
    const { thread, housing = 'not stated' } = on.part
    const [slip] = findTorqueSlip(tightening.torque, thread, housing).unitMistakes
    if (slip === undefined || thread === undefined) return []
    const isCapOrORing = on.part.drive.kind === 'hand' || on.part.seals.some(({ kind }) => kind === 'o-ring')
    if (isCapOrORing && slip.factor.startsWith('×')) return []
    const torque = pickFirstPrinted(tightening.torque)
    const params = { part: on.name, thread, torque, factor: slip.factor, becomes: { ...slip.becomes } }
    return [{ path: at, params: { ...params, meant: slip.meant } }]
  }),
)
