import { makeReason, type ReasonMaker } from '../base/index.js'
import type { Quantity } from '../quantity/index.js'

type Amount = Readonly<Pick<Quantity, 'unit'> & { value: number | string }>
type NoParams = Record<never, never>

/** Codes of the fill functions with their params. */
export interface FillCodes {
  'fill/hose-not-below-funnel': NoParams
  'fill/drop-longer-than-hose': { drop: Amount; length: Amount }
  'fill/bore-wider-than-funnel': { bore: Amount; diameter: Amount }
  'fill/measure-outside-range': { name: string; given: Amount; min: Amount; max: Amount }
  'fill/flow-not-laminar': { reynolds: number; limit: number }
  'fill/entrance-longer-than-hose': { entrance: Amount; length: Amount }
  'fill/funnel-too-small': { fillings: number; limit: number }
  'fill/flow-laminar': { reynolds: number; limit: number }
  'fill/kinetic-correction': { seconds: number }
  'fill/several-fillings': { fillings: number; funnel: Amount }
  'fill/hose-never-full': { hose: Amount }
  'fill/wall-film-not-counted': NoParams
  'fill/fill-opening-closed': NoParams
  'fill/drain-is-the-only-opening': NoParams
  'fill/breather-blocked': NoParams
  'fill/breather-not-checked': NoParams
  'fill/drain-time-is-a-minimum': NoParams
  'fill/wait-for-single-drips': NoParams
  'fill/no-containers': { short: Amount }
  'fill/opened-first': { container: string; taken: Amount }
  'fill/containers-left-over': { oil: string; left: Amount }
  'fill/containers-exact': { oil: string }
  'fill/containers-short': { oil: string; short: Amount }
  'fill/containers-not-searched-fully': { tried: number }
  'fill/other-oil-not-mixed': { oil: string; other: string }
  'fill/no-vessel': NoParams
  'fill/vessel-too-coarse': { vessel: string; error: Amount; tolerance: Amount }
  'fill/vessel-without-marks': { vessel: string }
  'fill/vessel-too-large': { vessel: string; lowestMark: Amount }
  'fill/vessel-too-many-pours': { vessel: string; limit: number }
  'fill/vessel-accurate-enough': { vessel: string; error: Amount; tolerance: Amount }
  'fill/vessel-in-several-pours': { vessel: string; pours: number }
  'fill/tolerance-not-stated': { error: Amount }
  'fill/no-pan': NoParams
  'fill/pan-large-enough': { pan: string; total: Amount; size: Amount }
  'fill/pan-nearly-full': { pan: string; percent: number }
  'fill/empty-pan-between-drains': { pan: string; total: Amount; size: Amount }
  'fill/pan-too-small': { largest: Amount; size: Amount }
  'fill/refill-not-stated': NoParams
  'fill/refill-as-printed': { refilled: Amount; printed: Amount }
  'fill/refill-inside-band': { refilled: Amount; min?: Amount; max?: Amount }
  'fill/refill-outside-band': { refilled: Amount; difference: Amount; min?: Amount; max?: Amount }
  'fill/refill-band-not-stated': { refilled: Amount; printed: Amount; difference: Amount }
  'fill/refill-level-decides': { difference: Amount; method: string }
  'fill/refill-far-off': { difference: Amount; percent: number; limit: number }
}

export const fillReason: ReasonMaker<FillCodes> = makeReason
