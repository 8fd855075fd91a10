import { dropUndefined, type JsonPointer, readPointer } from '../base/index.js'
import { showsFigure } from '../procedure/index.js'
import { exactIn, findNearestDouble, readBand, type TorqueUnit } from '../quantity/index.js'
import type { Id, StatedValue, Tightening, Toolbox } from '../spec/index.js'
import { type CoveredTask, chooseWrenches, type TorqueSetting, type WrenchChoice } from '../torque/index.js'
import { serviceReason } from './codes.js'
import { findSocket, isHeldByClips, listDrives } from './drives.js'
import { listInstances } from './gearcases.js'
import { describePart } from './names.js'
import type { VisitOptions } from './requireVisit.js'
import type { VisitContext } from './visitContext.js'
import type { PlannedMissing, PlannedTightening, PlannedTool, TorqueDrawing } from './visitPlan.js'

interface TighteningTask {
  /** Pointer to the opening, cover or shield. */
  readonly on: JsonPointer
  /** Pointer to its tightening. */
  readonly path: JsonPointer
  readonly count: number
  readonly tightening: Tightening | undefined
}

/** The choices of a caller that change a setting. */
export type WrenchOptions = Pick<VisitOptions, 'iso6789' | 'tolerancePercent'>

const NO_WRENCH: WrenchChoice = { wrenches: [], covered: [], uncovered: [], toBuy: [] }

/**
 * Chooses a wrench and a setting for each part of a visit, with the fewest wrenches that cover all stated
 * torques. A part with several instances is listed once. `adaptors` go between a wrench and a socket;
 * `uncovered` are parts with a stated torque for which the toolbox has no setting.
 */
export function planTightenings(visit: VisitContext, options: WrenchOptions) {
  const { sheet, toolbox, figures } = visit
  const tasks = listTasks(visit)
  const choice = toolbox === undefined ? NO_WRENCH : chooseFewestWrenches(visit, toolbox, tasks, options)
  const uncovered = choice.uncovered.map(({ on, verdict, wrenches }) => {
    return { path: on, verdict, reasons: wrenches.flatMap(({ reasons }) => reasons) }
  })
  const tightenings = tasks.map(({ on, path, count, tightening }): PlannedTightening => {
    const part = describePart(sheet, on)
    const common = { part, figure: figures.pointerTo(path) ?? '', count }
    if (tightening === undefined) {
      const resolved = figures.at(path)?.resolved
      const reason =
        resolved?.kind === 'cannot tell'
          ? serviceReason('service/figure-not-known', {
              ...common,
              role: 'tightening',
              facts: resolved.missing,
            })
          : serviceReason('service/figure-not-stated', { part, role: 'tightening' })
      return { ...common, verdict: 'cannot tell', reasons: [reason] }
    }
    if (tightening.kind === 'turns') return { ...common, verdict: 'by turns', reasons: [] }
    const chosen = choice.covered.find((task) => task.on === on)
    const wrench = chosen && toolbox?.wrenches[chosen.wrench]
    if (chosen === undefined || wrench === undefined || tightening.kind !== 'torque') {
      const uncoveredTask = uncovered.find((task) => task.path === on)
      const { verdict, reasons } = uncoveredTask ?? {
        verdict: 'cannot tell' as const,
        reasons: [serviceReason('service/no-toolbox', {})],
      }
      return { ...common, verdict, reasons }
    }
    const { verdict, setting, reasons } = chosen.fit
    const { min, max } = setting.trueBand.sheetUnit
    return {
      ...common,
      verdict,
      wrench: { id: chosen.wrench, name: wrench.name },
      setting: setting.setting,
      trueBand: { min: min.value, max: max.value, unit: min.unit },
      drawing: drawTorque(tightening.torque, setting),
      reasons,
    }
  })
  const reasons = choice.toBuy.map(({ from, to, covers }) =>
    serviceReason('service/wrench-required', { from, to, count: covers.length }),
  )
  return {
    tightenings,
    wrenches: { use: choice.wrenches, reasons },
    adaptors: toolbox === undefined ? [] : listAdaptors(visit, toolbox, choice.covered),
    uncovered,
    missingSettings: listMissingSettings(visit, tasks, uncovered),
  }
}

