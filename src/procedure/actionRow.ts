import type { LeafBelow } from '../spec/index.js'
import type { ProcedureCodes, SignalWord } from './codes.js'
import type { EffectName } from './effects.js'
import type { NeedName } from './needs.js'

/** The kinds of parts that steps work on; a step on the whole machine has no `on`. */
export type PartKind =
  | 'machine'
  | 'support'
  | 'secured item'
  | 'axle'
  | 'shield'
  | 'gearcase'
  | 'opening'
  | 'cover'
  | 'seal'
  | 'cover seal'
  | 'filter'
  | 'filter seal'

export type HazardCode = Exclude<Extract<keyof ProcedureCodes, `procedure/caution-${string}`>, ShieldCode>

/** A caution that names a shield of the sheet; it is not in the table of actions. */
export type ShieldCode = 'procedure/caution-shield-stays'

export interface Hazard {
  readonly code: HazardCode
  readonly signal: SignalWord
}

export type ToolKind =
  | 'chocks'
  | 'jack'
  | 'stands'
  | 'ramps'
  | 'brush'
  | 'socket or key'
  | 'drain pan'
  | 'suction pump'
  | 'scraper'
  | 'measuring vessel'
  | 'funnel and hose'
  | 'torque wrench'
  | 'breaker bar'

export type SupplyKind =
  | 'rags'
  | 'gloves and goggles'
  | 'oil'
  | 'additive'
  | 'seal'
  | 'sealant'
  | 'solvent'
  | 'sample bottle'
  | 'used-oil container'

/** A figure that a step shows: a leaf of the sheet. */
export interface ShownFigure {
  /** Its key in the step's `values`; a figure of `each` gearcase has the id of the gearcase. */
  readonly name: string
  /** The owner of the figure: the machine, the step's part, its oil space, or each gearcase of the work. */
  readonly of: 'machine' | 'part' | 'oil space' | 'each changed gearcase' | 'each oil space'
  /** The rest of the pointer to the leaf; empty if the part itself is the leaf. */
  readonly leaf:
    | ''
    | LeafBelow<
        | '/machine'
        | `/${'gearcases' | 'shields'}/*`
        | '/gearcases/*/oilSpace'
        | `/gearcases/*/${'openings' | 'covers' | 'filters'}/*`
      >
}

/** An action with its preconditions, effects, figures, hazards, tools and supplies. */
export interface ActionRow {
  /** A short word for the action, for step ids. */
  readonly short: string
  readonly on: readonly PartKind[]
  readonly needs: readonly NeedName[]
  readonly changes: readonly EffectName[]
  readonly figures: readonly ShownFigure[]
  readonly hazards: readonly Hazard[]
  readonly tools: readonly ToolKind[]
  readonly supplies: readonly SupplyKind[]
  /** A house estimate; `planned` minutes are calculated for the visit (draining, hose, cure, settling). */
  readonly minutes: number | 'planned'
}

/** Preconditions of any work on the machine. */
export const SAFETY_NEEDS: readonly NeedName[] = [
  'manual-not-read',
  'protection-not-worn',
  'machine-not-on-level-ground',
  'engine-running',
  'wheels-not-chocked',
  'machine-not-secured',
  'jack-as-support',
]

export const HAZARDS = {
  mayMove: { code: 'procedure/caution-machine-may-move', signal: 'warning' },
  mustNotRun: { code: 'procedure/caution-must-not-run', signal: 'notice' },
  exhaust: { code: 'procedure/caution-exhaust', signal: 'warning' },
  lifting: { code: 'procedure/caution-lifting', signal: 'warning' },
  parkingBrake: { code: 'procedure/caution-parking-brake', signal: 'warning' },
  stands: { code: 'procedure/caution-stands', signal: 'warning' },
  ramps: { code: 'procedure/caution-ramps', signal: 'warning' },
  hotOil: { code: 'procedure/caution-hot-oil', signal: 'caution' },
  oilOnSkin: { code: 'procedure/caution-oil-on-skin', signal: 'caution' },
  wheelTurns: { code: 'procedure/caution-wheel-turns', signal: 'caution' },
  rolling: { code: 'procedure/caution-rolling', signal: 'warning' },
  chips: { code: 'procedure/caution-chips', signal: 'notice' },
  usedOil: { code: 'procedure/caution-used-oil', signal: 'notice' },
  weepingWasher: { code: 'procedure/caution-weeping-washer', signal: 'notice' },
  weepingTaper: { code: 'procedure/caution-weeping-taper', signal: 'notice' },
  sharpScraper: { code: 'procedure/caution-sharp-scraper', signal: 'caution' },
} satisfies Readonly<Record<string, Hazard>>

/** Preconditions of running or driving the machine. */
export const RUN_NEEDS: readonly NeedName[] = [
  'part-not-tightened',
  'run-without-oil',
  'run-on-stands',
  'machine-must-not-run',
  'chocks-or-pan-in-place',
  'machine-not-secured-for-run',
  'guard-not-refitted',
]

/**
 * Preconditions of driving off the ramps; the fill plug may be turned in by hand until the level is right.
 */
export const DRIVE_OFF_NEEDS: readonly NeedName[] = [
  'driven-with-plug-loose',
  'run-without-oil',
  'chocks-or-pan-in-place',
  'machine-not-secured-for-run',
  'guard-not-refitted',
]

/** Preconditions of rolling the machine by hand to bring a wheel to its mark. */
export const ROLL_NEEDS: readonly NeedName[] = [
  'manual-not-read',
  'protection-not-worn',
  'machine-not-on-level-ground',
  'engine-running',
  'run-on-stands',
  'chocks-or-pan-in-place',
]

/** Preconditions of loosening a plug or cover. */
export const LOOSENING_NEEDS: readonly NeedName[] = [
  'variant-not-found',
  ...SAFETY_NEEDS,
  'shield-in-the-way',
  'area-not-cleaned',
  'fill-not-cracked',
  'fill-plug-loose',
]

/** Preconditions of fitting a plug or cover. */
export const FITTING_NEEDS: readonly NeedName[] = [
  ...SAFETY_NEEDS,
  'part-not-removed',
  'filter-left-out',
  'magnet-not-inspected',
  'magnet-not-cleaned',
  'face-not-wiped',
  'seal-not-renewed',
]

export const SEAL_FIGURE: ShownFigure = { name: 'seal', of: 'part', leaf: '' }
export const PLACE_FIGURE: ShownFigure = { name: 'place', of: 'part', leaf: '/place' }
export const MASS_FIGURE: ShownFigure = { name: 'mass', of: 'machine', leaf: '/mass' }
export const REFILL_FIGURE: ShownFigure = { name: 'refill', of: 'oil space', leaf: '/fill/drainAndRefill' }
export const OILS_FIGURE: ShownFigure = { name: 'oils', of: 'oil space', leaf: '/oils' }
export const SETTLING_FIGURE: ShownFigure = {
  name: 'minutesAfterStop',
  of: 'oil space',
  leaf: '/fill/level/minutesAfterStop',
}
