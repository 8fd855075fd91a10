import { makeReason, type ReasonMaker } from '../base/index.js'
import type { Quantity } from '../quantity/index.js'

type Amount = Readonly<Pick<Quantity, 'unit'> & { value: number | string }>
type NoParams = Record<never, never>
type GradePair = { permitted: string; offered: string }

/** Codes of the oil functions with their params. */
export interface OilCodes {
  'oil/grade-not-known': { grade: string; system: string; known: readonly string[] }
  'oil/grade-not-in-edition': { grade: string; system: string; edition: string }
  'oil/grade-impossible': { grade: string; system: string }
  'oil/edition-not-known': { edition: string; system: string; known: readonly string[] }
  'oil/grade-same': { grade: string }
  'oil/multigrade-covers': GradePair
  'oil/grade-differs': GradePair
  'oil/hot-grade-thicker': GradePair
  'oil/grade-renamed': GradePair & { system: string }
  'oil/winter-grade-missing': GradePair
  'oil/winter-grade-colder': GradePair
  'oil/winter-grade-warmer': GradePair
  'oil/grade-not-on-label': { permitted: string }
  'oil/systems-differ': GradePair
  'oil/viscosity-inside-band': { grade: string; viscosity: Amount; at: Amount }
  'oil/viscosity-outside-band': { grade: string; viscosity: Amount; at: Amount }
  'oil/label-contradicts-viscosity': { grade: string; viscosity: Amount; at: Amount }
  'oil/maker-fluid-named': { name: string }
  'oil/maker-fluid-not-named': { name: string; offered: string }
  'oil/category-not-stated': NoParams
  'oil/category-on-label': { category: string }
  'oil/category-not-on-label': { category: string }
  'oil/category-differs': { permitted: string; offered: readonly string[] }
  'oil/category-doubtful': { permitted: string; offered: readonly string[] }
  'oil/category-harms-yellow-metal': { permitted: string; offered: readonly string[] }
  'oil/category-yellow-metal-unknown': { permitted: string; offered: readonly string[] }
  'oil/category-higher-no-yellow-metal': { permitted: string; offered: readonly string[] }
  'oil/category-dual-rated': { permitted: string; offered: readonly string[] }
  'oil/limited-slip-not-stated': NoParams
  'oil/limited-slip-fits': { limitedSlip: string }
  'oil/limited-slip-additive-missing': NoParams
  'oil/limited-slip-additive-separate': { name: string }
  'oil/limited-slip-additive-twice': { name: string }
  'oil/limited-slip-not-permitted': NoParams
  'oil/limited-slip-not-mentioned': NoParams
  'oil/limited-slip-not-on-label': { limitedSlip: string }
  'oil/ambient-in-range': { ambient: Amount; min?: Amount; max?: Amount }
  'oil/ambient-out-of-range': { ambient: Amount; min?: Amount; max?: Amount }
  'oil/ambient-not-given': { min?: Amount; max?: Amount }
  'oil/ambient-not-a-range': { printed: Amount }
  'oil/ambient-not-limited': NoParams
  'oil/oils-not-stated': NoParams
  'oil/no-oil-for-ambient': { ambient: Amount }
  'oil/viscosities-missing': { missing: readonly string[] }
  'oil/viscosities-reversed': { kv40: Amount; kv100: Amount }
  'oil/below-pour-point': { temperature: Amount; pourPoint: Amount }
  'oil/pour-point-not-stated': NoParams
  'oil/temperature-outside-range': { temperature: Amount; min: Amount; max: Amount }
  'oil/viscosity-outside-range': { viscosity?: Amount; temperature?: Amount; min: Amount; max: Amount }
  'oil/viscosity-by-d341': { kv40: Amount; kv100: Amount; temperature: Amount }
  'oil/viscosity-index-undefined': { kv100: Amount; min: Amount }
  'oil/viscosity-index-by-d2270': { procedure: string; kv40: Amount; kv100: Amount }
  'oil/density-missing': NoParams
  'oil/density-outside-range': { density: Amount; min: Amount; max: Amount }
  'oil/density-by-d1250': { density15: Amount; temperature: Amount }
}

export const oilReason: ReasonMaker<OilCodes> = makeReason
