import { dropUndefined, type Result, requireKnownKeys, requireObject } from '../base/index.js'
import { buildProcedure } from '../procedure/index.js'
import { convertAmount } from '../quantity/index.js'
import type { Id, Identity, Source, SpecSheet, Stock, Toolbox } from '../spec/index.js'
import { requireDocument } from '../spec/index.js'
import { chooseRaising, chooseWork } from './chooseVisit.js'
import { type CollectedFigures, collectFigures } from './collectFigures.js'
import { describeIdentity } from './describeIdentity.js'
import { listPartsWithoutSteps } from './gearcases.js'
import { listMissing } from './listMissing.js'
import { listServiceParts, type ServiceOnGearcase } from './listServiceParts.js'
import { listUnstated } from './listUnstated.js'
import { groupByGearcase } from './planFilters.js'
import { type OilPlan, planOil } from './planOil.js'
import { planTightenings } from './planTightenings.js'
import { planVessel } from './planVessel.js'
import type { VisitCodes } from './planVisit.js'
import { excludeReversedWrenches } from './reportVisit.js'
import type { VisitOptions } from './requireVisit.js'
import { requireWorkOptions } from './requireWorkOptions.js'
import type { VisitContext } from './visitContext.js'
import { listIntervals } from './wall/listIntervals.js'
import { listJob } from './wall/listJob.js'
import { listPanels } from './wall/listPanels.js'
import { listPours } from './wall/listPours.js'
import { listTrueSizes } from './wall/listTrueSizes.js'
import { listWrenches } from './wall/listWrenches.js'
import type { WallFacts, WallJug } from './wall/wallFactsTypes.js'

/** The machine of a wall card, and the workshop's tools and oils. */
export interface WallInput {
  readonly sheet: SpecSheet
  /** The variant or the serial number of the machine, if known. */
  readonly identity: Identity
  /** For wrench settings, the jug and the hose; absent: only the manual's figures. */
  readonly toolbox?: Toolbox
  /** For the viscosity of the oils, so that pouring times are known; its amounts are ignored. */
  readonly stock?: Stock
}

/** The choices of the caller; they mean the same as those of {@link planVisit}. */
export type WallOptions = Pick<VisitOptions, 'iso6789' | 'tolerancePercent' | 'raiseOn'>

/**
 * Collects the facts of a wall card for one machine or variant: intervals, quantities, oils, tools, torques and wrench
 * settings, the job in at most ten lines, pouring times, and true sizes. It has no date and reads no log, so the card
 * is valid until the sheet or the toolbox changes. For one visit on one day, use {@link planVisit}; to write the card,
 * use `wallModel`.
 *
 * The job is that of all oil changes of the machine; a gearcase without one has its level check. Pouring times
 * are for 0, 10 and 20 °C.
 * @param input - the sheet, the variant or serial number, and the workshop's toolbox and oils
 * @param options - the edition of ISO 6789, and choices that have no default
 * @returns plain JSON; not ok if no procedure can be written
 * @throws TypeError or RangeError for misuse, such as a sheet that was not parsed, or an unknown option
 *
 * Source: house rule; each calculation names its source. The temperatures are common practice, no source.
 * @example
 * ```ts
 * import { wallFacts } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * // How many gearcases does the card of a sheet without gearcases have?
 * const facts = wallFacts({ sheet, identity: {} }, { iso6789: '2017' })
 * facts.ok && facts.value.panels.length // => 0
 * ```
 */
