import { type FindingMaker, makeFinding, makeReason, type Params, type ReasonMaker } from '../base/index.js'
import type { ToolKind } from '../procedure/index.js'
import type { PartName } from './names.js'

type QuantityParam = { readonly value: number | string; readonly unit: string }
type RangeParam = { readonly min?: number; readonly max?: number; readonly unit: string }
type MoneyParam = { readonly amount: number; readonly currency: string }
type ReasonParam = { readonly code: string; readonly params: Params }

/** The codes of visits with the types of their params; the texts are in `message/<language>/service`. */
export interface ServiceCodes {
  // Missing facts
  'service/part-not-known': { part: PartName; facts: readonly string[] }
  'service/variant-not-known': { facts: readonly string[]; candidates: readonly string[] }
  'service/variant-contradicted': { candidates: readonly string[] }
  'service/figure-not-stated': { part: PartName; role: string }
  'service/figure-not-known': { part: PartName; role: string; facts: readonly string[] }
  'service/torque-not-settled': { part: PartName }
  'service/settings-need-toolbox': { parts: readonly PartName[] }
  'service/due-not-known': { parts: readonly PartName[]; service: string; reason: ReasonParam }
  'service/ambient-not-given': { part: PartName }
  'service/no-toolbox': Record<never, never>
  'service/no-stock': Record<never, never>
  'service/viscosity-not-known': { oil: string }
  // Oil
  'service/oil-for-ambient': { oil: string; ambient: QuantityParam }
  'service/oil-only-choice': { oil: string }
  'service/no-oil-for-ambient': { part: PartName; ambient: QuantityParam }
  'service/oil-does-not-meet': { container: string; oil: string; reason: ReasonParam }
  'service/ask-oil-maker': { container: string; oil: string; reason: ReasonParam }
  'service/no-suitable-oil': {
    part: PartName
    oil: string
    offered: readonly string[]
    reasons: readonly ReasonParam[]
  }
  // Tools
  'service/no-wrench-fits': { part: PartName; reasons: readonly ReasonParam[] }
  'service/wrench-required': { from: QuantityParam; to: QuantityParam; count: number }
  'service/scale-reversed': { wrench: string; lowest: QuantityParam; highest: QuantityParam }
  'service/calibration-expired': { wrench: string; dueOn: string }
  'service/calibration-cycles-used-up': { wrench: string; cycles: number; limit: number }
  'service/calibration-not-recorded': { wrench: string }
  'service/socket-found': { tool: string; size: string }
  'service/adaptor-between': { adaptor: string; wrenches: readonly string[] }
  'service/socket-missing': { part: PartName; drive: string; size: string }
  'service/turned-by-hand': { part: PartName }
  'service/drive-not-stated': { part: PartName }
  'service/vessel-too-coarse': { vessel: string; part: PartName; reason: ReasonParam }
  'service/no-vessel': { part: PartName; reason: ReasonParam }
  'service/pan-too-small': { pan: string; size: QuantityParam; volume: QuantityParam }
  'service/no-pan': { volume: QuantityParam }
  'service/stands-too-few': { have: number; need: number }
  'service/stands-too-weak': { stands: string; rating: QuantityParam; mass: QuantityParam }
  'service/stands-strong-enough': { stands: string; rating: QuantityParam; mass: QuantityParam }
  'service/stands-missing': { need: number }
  'service/ramps-too-few': { have: number; need: number }
  'service/ramps-too-weak': { ramps: string; rating: QuantityParam; mass: QuantityParam }
  'service/ramps-strong-enough': { ramps: string; rating: QuantityParam; mass: QuantityParam }
  'service/ramps-missing': { need: number }
  'service/mass-not-stated': Record<never, never>
  // Seals
  'service/seal-every-opening': { count: number }
  'service/seal-replace-not-stated': { count: number }
  'service/access-not-stated': { part: PartName }
  'service/seal-on-condition': { count: number }
  'service/seal-not-known': { part: PartName }
  // Waits
  'service/pour-through': { filler: string; oil: string; temperature: QuantityParam }
  'service/hose-bore-not-known': { filler: string }
  'service/usual-hoses': {
    from: QuantityParam
    to: QuantityParam
    fastest: QuantityParam
    slowest: QuantityParam
  }
  'service/warm-the-bottle': { temperature: QuantityParam }
  'service/no-filler': { part: PartName }
  'service/no-oil-to-pour': { part: PartName }
  'service/pour-volume-not-known': { part: PartName }
  'service/drain-until-drips': { part: PartName }
  'service/settle-stated': { minutes: QuantityParam }
  'service/settle-not-stated': { part: PartName }
  'service/cure-stated': { product: string; time: QuantityParam }
  'service/cure-not-stated': { product: string }
  // Meters
  'service/reading-stale': { meter: string; date: string; days: number; staleAfter: number }
  // Time, consumables and used oil
  'service/several-suitable-oils': { part: PartName; oils: readonly string[]; chosen: string }
  'service/time-sum': { steps: number; minutes: number; waitMinutes: number }
  'service/waiting-time-not-known': { count: number }
  'service/time-from-records': { count: number; min: number; max: number; estimate: number }
  'service/time-few-visits': { count: number; required: number }
  'service/labour': { rate: MoneyParam; cost: MoneyParam }
  'service/only-if-low': Record<never, never>
  'service/only-on-some-machines': {
    variants?: readonly string[]
    modelYears?: { readonly from?: number; readonly to?: number }
    serials?: { readonly prefix?: string; readonly from?: string; readonly to?: string }
    market?: readonly string[]
  }
  'service/supply': { supply: string }
  'service/sample-label': {
    machine: string
    part: PartName
    date: string
    hours?: QuantityParam
    oil?: string
    hoursOnOil?: QuantityParam
  }
  'service/hand-tools': { tools: readonly ToolKind[] }
  'service/used-oil': { volume: QuantityParam }
  'service/drain-limit-from-dry-fill': { part: PartName; volume: QuantityParam }
  'service/used-oil-not-known': { part: PartName }
  'service/record-not-counted': { date: string; reason: ReasonParam }
  // Oil that was added between changes
  'service/no-oil-added': { part: PartName; since: string }
  'service/oil-start-not-known': { part: PartName }
  'service/oil-added': {
    part: PartName
    added: QuantityParam
    count: number
    since?: string
    days?: number
    hours?: RangeParam
    per100Hours?: RangeParam
    percentOfFill?: number
  }
  'service/top-up-instance-missing': { part: PartName }
  'service/oil-may-have-settled': Record<never, never>
  'service/look-for-leaks': Record<never, never>
  'service/find-the-leak': Record<never, never>
  // Cautions for the whole visit
  'service/loses-oil': { signal: 'warning'; reasons: readonly ReasonParam[] }
  'service/not-to-be-used': { signal: 'warning'; date: string; fault: ReasonParam }
  'service/manual-first': Record<never, never>
  'service/licensed-work': Record<never, never>
  'service/used-oil-rules': { signal: 'notice' }
  'service/procedure-errors': { count: number; signal: 'warning' }
  // Requests
  'service/wrong-sheet': {
    required: ReasonParam | string
    revision: string
    given: string
    givenRevision: string
  }
  'service/service-not-on-sheet': { service: string; known: readonly string[] }
  'service/procedure-of-other-services': { services: readonly string[]; asked: readonly string[] }
  'service/service-not-on-machine': { service: string }
}

export const serviceReason: ReasonMaker<ServiceCodes> = makeReason

/** Makes a finding; the compiler checks that code and params match. */
export const serviceFinding = makeFinding as FindingMaker<ServiceCodes>
