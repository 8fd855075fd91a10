import type { JsonPointer, Reason } from '../base/index.js'
import { pourTime } from '../fill/index.js'
import { viscosityAt } from '../oil/index.js'
import {
  compareQuantities,
  convertAmount,
  figureToNumber,
  type Quantity,
  type TemperatureUnit,
  type Unit,
} from '../quantity/index.js'
import type {
  FunnelAndHose,
  Id,
  LiquidGasket,
  OilContainer,
  ProcedureDocument,
  Resolved,
  SpecSheet,
  SpecValue,
  Step,
  Toolbox,
} from '../spec/index.js'
import { serviceReason } from './codes.js'
import type { CollectedFigures } from './collectFigures.js'
import { namePart } from './names.js'
import type { RefillAmount } from './refills.js'
import type { PartName, PlannedTool, PlannedWait } from './visitPlan.js'

/** What {@link planWaits} is asked. */
export interface WaitRequest {
  readonly sheet: SpecSheet
  readonly procedure: ProcedureDocument
  readonly figures: CollectedFigures
  readonly volumes: ReadonlyMap<Id, RefillAmount>
  readonly pouredFrom: ReadonlyMap<Id, OilContainer>
  readonly ambient?: Quantity<TemperatureUnit>
  readonly toolbox?: Toolbox
}

export interface WaitPlan {
  readonly waits: readonly PlannedWait[]
  /** Pointer into the plan for a step that waits. */
  readonly pointerTo: (step: Step) => JsonPointer | undefined
  /** The funnels and hoses that the oil goes through, each with the gearcases that it serves. */
  readonly fillers: readonly PlannedTool[]
}

/**
 * Works out how long each waiting step takes: oil through the funnel and hose at the day's temperature, draining, the
 * cure of a liquid gasket, settling. One wait serves all instances of a gearcase. Of several hoses the quickest is taken.
 */
export function planWaits(request: WaitRequest): WaitPlan {
  const { sheet, procedure } = request
  const waits: PlannedWait[] = []
  const places = new Map<string, number>()
  const used = new Map<Id, PartName[]>()
  for (const step of procedure.steps) {
    const kind = WAITING[step.do]
    if (kind === undefined) continue
    const key = keyOf(step, kind)
    if (places.has(key)) continue
    const gearcase = gearcaseOf(step)
    const part = namePart(
      sheet,
      kind === 'cure' && step.on !== undefined ? step.on : `/gearcases/${gearcase}`,
    )
    const wait =
      kind === 'pour'
        ? waitForQuickest(request, part, gearcase ?? '', used)
        : kind === 'cure'
          ? waitForCure(request, part, step)
          : kind === 'settle'
            ? waitToSettle(request, gearcase === undefined ? { path: '' } : part, step)
            : { kind, part, reasons: [serviceReason('service/drain-until-drips', { part })] }
    places.set(key, waits.length)
    waits.push(wait)
  }
  return {
    waits,
    pointerTo: (step) => {
      const kind = WAITING[step.do]
      const place = kind === undefined ? undefined : places.get(keyOf(step, kind))
      return place === undefined ? undefined : `/waits/${place}`
    },
    fillers: [...used].map(([id, parts]): PlannedTool => {
      const name = request.toolbox?.fillers[id]?.name ?? id
      return { kind: 'filler', for: parts, have: { id, name }, verdict: 'fits', reasons: [] }
    }),
  }
}

const WAITING: { readonly [action: string]: PlannedWait['kind'] | undefined } = {
  'wait for the hose': 'pour',
  'let drain': 'drain',
  'wait for the cure': 'cure',
  'let settle': 'settle',
}

function gearcaseOf(step: Step): Id | undefined {
  return /^\/gearcases\/([^/]+)/.exec(step.on ?? '')?.[1]
}

function keyOf(step: Step, kind: PlannedWait['kind']): string {
  return kind === 'cure' ? `${kind} ${step.on ?? ''}` : `${kind} ${gearcaseOf(step) ?? ''}`
}

