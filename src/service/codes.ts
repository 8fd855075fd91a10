import { type FindingMaker, makeFinding, makeReason, type Params, type ReasonMaker } from '../base/index.js'
import type { ToolKind } from '../procedure/index.js'
import type { PartName } from './names.js'

type Qty = { readonly value: number | string; readonly unit: string }
type Ends = { readonly min?: number; readonly max?: number; readonly unit: string }
type Cost = { readonly amount: number; readonly currency: string }
type Because = { readonly code: string; readonly params: Params }

/** The codes of visits with the types of their params; the texts are in `message/<language>/service`. */
export interface ServiceCodes {
  // Missing facts
  'service/part-open': { part: PartName; facts: readonly string[] }
  'service/variant-open': { facts: readonly string[]; candidates: readonly string[] }
  'service/variant-contradicted': { candidates: readonly string[] }
  'service/figure-not-stated': { part: PartName; role: string }
  'service/figure-open': { part: PartName; role: string; facts: readonly string[] }
  'service/torque-not-settled': { part: PartName }
  'service/settings-need-toolbox': { parts: readonly PartName[] }
  'service/due-open': { parts: readonly PartName[]; service: string; reason: Because }
  'service/ambient-not-given': { part: PartName }
  'service/no-toolbox': Record<never, never>
  'service/no-stock': Record<never, never>
  'service/viscosity-not-known': { oil: string }
  // Oil
  'service/oil-for-ambient': { oil: string; ambient: Qty }
  'service/oil-only-choice': { oil: string }
  'service/no-oil-for-ambient': { part: PartName; ambient: Qty }
  'service/oil-does-not-meet': { container: string; oil: string; reason: Because }
  'service/oil-ask-maker': { container: string; oil: string; reason: Because }
  'service/no-suitable-oil': {
    part: PartName
    oil: string
    offered: readonly string[]
    reasons: readonly Because[]
  }
  // Tools
  'service/no-wrench-fits': { part: PartName; reasons: readonly Because[] }
  'service/wrench-to-get': { from: Qty; to: Qty; count: number }
  'service/scale-reversed': { wrench: string; lowest: Qty; highest: Qty }
  'service/calibration-run-out': { wrench: string; dueOn: string }
  'service/calibration-cycles-run-out': { wrench: string; cycles: number; limit: number }
  'service/calibration-not-recorded': { wrench: string }
  'service/socket-found': { tool: string; size: string }
  'service/adaptor-between': { adaptor: string; wrenches: readonly string[] }
  'service/socket-missing': { part: PartName; drive: string; size: string }
  'service/hand-only': { part: PartName }
  'service/drive-not-stated': { part: PartName }
  'service/vessel-too-coarse': { vessel: string; part: PartName; reason: Because }
  'service/no-vessel': { part: PartName; reason: Because }
  'service/pan-too-small': { pan: string; size: Qty; volume: Qty }
  'service/no-pan': { volume: Qty }
  'service/stands-too-few': { have: number; need: number }
  'service/stands-too-weak': { stands: string; rating: Qty; mass: Qty }
  'service/stands-strong-enough': { stands: string; rating: Qty; mass: Qty }
  'service/stands-missing': { need: number }
  'service/mass-not-stated': Record<never, never>
  // Seals
  'service/seal-every-opening': { count: number }
  'service/seal-replace-not-stated': { count: number }
  'service/access-not-stated': { part: PartName }
  'service/seal-on-condition': { count: number }
  'service/seal-open': { part: PartName }
  // Waits
  'service/pour-through': { filler: string; oil: string; temperature: Qty }
  'service/hose-bore-not-known': { filler: string }
  'service/usual-hoses': { from: Qty; to: Qty; fastest: Qty; slowest: Qty }
  'service/warm-the-bottle': { temperature: Qty }
  'service/no-filler': { part: PartName }
  'service/no-oil-to-pour': { part: PartName }
  'service/pour-volume-open': { part: PartName }
  'service/drain-until-drips': { part: PartName }
  'service/settle-stated': { minutes: Qty }
  'service/settle-not-stated': { part: PartName }
  'service/cure-stated': { product: string; time: Qty }
  'service/cure-not-stated': { product: string }
  // Meters
  'service/reading-stale': { meter: string; date: string; days: number; staleAfter: number }
  // Time, consumables and used oil
  'service/time-sum': { steps: number; minutes: number; waitMinutes: number }
  'service/time-open': { count: number }
  'service/time-from-records': { count: number; min: number; max: number; estimate: number }
  'service/time-few-visits': { count: number; required: number }
  'service/labour': { rate: Cost; cost: Cost }
  'service/only-if-low': Record<never, never>
  'service/only-on': {
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
    hours?: Qty
    oil?: string
    hoursOnOil?: Qty
  }
  'service/hand-tools': { tools: readonly ToolKind[] }
  'service/used-oil': { volume: Qty }
  'service/drain-limit-from-dry-fill': { part: PartName; volume: Qty }
  'service/used-oil-open': { part: PartName }
  'service/not-counted': { date: string; reason: Because }
  // Oil that was added between changes
  'service/no-oil-added': { part: PartName; since: string }
  'service/oil-start-not-known': { part: PartName }
  'service/oil-added': {
    part: PartName
    added: Qty
    count: number
    since?: string
    days?: number
    hours?: Ends
    per100Hours?: Ends
    percentOfFill?: number
  }
  'service/top-up-of-which': { part: PartName }
  'service/oil-may-have-settled': Record<never, never>
  'service/look-for-leaks': Record<never, never>
  'service/find-the-leak': Record<never, never>
  // Cautions for the whole visit
  'service/loses-oil': { signal: 'warning'; reasons: readonly Because[] }
  'service/not-to-be-used': { signal: 'warning'; date: string; fault: Because }
  'service/manual-first': Record<never, never>
  'service/licensed-work': Record<never, never>
  'service/used-oil-rules': { signal: 'notice' }
  'service/procedure-errors': { count: number; signal: 'warning' }
  // Requests
  'service/wrong-sheet': {
    required: Because | string
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
