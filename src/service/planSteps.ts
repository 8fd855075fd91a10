import type { JsonPointer, Reason } from '../base/index.js'
import { ACTIONS, findCautions, showsFigure } from '../procedure/index.js'
import type { Id, ProcedureDocument, SpecSheet } from '../spec/index.js'
import { serviceReason } from './codes.js'
import type { CollectedFigures } from './collectFigures.js'
import { findOilOwner } from './gearcases.js'
import { namePart } from './names.js'
import type { WaitPlan } from './planWaits.js'
import type { PlannedOil, PlannedStep, PlannedTightening, VisitPlan } from './visitPlan.js'

/** What {@link planSteps} joins. */
export interface StepRequest {
  readonly sheet: SpecSheet
  readonly procedure: ProcedureDocument
  readonly figures: CollectedFigures
  readonly tightenings: readonly PlannedTightening[]
  readonly oil: readonly PlannedOil[]
  readonly waits: WaitPlan
}

export interface StepPlan {
  readonly steps: readonly PlannedStep[]
  readonly time: VisitPlan['time']
  readonly consumables: readonly Reason[]
}

/**
 * Joins the steps of a procedure to the figures, settings, oils and waits that they show. A caution stands before the
 * first step that needs it and is not repeated: few cautions are read, many are not.
 */
export function planSteps(request: StepRequest): StepPlan {
  const { sheet, procedure, figures, tightenings, oil, waits } = request
  const said = new Set<string>()
  const supplies = new Set<string>()
  const steps = procedure.steps.map((step): PlannedStep => {
    const row = ACTIONS[step.do]
    const cautions = findCautions(sheet, step).filter(({ code }) => !said.has(code))
    for (const { code } of cautions) said.add(code)
    for (const supply of row.supplies) supplies.add(supply)
    const shown: [string, JsonPointer][] = Object.entries(step.values ?? {}).flatMap(([name, path]) => {
      const pointer = figures.pointerTo(path)
      return pointer === undefined ? [] : [[name, pointer]]
    })
    const tightening = tightenings.findIndex(({ part }) => part.path === step.on)
    const oilAt = showsFigure(step.do, 'oils') ? findOil(sheet, oil, step.on) : -1
    const wait = waits.pointerTo(step)
    const at = {
      ...(step.at?.instance === undefined ? {} : { instance: step.at.instance }),
      ...(step.at?.wheelMark === undefined ? {} : { wheelMark: step.at.wheelMark }),
    }
    return {
      id: step.id,
      do: step.do,
      ...(step.on === undefined ? {} : { part: namePart(sheet, step.on, at) }),
      figures: Object.fromEntries(shown),
      ...(showsFigure(step.do, 'tightening') && tightening >= 0
        ? { tightening: `/tightenings/${tightening}` }
        : {}),
      ...(wait === undefined ? {} : { wait }),
      ...(oilAt >= 0 ? { oil: `/oil/${oilAt}` } : {}),
      cautions,
      minutes: row.minutes === 'planned' ? 0 : row.minutes,
      ...(step.note === undefined ? {} : { note: step.note }),
    }
  })
  return {
    steps,
    time: sumTime(steps, waits),
    consumables: [...supplies].map((supply) => serviceReason('service/supply', { supply })),
  }
}

function findOil(sheet: SpecSheet, oil: readonly PlannedOil[], on: JsonPointer | undefined): number {
  const gearcase: Id | undefined = /^\/gearcases\/([^/]+)/.exec(on ?? '')?.[1]
  if (gearcase === undefined) return -1
  const owner = findOilOwner(sheet, gearcase)
  return oil.findIndex(({ part }) => part.path === `/gearcases/${owner}`)
}

function sumTime(steps: readonly PlannedStep[], waits: WaitPlan): VisitPlan['time'] {
  const hands = steps.reduce((sum, { minutes }) => sum + minutes, 0)
  const waiting = steps.flatMap(({ wait }) => {
    const place = wait === undefined ? -1 : Number(wait.slice('/waits/'.length))
    const found = waits.waits[place]
    return found === undefined ? [] : [found.seconds]
  })
  const waitMinutes = Math.ceil(waiting.reduce<number>((sum, seconds) => sum + (seconds ?? 0), 0) / 60)
  const open = waiting.filter((seconds) => seconds === undefined).length
  return {
    minutes: Math.ceil(hands),
    basis: 'house estimate',
    reasons: [
      serviceReason('service/time-sum', { steps: steps.length, minutes: Math.ceil(hands), waitMinutes }),
      ...(open > 0 ? [serviceReason('service/time-open', { count: open })] : []),
    ],
  }
}
