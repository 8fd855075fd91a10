import { dropUndefined, type JsonPointer, type Reason, splitPointer } from '../base/index.js'
import { type PourVerdict, pourTime } from '../fill/index.js'
import { viscosityAt } from '../oil/index.js'
import type { LengthUnit, Quantity, Unit } from '../quantity/index.js'
import {
  compareQuantities,
  convertAmount,
  findNearestQuantity,
  getStatedEnds,
  readBand,
} from '../quantity/index.js'
import type { FunnelAndHose, Id, LiquidGasket, SpecValue, Step } from '../spec/index.js'
import { serviceReason } from './codes.js'
import { describePart, type PartName } from './names.js'
import { hasGrease, type OilPlan } from './planOil.js'
import type { VisitContext } from './visitContext.js'
import type { PlannedTool, PlannedWait } from './visitPlan.js'

export interface WaitPlan {
  readonly waits: readonly PlannedWait[]
  /** Pointer into the plan for a waiting step. */
  readonly pointerTo: (step: Step) => JsonPointer | undefined
  /** The funnels and hoses, each with the gearcases that it is used for. */
  readonly fillers: readonly PlannedTool[]
}

/**
 * Calculates the time of each waiting step: pouring through the fastest hose at the ambient temperature,
 * draining, the cure of a liquid gasket, settling. All instances of a gearcase have the same wait.
 */
export function planWaits(visit: VisitContext, oil: OilPlan): WaitPlan {
  const { sheet, procedure, toolbox } = visit
  const waits: PlannedWait[] = []
  const places = new Map<string, number>()
  const usedFillers = new Map<Id, PartName[]>()
  for (const step of procedure.steps) {
    const kind = WAIT_BY_ACTION[step.do]
    if (kind === undefined || places.has(makeWaitKey(step, kind))) continue
    const gearcase = findGearcaseId(step)
    // Grease is not poured.
    if (kind === 'pour' && hasGrease(oil.oil, gearcase)) continue
    places.set(makeWaitKey(step, kind), waits.length)
    const part = describePart(
      sheet,
      kind === 'cure' && step.on !== undefined ? step.on : `/gearcases/${gearcase}`,
    )
    if (kind === 'pour') waits.push(planFastestHoseWait(visit, oil, part, gearcase ?? '', usedFillers))
    else if (kind === 'cure') waits.push(planCureWait(visit, part, step))
    else if (kind === 'settle')
      waits.push(planSettleWait(visit, gearcase === undefined ? { path: '' } : part, step))
    else waits.push({ kind, part, reasons: [serviceReason('service/drain-until-drips', { part })] })
  }
  return {
    waits,
    pointerTo: (step) => {
      const kind = WAIT_BY_ACTION[step.do]
      const place = kind && places.get(makeWaitKey(step, kind))
      return place === undefined ? undefined : `/waits/${place}`
    },
    fillers: [...usedFillers].map(([id, parts]): PlannedTool => {
      const name = toolbox?.fillers[id]?.name ?? id
      return { kind: 'filler', for: parts, have: { id, name }, verdict: 'fits', reasons: [] }
    }),
  }
}

const WAIT_BY_ACTION: { readonly [action: string]: PlannedWait['kind'] | undefined } = {
  'wait for the hose': 'pour',
  'let drain': 'drain',
  'wait for the cure': 'cure',
  'let settle': 'settle',
}

/** The gearcase of a step. */
export function findGearcaseId({ on = '' }: Step): Id | undefined {
  const [section, id] = splitPointer(on) ?? []
  return section === 'gearcases' ? id : undefined
}

function makeWaitKey(step: Step, kind: PlannedWait['kind']): string {
  return `${kind} ${(kind === 'cure' ? step.on : findGearcaseId(step)) ?? ''}`
}

/** The wait with the fastest hose, or with the first hose if no time is known. */
function planFastestHoseWait(
  visit: VisitContext,
  oil: OilPlan,
  part: PartName,
  gearcase: Id,
  usedFillers: Map<Id, PartName[]>,
): PlannedWait {
  const seconds = ({ wait }: { wait: PlannedWait }) => wait.seconds ?? Number.POSITIVE_INFINITY
  const [fastestHose] = Object.entries(visit.toolbox?.fillers ?? {})
    .map(([id, filler]) => ({ id, wait: planHoseWait(visit, oil, part, gearcase, filler) }))
    .sort((first, second) => seconds(first) - seconds(second) || 0)
  if (fastestHose === undefined) return planHoseWait(visit, oil, part, gearcase, undefined)
  usedFillers.set(fastestHose.id, [...(usedFillers.get(fastestHose.id) ?? []), part])
  return fastestHose.wait
}

/**
 * At or below this air temperature, oil pours so slowly that its bottle is warmed first. Common practice, no
 * source.
 */
const THICK_OIL_TEMPERATURE = { value: 0, unit: 'degC' } as const