/** Stated torques without a setting; without a toolbox, one entry for all of them. */
function listMissingSettings(
  { sheet, toolbox }: VisitContext,
  tasks: readonly TighteningTask[],
  uncovered: readonly { readonly path: JsonPointer }[],
): readonly PlannedMissing[] {
  const kind = 'not settled'
  const missingSettings = uncovered.map(({ path }): PlannedMissing => {
    const part = describePart(sheet, path)
    return { kind, part, path: part.path, reason: serviceReason('service/torque-not-settled', { part }) }
  })
  const stated = tasks.filter(({ tightening }) => tightening?.kind === 'torque')
  if (toolbox !== undefined || stated.length === 0) return missingSettings
  const parts = stated.map(({ on }) => describePart(sheet, on))
  return [{ kind, reason: serviceReason('service/settings-need-toolbox', { parts }) }]
}

/** The stated band, the true band and the setting in the unit of the sheet. */
function drawTorque(torque: StatedValue<TorqueUnit>, { setting, trueBand }: TorqueSetting): TorqueDrawing {
  const { min, max } = trueBand.sheetUnit
  const { unit } = min
  const { basis, low, aim, high } = readBand(torque, unit)
  return {
    unit,
    stated: dropUndefined({
      low: low && findNearestDouble(low),
      aim: basis === 'limits' ? undefined : aim && findNearestDouble(aim),
      high: high && findNearestDouble(high),
    }),
    trueBand: { low: min.value, high: max.value },
    setting: findNearestDouble(exactIn(setting, unit)),
  }
}

function chooseFewestWrenches(
  { sheet, identity }: VisitContext,
  toolbox: Toolbox,
  tasks: readonly TighteningTask[],
  { iso6789, tolerancePercent }: WrenchOptions,
): WrenchChoice {
  const stated = tasks.flatMap(({ on, tightening }) => {
    if (tightening?.kind !== 'torque') return []
    const [drive, ...others] = listDrives(sheet, identity, on) ?? []
    const socket = drive && others.length === 0 ? findSocket(drive, toolbox)?.socket : undefined
    return dropUndefined({ on, tightening, drive: socket?.drive })
  })
  const { wrenches, adaptors } = toolbox
  return chooseWrenches(wrenches, stated, dropUndefined({ iso6789, tolerancePercent, adaptors }))
}

function listAdaptors(
  { sheet }: VisitContext,
  { adaptors, wrenches }: Toolbox,
  covered: readonly CoveredTask[],
): readonly PlannedTool[] {
  const usedAdaptors = new Set(covered.flatMap(({ through }) => through ?? []))
  return [...usedAdaptors].map((id): PlannedTool => {
    const tasks = covered.filter(({ through }) => through === id)
    const name = adaptors?.[id]?.name ?? id
    const names = new Set(tasks.map(({ wrench }) => wrenches[wrench]?.name ?? wrench))
    const reason = serviceReason('service/adaptor-between', { adaptor: name, wrenches: [...names] })
    const parts = tasks.map(({ on }) => describePart(sheet, on))
    return { kind: 'adaptor', for: parts, have: { id, name }, verdict: 'fits', reasons: [reason] }
  })
}

function listTasks({
  sheet,
  identity,
  procedure,
  partsWithoutSteps,
  figures,
}: VisitContext): readonly TighteningTask[] {
  const instances = new Map<JsonPointer, Set<Id | undefined>>()
  for (const step of procedure.steps) {
    if (step.on === undefined || !showsFigure(step.do, 'tightening')) continue
    const instanceIds = instances.get(step.on) ?? new Set()
    instances.set(step.on, instanceIds.add(step.at?.instance))
  }
  for (const part of partsWithoutSteps)
    instances.set(part, new Set(listInstances(sheet, part.split('/')[2] ?? '')))
  return [...instances].flatMap(([on, instanceIds]): readonly TighteningTask[] => {
    const tightenedPath = [on, `${on}/bolts`, `${on}/fasteners`, `${on}/held`].find(
      (candidate) => readPointer(sheet, `${candidate}/tightening`) !== undefined,
    )
    if (tightenedPath === undefined) return []
    const fastenerCount = readPointer(sheet, `${tightenedPath}/count`)
    const path = `${tightenedPath}/tightening`
    if (isHeldByClips(sheet, identity, on) && figures.at(path) === undefined) return []
    const count = instanceIds.size * (typeof fastenerCount === 'number' ? fastenerCount : 1)
    return [{ on, path, count, tightening: figures.stated<Tightening>(path) }]
  })
}
