import { dropUndefined, type JsonPointer, requireObject } from '../base/index.js'
import { scaleInterval } from '../interval/index.js'
import type {
  FillMethod,
  Id,
  Identity,
  IntervalStated,
  MachineEventKind,
  Source,
  SpecSheet,
} from '../spec/index.js'
import { judgePart, requireDocument, resolveLeaf } from '../spec/index.js'
import { collectFigures } from './collectFigures.js'
import { describeIdentity } from './describeIdentity.js'
import { listServiceParts } from './listServiceParts.js'
import { describePart, type PartName } from './names.js'
import type { PlannedFigure, PlannedMachine } from './visitPlan.js'

/** An interval as the sheet states it for this machine. */
export type ChartInterval = Pick<PlannedFigure, 'path' | 'resolved'>

/** A gearcase on a lubrication chart. */
export interface ChartGearcase {
  readonly part: PartName
  /** The number of these gearcases on the machine. */
  readonly count: number
  /** The gearcase whose oil it shares; its figures apply. */
  readonly sharesWith?: PartName
  /** Pointers into `figures`. */
  readonly oils?: JsonPointer
  readonly refill?: JsonPointer
  /** Whether the refill is for each of several, or for all. */
  readonly per?: 'instance' | 'all instances'
  /** How the level is checked, and the opening for it. */
  readonly method?: FillMethod['kind']
  readonly opening?: PartName
}

/** A service on a lubrication chart, with its intervals for this machine. */
export interface ChartService {
  readonly serviceName: string
  readonly task: 'check' | 'change'
  readonly parts: readonly PartName[]
  readonly repeat: ChartInterval
  readonly first?: ChartInterval
  /** Another interval or a factor, and when it applies, in the manual's words. */
  readonly severe?: {
    readonly interval?: ChartInterval
    readonly factor?: string
    /** The repeat interval times `factor`; absent if the interval is not stated, or a period is not whole days. */
    readonly scaled?: IntervalStated
    readonly criteria: string
  }
  /** Events after which it is due before next use. */
  readonly events: readonly MachineEventKind[]
}

/** The lubrication chart of a machine: undated, for the wall. */
export interface LubeChart {
  readonly kind: 'lube-chart'
  readonly machine: Omit<PlannedMachine, 'log' | 'name'>
  readonly gearcases: readonly ChartGearcase[]
  readonly services: readonly ChartService[]
  readonly figures: readonly PlannedFigure[]
  readonly sources: Readonly<Record<Id, Source>>
}

/**
 * Collects the gearcases of a machine with their oils, refills, levels and intervals, for a chart without a date. To
 * write it, use `paperModel`.
 *
 * @param facts - a parsed sheet and what is known about the machine, such as its variant or serial number
 * @throws TypeError if an argument is not an object, or the sheet was not parsed
 *
 * @example
 * ```ts
 * import { lubeChart } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * // How many gearcases has a machine without gearcases?
 * lubeChart({ sheet, identity: {} }).gearcases.length // => 0
 * ```
 */
export function lubeChart(facts: { readonly sheet: SpecSheet; readonly identity: Identity }): LubeChart {
  requireObject('facts', facts)
  const { sheet, identity } = facts
  requireDocument('sheet', sheet, 'spec-sheet')
  requireObject('identity', identity)
  const ids = Object.keys(sheet.gearcases).filter(
    (id) => judgePart(sheet, identity, `/gearcases/${id}`).verdict !== 'no',
  )
  const { figures, sources, pointerTo } = collectFigures(sheet, identity, ids, { steps: [] }, [])
  return {
    kind: 'lube-chart',
    machine: describeIdentity(sheet, identity),
    gearcases: ids.map((id): ChartGearcase => {
      const path = `/gearcases/${id}`
      const { instances = {}, oilSpace } = sheet.gearcases[id] ?? {}
      const common = { part: describePart(sheet, path), count: Math.max(1, Object.keys(instances).length) }
      if (oilSpace === undefined) return common
      if (oilSpace.kind === 'shared')
        return { ...common, sharesWith: describePart(sheet, `/gearcases/${oilSpace.with}`) }
      const { method } = oilSpace.fill
      return dropUndefined({
        ...common,
        oils: pointerTo(`${path}/oilSpace/oils`),
        refill: pointerTo(`${path}/oilSpace/fill/drainAndRefill`),
        per: oilSpace.fill.per,
        method: method.kind,
        opening:
          method.kind === 'not stated'
            ? undefined
            : describePart(sheet, `${path}/openings/${method.opening}`),
      })
    }),
    services: listChartServices(sheet, identity),
    figures,
    sources,
  }
}

function listChartServices(sheet: SpecSheet, identity: Identity): readonly ChartService[] {
  const parts = listServiceParts(sheet, identity)
  return [...new Set(parts.map(({ service }) => service))].flatMap((id): ChartService | readonly [] => {
    const service = sheet.services[id]
    if (service === undefined) return []
    const { first, severe } = service.intervals
    const at = (name: string): ChartInterval => {
      const path = `/services/${id}/intervals/${name}`
      return { path, resolved: resolveLeaf(sheet, identity, 'interval', path) }
    }
    const repeat = at('repeat')
    return dropUndefined({
      serviceName: service.name,
      task: service.task,
      parts: [...new Set(parts.filter((part) => part.service === id).map(({ part }) => part.path))].map(
        (path) => describePart(sheet, path),
      ),
      repeat,
      first: first && at('first'),
      severe:
        severe &&
        (severe.kind === 'interval'
          ? { interval: at('severe/interval'), criteria: severe.criteria }
          : dropUndefined({
              factor: severe.factor,
              scaled: scaleInterval(repeat.resolved, severe.factor),
              criteria: severe.criteria,
            })),
      events: service.events ?? [],
    })
  })
}