export function wallFacts(input: WallInput, options: WallOptions): Result<WallFacts, VisitCodes> {
  requireWall(input, options)
  const { sheet, identity, stock } = input
  const checkedToolbox = input.toolbox && excludeReversedWrenches(input.toolbox)
  const toolbox = checkedToolbox?.toolbox
  const all = listServiceParts(sheet, identity)
  const chosen = chooseJob(sheet, all)
  const only = chosen.map(({ service, gearcase, part }) =>
    dropUndefined({ service, gearcase, instance: part.instance?.id }),
  )
  const services = [...new Set(chosen.map(({ service }) => service))]
  const { raiseOn = chooseRaising(dropUndefined({ sheet, toolbox })) } = options
  const built = chosen.length === 0 ? undefined : buildProcedure({ sheet, identity, services, only, raiseOn })
  if (built?.ok === false) return built
  const procedure = built?.value ?? { steps: [] }

  const visitGearcases = groupByGearcase(chosen)
  const gearcases = visitGearcases.map(({ gearcase }) => gearcase)
  const changes = visitGearcases.filter(({ task }) => task === 'change')
  const partsWithoutSteps = listPartsWithoutSteps(sheet, gearcases, procedure)
  const figures = collectFigures(sheet, identity, gearcases, procedure, partsWithoutSteps)
  const visit: VisitContext = dropUndefined({
    sheet,
    identity,
    toolbox,
    procedure,
    partsWithoutSteps,
    figures,
  })
  const oil = planOil(visit, changes)
  const { tightenings, missingSettings } = planTightenings(visit, options)
  const { intervals, figures: intervalFigures } = listIntervals(sheet, identity, all, figures.figures.length)
  const machine = describeIdentity(sheet, identity)
  const panels = listPanels(visit, gearcases, oil.oil, tightenings)
  const parts = panels.flatMap((panel) => panel.parts)
  const value: WallFacts = dropUndefined({
    kind: 'wall-facts',
    version: '1.0',
    machine: dropUndefined({
      ...machine,
      when: machine.variant.verdict === 'one' ? sheet.machine.variants[machine.variant.id]?.when : undefined,
    }),
    figures: [...figures.figures, ...intervalFigures],
    intervals,
    missing: listMissing(
      { ...machine, log: '', name: '' },
      [],
      [...figures.figures, ...intervalFigures],
      [...listUnstated(visit, gearcases), ...(toolbox === undefined ? [] : missingSettings)],
      [],
      [],
    ),
    panels,
    job: listJob(visit),
    tightenings,
    wrenches: toolbox === undefined ? [] : listWrenches(toolbox, tightenings),
    oil: oil.oil.map(({ take: _take, buy: _buy, reasons: _reasons, ...entry }) => entry),
    pours: listPours(visit, stock, changes),
    jugs: toolbox === undefined ? [] : listJugs(visit, toolbox, oil),
    sizes: listTrueSizes(visit, [...new Set(parts.map(({ part }) => part.path))]),
    sources: mergeSources(sheet, figures, intervalFigures),
  })
  return { ok: true, value, findings: [...(checkedToolbox?.findings ?? []), ...(built?.findings ?? [])] }
}

/** All oil changes, and the checks of gearcases without one. */
function chooseJob(sheet: SpecSheet, all: readonly ServiceOnGearcase[]): readonly ServiceOnGearcase[] {
  const certain = all.filter(({ unknownReasons }) => unknownReasons.length === 0)
  const changed = new Set(certain.flatMap(({ gearcase, task }) => (task === 'change' ? gearcase : [])))
  const candidates = certain.filter(({ gearcase, task }) => task === 'change' || !changed.has(gearcase))
  const services = [...new Set(candidates.map(({ service }) => service))]
  const taken = chooseWork(sheet, candidates, services)
  return candidates.filter((_line, place) => taken[place]?.taken)
}

function listJugs(visit: VisitContext, toolbox: Toolbox, { volumes }: OilPlan): readonly WallJug[] {
  const { tools, marks } = planVessel(visit, volumes, toolbox)
  return tools.flatMap(({ for: [part] }): WallJug | readonly [] => {
    const chosen = marks.get(part?.path.split('/')[2] ?? '')
    const vessel = chosen && toolbox.vessels[chosen.vessel]
    if (part === undefined || chosen === undefined || vessel === undefined) return []
    const { name, size, graduation } = vessel
    return { part, name, size, graduation: convertAmount(graduation, size.unit), marks: chosen.marks }
  })
}

/** The sources of all figures, in the order of the sheet. */
function mergeSources(
  sheet: SpecSheet,
  { sources }: CollectedFigures,
  intervals: WallFacts['figures'],
): Readonly<Record<Id, Source>> {
  const used = new Set([
    ...Object.keys(sources),
    ...intervals.flatMap(({ resolved }) =>
      resolved.kind === 'cannot tell' ? [] : (resolved.trace.source?.ref ?? []),
    ),
  ])
  return Object.fromEntries(Object.entries(sheet.sources).filter(([id]) => used.has(id)))
}

function requireWall(input: WallInput, options: WallOptions): void {
  requireKnownKeys('input', input, ['sheet', 'identity', 'toolbox', 'stock'])
  requireDocument('input.sheet', input.sheet, 'spec-sheet')
  requireObject('input.identity', input.identity)
  if (input.toolbox !== undefined) requireDocument('input.toolbox', input.toolbox, 'toolbox')
  if (input.stock !== undefined) requireDocument('input.stock', input.stock, 'stock')
  requireKnownKeys('options', options, ['iso6789', 'tolerancePercent', 'raiseOn'])
  requireWorkOptions(options)
}
