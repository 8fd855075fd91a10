import { calculateBoltLoad } from '../lookup/fastenings.js'
import { hasDisagreement } from '../lookup/statedValues.js'
import { tighteningRule } from '../ruleMakers.js'

/**
 * Bolts of a stated class at about a tenth of their usual torque. Kilogram-force metres were taken for newton
 * metres, inch-pounds for foot-pounds, or the decimal point is wrong. A cover would leak and lose its bolts.
 * Judges: Every torque of a cover or shield without `thenAngle`, including overrides, by the force F of
 * `torque/above-proof-load`. Finds an F below a tenth of the proof load of the class. Skipped if a second printed figure disagrees with the first.
 * Place: `<tightening>/torque`
 * Params: part: the name of the part (see terms); thread: as written; propertyClass: as written; torque: T as
 * printed; load: F in N; proof: the proof load in N
 * Harm: machine
 * Common practice, no source: bolts are usually tightened to about three quarters of their proof load, some in soft
 * housings to a third. The limit of a tenth is our own estimate.
 */
export const rule = tighteningRule('torque/small-for-class', 'warning', (indexedTightening, { sheet }) => {
  const { path, tightening } = indexedTightening
  const boltLoad = calculateBoltLoad(indexedTightening)
  if (boltLoad === undefined || boltLoad.shareOfProof >= 0.1 || hasDisagreement(sheet, `${path}/torque`))
    return []
  if (tightening.kind === 'torque' && tightening.thenAngle !== undefined) return []
  return [{ path: `${path}/torque`, params: boltLoad.params }]
})
