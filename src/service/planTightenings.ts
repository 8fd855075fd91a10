import { type JsonPointer, type Reason, readPointer } from '../base/index.js'
import { showsFigure } from '../procedure/index.js'
import { exactIn, nearestDouble, readBand, type TorqueUnit } from '../quantity/index.js'
import type { Id, ProcedureDocument, SpecSheet, StatedValue, Tightening, Toolbox } from '../spec/index.js'
import { type CoveredTask, chooseWrenches, type TorqueSetting, type WrenchChoice } from '../torque/index.js'
import { serviceReason } from './codes.js'
import type { CollectedFigures } from './collectFigures.js'
import { findSocket } from './drives.js'
import { namePart } from './names.js'
import type { PlannedTightening, PlannedTool, TorqueDrawing } from './visitPlan.js'

/** What {@link planTightenings} is asked. */
export interface TighteningRequest {
  readonly sheet: SpecSheet
  readonly procedure: ProcedureDocument
  readonly figures: CollectedFigures
  readonly toolbox?: Toolbox
  readonly iso6789: '2017' | '2003'
  /** A tolerance for nominals that the manual prints bare, per cent. */
  readonly tolerancePercent?: number
}

export interface TighteningPlan {
  readonly tightenings: readonly PlannedTightening[]
  readonly wrenches: { readonly use: readonly Id[]; readonly reasons: readonly Reason[] }
  /** Drive adaptors that go between a wrench and a socket. */
  readonly adaptors: readonly PlannedTool[]
  /** Tightenings that a stated torque and a toolbox leave uncovered, by part. */
  readonly uncovered: readonly { readonly path: JsonPointer; readonly reasons: readonly Reason[] }[]
}

interface Task {
  /** Pointer to the part: an opening, a cover or a shield. */
  readonly on: JsonPointer
  /** Pointer to its tightening leaf. */
  readonly path: JsonPointer
  readonly count: number
  readonly tightening?: Tightening
}

/**
 * Settles with which wrench, and at which mark, each part of a visit is tightened: the fewest wrenches that cover all
 * stated torques. A part is listed once, however many instances of it there are.
 */
export function planTightenings(request: TighteningRequest): TighteningPlan {
  const { sheet, toolbox, figures, iso6789, tolerancePercent } = request
  const tasks = listTasks(request)
  const stated = tasks.filter(({ tightening }) => tightening?.kind === 'torque')
  const choice = toolbox === undefined ? undefined : choose(toolbox, sheet, stated, iso6789, tolerancePercent)
  const covered = new Map<JsonPointer, CoveredTask>(choice?.covered.map((task) => [task.on, task]))
  const uncovered = new Map(choice?.uncovered.map((task) => [task.on, task]))

  const tightenings = tasks.map(({ on, path, count, tightening }): PlannedTightening => {
    const about = { part: namePart(sheet, on), figure: figures.pointerTo(path) ?? '', count }
    if (tightening === undefined) {
      const resolved = figures.at(path)?.resolved
      const reason =
        resolved?.kind === 'cannot tell'
          ? serviceReason('service/figure-open', { ...about, role: 'tightening', facts: resolved.missing })
          : serviceReason('service/figure-not-stated', { part: about.part, role: 'tightening' })
      return { ...about, verdict: 'cannot tell', reasons: [reason] }
    }
    if (tightening.kind === 'turns') return { ...about, verdict: 'by turns', reasons: [] }
    const taken = covered.get(on)
    const wrench = taken === undefined ? undefined : toolbox?.wrenches[taken.wrench]
    if (taken === undefined || wrench === undefined || tightening.kind !== 'torque') {
      const open = uncovered.get(on)
      return {
        ...about,
        verdict: open?.verdict ?? 'cannot tell',
        reasons: open?.wrenches.flatMap(({ reasons }) => reasons) ?? [
          serviceReason('service/no-toolbox', {}),
        ],
      }
    }
    const { verdict, setting, reasons } = taken.fit
    const { min, max } = setting.trueBand.sheetUnit
    return {
      ...about,
      verdict,
      wrench: { id: taken.wrench, name: wrench.name },
      setting: setting.setting,
      trueBand: { min: min.value, max: max.value, unit: min.unit },
      drawing: drawTorque(tightening.torque, setting),
      reasons,
    }
  })
  return {
    tightenings,
    wrenches: {
      use: choice?.wrenches ?? [],
      reasons: (choice?.toGet ?? []).map((wrench) =>
        serviceReason('service/wrench-to-get', {
          from: wrench.from,
          to: wrench.to,
          count: wrench.covers.length,
        }),
      ),
    },
    adaptors: toolbox === undefined ? [] : listAdaptors(toolbox, sheet, choice?.covered ?? []),
    uncovered: (choice?.uncovered ?? []).map(({ on, wrenches }) => ({
      path: on,
      reasons: wrenches.flatMap(({ reasons }) => reasons),
    })),
  }
}