/** Where no time can be told, the first hose of the toolbox is as good as another. */
function waitForQuickest(
  request: WaitRequest,
  part: PartName,
  gearcase: Id,
  used: Map<Id, PartName[]>,
): PlannedWait {
  const pours = Object.entries(request.toolbox?.fillers ?? {}).map(([id, filler]) => ({
    id,
    wait: waitForHose(request, part, gearcase, filler),
  }))
  const [quickest] = pours.sort(
    (first, second) =>
      (first.wait.seconds ?? Number.POSITIVE_INFINITY) - (second.wait.seconds ?? Number.POSITIVE_INFINITY) ||
      0,
  )
  if (quickest === undefined) return waitForHose(request, part, gearcase, undefined)
  used.set(quickest.id, [...(used.get(quickest.id) ?? []), part])
  return quickest.wait
}

function waitForHose(
  { volumes, pouredFrom, ambient }: WaitRequest,
  part: PartName,
  gearcase: Id,
  filler: FunnelAndHose | undefined,
): PlannedWait {
  const cannotTell = (...reasons: readonly Reason[]): PlannedWait => ({ kind: 'pour', part, reasons })
  const container = pouredFrom.get(gearcase)
  const volume = volumes.get(gearcase)?.each
  if (filler === undefined) return cannotTell(serviceReason('service/no-filler', { part }))
  if (ambient === undefined) return cannotTell(serviceReason('service/ambient-not-given', { part }))
  if (volume === undefined) return cannotTell(serviceReason('service/pour-volume-open', { part }))
  if (container === undefined) return cannotTell(serviceReason('service/no-oil-to-pour', { part }))
  const { oil } = container
  const viscosity = viscosityAt(oil, ambient)
  if (viscosity.verdict === 'cannot tell')
    return cannotTell(serviceReason('service/viscosity-not-known', { oil: oil.name }), ...viscosity.reasons)
  const time = pourTime({
    funnel: filler.funnel,
    hose: filler.hose,
    kinematicViscosity: viscosity.viscosity,
    volume,
  })
  const through = serviceReason('service/pour-through', {
    filler: filler.name,
    oil: oil.name,
    temperature: ambient,
  })
  if (time.verdict === 'cannot tell') return cannotTell(through, ...time.reasons)
  const named = [
    ['hose fills', time.hoseFills],
    ['funnel empties', time.funnelEmpties],
    ['hose empties', time.hoseEmpties],
  ] as const
  return {
    kind: 'pour',
    part,
    seconds: Math.ceil(time.total.value),
    parts: named.map(([name, { time: each }]) => ({ name, seconds: each.value })),
    reasons: [through, ...viscosity.reasons, ...time.reasons],
  }
}

function waitForCure({ sheet, figures }: WaitRequest, part: PartName, step: Step): PlannedWait {
  const path = step.values?.['seal'] ?? `${step.on}/seal`
  const resolved = figures.at(path)?.resolved as Resolved<LiquidGasket> | undefined
  if (resolved?.kind !== 'stated')
    return {
      kind: 'cure',
      part,
      reasons: [serviceReason('service/seal-open', { part: namePart(sheet, path) })],
    }
  const { product, cureBeforeOil } = resolved.value
  const time = upperEnd(cureBeforeOil)
  if (time === undefined)
    return { kind: 'cure', part, reasons: [serviceReason('service/cure-not-stated', { product })] }
  return {
    kind: 'cure',
    part,
    seconds: Math.ceil(convertAmount(time, 's').value),
    reasons: [serviceReason('service/cure-stated', { product, time })],
  }
}

function waitToSettle({ figures }: WaitRequest, part: PartName, step: Step): PlannedWait {
  const times = Object.values(step.values ?? {}).flatMap((path) => {
    const resolved = figures.at(path)?.resolved
    const time = resolved?.kind === 'stated' ? upperEnd(resolved.value as SpecValue<'min' | 'h'>) : undefined
    return time === undefined ? [] : [time]
  })
  const [longest] = times.sort((first, second) => compareQuantities(second, first))
  if (longest === undefined)
    return { kind: 'settle', part, reasons: [serviceReason('service/settle-not-stated', { part })] }
  return {
    kind: 'settle',
    part,
    seconds: Math.ceil(convertAmount(longest, 's').value),
    reasons: [serviceReason('service/settle-stated', { minutes: longest })],
  }
}

/** The longest wait that a printed time can mean. */
function upperEnd<U extends Unit>(value: SpecValue<U>): Quantity<U> | undefined {
  if (value.kind === 'not stated') return undefined
  const figure = value.kind === 'limits' ? (value.max ?? value.min) : value.value
  return figure === undefined ? undefined : { value: figureToNumber(figure), unit: value.unit }
}
