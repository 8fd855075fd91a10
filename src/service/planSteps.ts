import { dropUndefined, type Reason, readPointer } from '../base/index.js'
import { ACTIONS, findCautions, showsFigure } from '../procedure/index.js'
import { compareQuantities, type TemperatureUnit } from '../quantity/index.js'
import type { Leaf, Resolved, SecuredItem, SpecSheet, SpecValue, Step, Support } from '../spec/index.js'
import { serviceReason } from './codes.js'
import { findOilOwner } from './gearcases.js'
import { namePart } from './names.js'
import { gearcaseOf, upperEnd, type WaitPlan } from './planWaits.js'
import type { VisitContext } from './visitContext.js'
import type { PlannedOil, PlannedStep, PlannedTightening, VisitPlan } from './visitPlan.js'

export interface StepPlan {
  readonly steps: readonly PlannedStep[]
  readonly time: VisitPlan['time']
  readonly consumables: readonly Reason[]
}

/**
 * Joins the steps of a procedure to the figures, settings, oils and waits that they show. A caution comes before the
 * first step that needs it and is not repeated: people read few cautions.
 */
export function planSteps(
  { sheet, procedure, figures }: VisitContext,
  tightenings: readonly PlannedTightening[],
  oil: readonly PlannedOil[],
  waits: WaitPlan,
): StepPlan {
  const said = new Set<string>()
  const supplies = new Set<string>()
  const refitted = new Set<string>()
  const pointer = (list: string, place: number) => (place >= 0 ? `/${list}/${place}` : undefined)
  const isOilHot = figures.figures.some(
    ({ role, resolved }) => role === 'drain temperature' && isHot(resolved),
  )
  const steps = procedure.steps.map((step): PlannedStep => {
    const { id, do: action, on, at, note, values = {} } = step
    const row = ACTIONS[action]
    const cautions = findCautions(sheet, step, isOilHot).filter(({ code }) => !said.has(code))
    for (const { code } of cautions) said.add(code)
    for (const supply of row.supplies) supplies.add(supply)
    if (action === 'refit shield' && on !== undefined) refitted.add(on)
    if (action === 'remove shield' && on !== undefined) refitted.delete(on)
    const tightening = tightenings.findIndex(({ part }) => part.path === on)
    return dropUndefined({
      id,
      do: action,
      part: on === undefined ? undefined : namePart(sheet, on, at),
      ...readMachinePart(sheet, step),
      shield: findShield(sheet, step, refitted),
      figures: Object.fromEntries(
        Object.entries(values).flatMap(([name, path]) => {
          const found = figures.pointerTo(path)
          return found === undefined ? [] : [[name, found]]
        }),
      ),
      tightening: showsFigure(action, 'tightening') ? pointer('tightenings', tightening) : undefined,
      wait: waits.pointerTo(step),
      oil: showsFigure(action, 'oils') ? pointer('oil', findOil(sheet, oil, step)) : undefined,
      cautions,
      minutes: row.minutes === 'planned' ? 0 : row.minutes,
      note,
    })
  })
  return {
    steps,
    time: sumTime(steps, waits),
    consumables: [...supplies].map((supply) => serviceReason('service/supply', { supply })),
  }
}

/** What the step's place on the machine says beside its name: where the jack goes, how an item is secured. */
function readMachinePart({ machine }: SpecSheet, { do: action, on = '' }: Step) {
  const found = readPointer(machine, on.slice('/machine'.length))
  if (action === 'raise the machine') return { jack: (found as Support | undefined)?.jack }
  return action === 'secure the machine' ? { how: (found as SecuredItem | undefined)?.how } : {}
}

/** The shield of this gearcase that is back on, as far as the steps have come. */
function findShield(sheet: SpecSheet, { do: action, on }: Step, refitted: ReadonlySet<string>) {
  const gearcase = action === 'check for leaks' && on?.split('/')[2]
  const shields = (gearcase && sheet.gearcases[gearcase]?.shields) || []
  const back = shields.find((id) => refitted.has(`/shields/${id}`))
  return back === undefined ? undefined : sheet.shields?.[back]?.name
}

/** Water of 60 °C scalds in about 3 s (web pages that quote scald times, excerpts read); the same for oil is a house rule. */
const BURNS_IN_SECONDS = { value: 60, unit: 'degC' } as const

/** Whether a drain temperature, or one that it may be, reaches that. */
function isHot(resolved: Resolved<Leaf>): boolean {
  if (resolved.kind === 'not stated') return false
  const values =
    resolved.kind === 'cannot tell' ? resolved.candidates.map(({ value }) => value) : [resolved.value]
  return values.some((value) => {
    const highest = upperEnd(value as SpecValue<TemperatureUnit>)
    return highest !== undefined && compareQuantities(highest, BURNS_IN_SECONDS) >= 0
  })
}

function findOil(sheet: SpecSheet, oil: readonly PlannedOil[], step: Step): number {
  const gearcase = gearcaseOf(step)
  const owner = gearcase && findOilOwner(sheet, gearcase)
  return oil.findIndex(({ part }) => part.path === `/gearcases/${owner}`)
}

function sumTime(steps: readonly PlannedStep[], { waits }: WaitPlan): VisitPlan['time'] {
  const minutes = Math.ceil(steps.reduce((sum, step) => sum + step.minutes, 0))
  const waiting = steps.flatMap(({ wait }) => waits[Number(wait?.slice('/waits/'.length) ?? -1)] ?? [])
  const waitMinutes = Math.ceil(waiting.reduce((sum, { seconds }) => sum + (seconds ?? 0), 0) / 60)
  const open = waiting.filter(({ seconds }) => seconds === undefined).length
  return {
    minutes,
    basis: 'house estimate',
    reasons: [
      serviceReason('service/time-sum', { steps: steps.length, minutes, waitMinutes }),
      ...(open > 0 ? [serviceReason('service/time-open', { count: open })] : []),
    ],
  }
}