function planHoseWait(
  { ambient }: VisitContext,
  { volumes, containerByGearcase }: OilPlan,
  part: PartName,
  gearcase: Id,
  filler: FunnelAndHose | undefined,
): PlannedWait {
  const cannotTell = (...reasons: readonly Reason[]): PlannedWait => ({ kind: 'pour', part, reasons })
  const oil = containerByGearcase.get(gearcase)?.oil
  const volume = volumes.get(gearcase)?.each
  if (filler === undefined) return cannotTell(serviceReason('service/no-filler', { part }))
  if (ambient === undefined) return cannotTell(serviceReason('service/ambient-not-given', { part }))
  if (volume === undefined) return cannotTell(serviceReason('service/pour-volume-not-known', { part }))
  if (oil === undefined) return cannotTell(serviceReason('service/no-oil-to-pour', { part }))
  const warmingReasons =
    compareQuantities(ambient, THICK_OIL_TEMPERATURE) <= 0
      ? [serviceReason('service/warm-the-bottle', { temperature: ambient })]
      : []
  const viscosity = viscosityAt(oil, ambient)
  if (viscosity.verdict === 'cannot tell') {
    const reason = serviceReason('service/viscosity-not-known', { oil: oil.name })
    return cannotTell(reason, ...viscosity.reasons, ...warmingReasons)
  }
  const { name, funnel } = filler
  const { bore, ...measures } = filler.hose
  const calculatePour = (insideDiameter: Quantity<LengthUnit>) =>
    pourTime({
      funnel,
      hose: { ...measures, bore: insideDiameter },
      kinematicViscosity: viscosity.viscosity,
      volume,
    })
  if (bore === undefined) {
    const usualTimes = calculateUsualTimes(calculatePour)
    return cannotTell(
      serviceReason('service/hose-bore-not-known', { filler: name }),
      ...usualTimes,
      ...warmingReasons,
    )
  }
  const time = calculatePour(bore)
  const pourReason = serviceReason('service/pour-through', {
    filler: name,
    oil: oil.name,
    temperature: ambient,
  })
  if (time.verdict === 'cannot tell') return cannotTell(pourReason, ...time.reasons, ...warmingReasons)
  return {
    kind: 'pour',
    part,
    seconds: Math.ceil(time.total.value),
    parts: [
      { name: 'hose fills', seconds: roundToTenths(time.hoseFills.time) },
      { name: 'funnel empties', seconds: roundToTenths(time.funnelEmpties.time) },
      { name: 'hose empties', seconds: roundToTenths(time.hoseEmpties.time) },
    ],
    reasons: [pourReason, ...viscosity.reasons, ...time.reasons, ...warmingReasons],
  }
}

/** The model cannot answer for more digits, and engines differ in the last ones of a logarithm. */
const roundToTenths = ({ value }: Quantity<'s'>): number => Math.round(value * 10) / 10

/** Usual inside diameters of funnel hoses. Common practice, no source. */
const USUAL_BORES = { from: { value: 8, unit: 'mm' }, to: { value: 16, unit: 'mm' } } as const

/** Whole minutes through the narrowest and the widest usual hose, rounded outward, if both are known. */
function calculateUsualTimes(calculatePour: (bore: Quantity<LengthUnit>) => PourVerdict): readonly Reason[] {
  const { from, to } = USUAL_BORES
  const [slowest, fastest] = [calculatePour(from), calculatePour(to)]
  if (slowest.verdict === 'cannot tell' || fastest.verdict === 'cannot tell') return []
  const minutes = (value: number) => ({ value: Math.max(1, value), unit: 'min' }) as const
  return [
    serviceReason('service/usual-hoses', {
      from,
      to,
      fastest: minutes(Math.floor(fastest.total.value / 60)),
      slowest: minutes(Math.ceil(slowest.total.value / 60)),
    }),
  ]
}

function planCureWait({ sheet, figures }: VisitContext, part: PartName, step: Step): PlannedWait {
  const path = step.values?.['seal'] ?? `${step.on}/seal`
  const gasket = figures.stated<LiquidGasket>(path)
  const time = gasket && findUpperEnd(gasket.cureBeforeOil)
  const wait = (reason: Reason, seconds?: number): PlannedWait =>
    dropUndefined({ kind: 'cure', part, seconds, reasons: [reason] })
  if (gasket === undefined)
    return wait(serviceReason('service/seal-not-known', { part: describePart(sheet, path) }))
  const { product } = gasket
  if (time === undefined) return wait(serviceReason('service/cure-not-stated', { product }))
  return wait(serviceReason('service/cure-stated', { product, time }), toSeconds(time))
}

function planSettleWait({ figures }: VisitContext, part: PartName, step: Step): PlannedWait {
  const [longestWait] = Object.values(step.values ?? {})
    .flatMap((path) => findUpperEnd(figures.stated<SpecValue<'min' | 'h'>>(path)) ?? [])
    .sort((first, second) => compareQuantities(second, first))
  if (longestWait === undefined)
    return { kind: 'settle', part, reasons: [serviceReason('service/settle-not-stated', { part })] }
  const reasons = [serviceReason('service/settle-stated', { minutes: longestWait })]
  return { kind: 'settle', part, seconds: toSeconds(longestWait), reasons }
}

function toSeconds(time: Quantity): number {
  return Math.ceil(convertAmount(time, 's').value)
}

/** The upper end of a printed value, such as the longest wait. */
export function findUpperEnd<U extends Unit>(value: SpecValue<U> | undefined): Quantity<U> | undefined {
  if (value === undefined || value.kind === 'not stated') return undefined
  if (value.kind === 'limits' && value.min === undefined && value.max === undefined) return undefined
  return findNearestQuantity(getStatedEnds(readBand(value, value.unit)).high, value.unit, value.unit)
}