/** Stated band, true band and setting in the unit of the sheet's figure, each rounded once. */
function drawTorque(torque: StatedValue<TorqueUnit>, { setting, trueBand }: TorqueSetting): TorqueDrawing {
  const { unit } = trueBand.sheetUnit.min
  const { basis, low, aim, high } = readBand(torque, unit)
  return {
    unit,
    stated: {
      ...(low === undefined ? {} : { low: nearestDouble(low) }),
      ...(aim === undefined || basis === 'limits' ? {} : { aim: nearestDouble(aim) }),
      ...(high === undefined ? {} : { high: nearestDouble(high) }),
    },
    trueBand: { low: trueBand.sheetUnit.min.value, high: trueBand.sheetUnit.max.value },
    setting: nearestDouble(exactIn(setting, unit)),
  }
}

function choose(
  toolbox: Toolbox,
  sheet: SpecSheet,
  tasks: readonly Task[],
  iso6789: '2017' | '2003',
  tolerancePercent: number | undefined,
): WrenchChoice {
  return chooseWrenches(
    toolbox.wrenches,
    tasks.flatMap(({ on, tightening }) => {
      if (tightening === undefined) return []
      const drive = findSocket(sheet, on, toolbox)?.socket.drive
      return [{ on, tightening, ...(drive === undefined ? {} : { drive }) }]
    }),
    {
      iso6789,
      ...(tolerancePercent === undefined ? {} : { tolerancePercent }),
      ...(toolbox.adaptors === undefined ? {} : { adaptors: toolbox.adaptors }),
    },
  )
}

function listAdaptors(
  toolbox: Toolbox,
  sheet: SpecSheet,
  covered: readonly CoveredTask[],
): readonly PlannedTool[] {
  const places = new Map<Id, CoveredTask[]>()
  for (const task of covered) {
    if (task.through === undefined) continue
    places.set(task.through, [...(places.get(task.through) ?? []), task])
  }
  return [...places].map(([id, tasks]): PlannedTool => {
    const name = toolbox.adaptors?.[id]?.name ?? id
    const wrenches = [...new Set(tasks.map(({ wrench }) => toolbox.wrenches[wrench]?.name ?? wrench))]
    return {
      kind: 'adaptor',
      for: tasks.map(({ on }) => namePart(sheet, on)),
      have: { id, name },
      verdict: 'fits',
      reasons: [serviceReason('service/adaptor-between', { adaptor: name, wrenches })],
    }
  })
}

function listTasks({ sheet, procedure, figures }: TighteningRequest): readonly Task[] {
  const instances = new Map<JsonPointer, Set<Id | undefined>>()
  for (const step of procedure.steps) {
    if (step.on === undefined || !showsFigure(step.do, 'tightening')) continue
    const seen = instances.get(step.on) ?? new Set()
    instances.set(step.on, seen.add(step.at?.instance))
  }
  return [...instances].flatMap(([on, seen]): readonly Task[] => {
    const path = TIGHTENING_AT.map((tail) => `${on}${tail}`).find(
      (candidate) => readPointer(sheet, candidate) !== undefined,
    )
    if (path === undefined) return []
    const each = readPointer(sheet, path.replace(/\/tightening$/, '/count'))
    const resolved = figures.at(path)?.resolved
    const value = resolved?.kind === 'stated' ? (resolved.value as Tightening) : undefined
    return [
      {
        on,
        path,
        count: seen.size * (typeof each === 'number' ? each : 1),
        ...(value === undefined ? {} : { tightening: value }),
      },
    ]
  })
}

const TIGHTENING_AT = ['/tightening', '/bolts/tightening', '/fasteners/tightening'] as const
