import type { EffectName } from './effects.js'
import type { NeedName } from './needs.js'

/** What a step may stand on; `machine` steps have no `on`. */
export type PartKind =
  | 'machine'
  | 'support'
  | 'axle'
  | 'shield'
  | 'gearcase'
  | 'opening'
  | 'cover'
  | 'seal'
  | 'cover seal'

/** Signal words in the sense of ANSI Z535.6; `notice` is about damage, never about injury. */
export type SignalWord = 'danger' | 'warning' | 'caution' | 'notice'

export type HazardCode =
  | 'procedure/caution-machine-may-move'
  | 'procedure/caution-lifting'
  | 'procedure/caution-stands'
  | 'procedure/caution-hot-oil'
  | 'procedure/caution-oil-on-skin'
  | 'procedure/caution-wheel-turns'
  | 'procedure/caution-chips'
  | 'procedure/caution-used-oil'
  | 'procedure/caution-weeping-washer'
  | 'procedure/caution-weeping-taper'
  | 'procedure/caution-sharp-scraper'

export interface Hazard {
  readonly code: HazardCode
  readonly signal: SignalWord
}

export type ToolKind =
  | 'chocks'
  | 'jack'
  | 'stands'
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
  | 'used-oil container'

/** One action of the trade: what must hold first, what it changes, and what the job needs for it. */
export interface ActionRow {
  /** First word of the ids of steps that do it. */
  readonly short: string
  readonly on: readonly PartKind[]
  readonly needs: readonly NeedName[]
  readonly changes: readonly EffectName[]
  readonly hazards: readonly Hazard[]
  readonly tools: readonly ToolKind[]
  readonly supplies: readonly SupplyKind[]
  /** House estimate; `planned`: the planner works the time out (draining, hose, cure, settling). */
  readonly minutes: number | 'planned'
}
