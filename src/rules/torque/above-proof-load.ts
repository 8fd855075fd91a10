import { calculateBoltLoad } from '../lookup/fastenings.js'
import { tighteningRule } from '../ruleMakers.js'

/**
 * Bolts of a stated class whose torque would stretch them beyond their proof load even dry. A unit or the
 * class is wrong. Drain plugs have no stated class; `torque/slip-at-plug` checks them.
 * Judges: Every torque of a cover or shield, including overrides, whose `thread` is metric or inch and can be
 * read, with `propertyClass`. F = T ÷ (0.20 × d), with d the nominal diameter, and T the nominal or the
 * maximum of limits (the minimum, if there is no maximum), by the first printed figure. Finds an F above the
 * proof load of the class.
 * Place: `<tightening>/torque`
 * Params: part: the name of the part (see terms); thread: as written; propertyClass: as written; torque: T as
 * printed; load: F in N; proof: the proof load in N
 * Harm: machine
 * Source: F = T ÷ (K·d), IFI notes quoted in a machine manual. Proof stresses of ISO 898-1:1999, from a secondary
 * source.
 */
export const rule = tighteningRule('torque/above-proof-load', 'error', (indexedTightening) => {
  const boltLoad = calculateBoltLoad(indexedTightening)
  if (boltLoad === undefined || boltLoad.belowProof) return []
  return [{ path: `${indexedTightening.path}/torque`, params: boltLoad.params }]
})
