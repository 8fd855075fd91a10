import type { Finding } from '../base/index.js'
import { addPeriod, compareDates, type DateText, daysBetween } from '../calendar/index.js'
import type { DueOptions } from '../interval/index.js'
import type { Id, Toolbox } from '../spec/index.js'
import { readCalibrationInputs } from '../torque/index.js'
import { type ServiceCodes, serviceFinding } from './codes.js'
import type { DueFacts } from './listDue.js'
import { describePart } from './names.js'
import type { planTightenings } from './planTightenings.js'
import type { VisitContext } from './visitContext.js'
import type { PlannedDue, PlannedMachine, PlannedTool } from './visitPlan.js'

type ServiceFindings = readonly Finding<ServiceCodes>[]

/**
 * Findings about the documents of a visit that need its plan: an unknown variant, a stale reading, a torque
 * that no wrench covers, a missing socket, stands that are too weak.
 */
export function reportVisit(
  { sheet, toolbox }: VisitContext,
  { log, today }: DueFacts,
  options: DueOptions,
  { variant }: PlannedMachine,
  due: readonly PlannedDue[],
  { uncovered, missingSettings }: ReturnType<typeof planTightenings>,
  tools: readonly PlannedTool[],
): ServiceFindings {
  const logReference = { kind: 'machine-log', id: log.id } as const
  const findings: Finding<ServiceCodes>[] = []
  if (variant.verdict === 'cannot tell') {
    const { missing: facts } = variant
    const candidates = variant.candidates.map(({ name }) => name)
    findings.push(
      facts.length > 0
        ? serviceFinding('service/variant-not-known', 'warning', logReference, '/identity', {
            facts,
            candidates,
          })
        : serviceFinding('service/variant-contradicted', 'warning', logReference, '/identity', {
            candidates,
          }),
    )
  }
  findings.push(...reportReadings({ log, today }, options, due))
  const document = { kind: 'spec-sheet', id: sheet.id } as const
  if (toolbox === undefined) {
    for (const { reason } of missingSettings)
      findings.push({ ...reason, severity: 'warning', document, path: '/gearcases' } as Finding<ServiceCodes>)
    return findings
  }
  for (const { path, reasons } of uncovered) {
    const params = { part: describePart(sheet, path), reasons }
    findings.push(serviceFinding('service/no-wrench-fits', 'warning', document, path, params))
  }
  const toolboxReference = { kind: 'toolbox', id: toolbox.id } as const
  for (const { kind, verdict, have, reasons } of tools) {
    const [reason] = reasons
    if (reason === undefined || (verdict !== 'missing' && verdict !== 'does not fit')) continue
    if (kind !== 'socket' && kind !== 'stands' && kind !== 'ramps') continue
    const path = kind === 'socket' ? '/sockets' : have === undefined ? `/${kind}` : `/${kind}/${have.id}`
    // The reason of a tool has a service code, so it can become the finding.
    findings.push({
      ...reason,
      severity: 'warning',
      document: toolboxReference,
      path,
    } as Finding<ServiceCodes>)
  }
  return findings
}

function reportReadings(
  { log, today }: Pick<DueFacts, 'log' | 'today'>,
  { staleAfter }: DueOptions,
  due: readonly PlannedDue[],
): ServiceFindings {
  const document = { kind: 'machine-log', id: log.id } as const
  return (['hours', 'distance'] as const).flatMap((meter): ServiceFindings => {
    const dates = (log.meters[meter]?.readings ?? []).map(({ date }) => date)
    const [date] = dates
      .filter((readingDate) => compareDates(readingDate, today) <= 0)
      .sort((first, second) => compareDates(second, first))
    // Report it only if a verdict depends on it; a service that is due by the calendar needs no new reading.
    const isNeeded = due.some(({ missing }) =>
      missing.some(({ code, params }) => code === 'interval/reading-stale' && params['meter'] === meter),
    )
    if (date === undefined || !isNeeded) return []
    const params = { meter, date, days: daysBetween(date, today), staleAfter: staleAfter.days }
    const path = `/meters/${meter}/readings`
    return [serviceFinding('service/reading-stale', 'warning', document, path, params)]
  })
}

/**
 * The toolbox without wrenches whose scale is reversed, so that one mistake does not stop the plan. A rule
 * reports it too, but a plan can be made without running the rules.
 */
export function excludeReversedWrenches(toolbox: Toolbox): {
  readonly toolbox: Toolbox
  readonly findings: ServiceFindings
} {
  const document = { kind: 'toolbox', id: toolbox.id } as const
  const findings: Finding<ServiceCodes>[] = []
  const wrenches = Object.entries(toolbox.wrenches).filter(([id, { name, scales }]) => {
    const before = findings.length
    for (const [place, { lowest, highest, unit }] of scales.entries()) {
      if (highest >= lowest) continue
      const ends = { lowest: { value: lowest, unit }, highest: { value: highest, unit } }
      const path = `/wrenches/${id}/scales/${place}`
      findings.push(
        serviceFinding('service/scale-reversed', 'error', document, path, { wrench: name, ...ends }),
      )
    }
    return findings.length === before
  })
  return { toolbox: { ...toolbox, wrenches: Object.fromEntries(wrenches) }, findings }
}

const LAST_FULL_YEAR = '9999-01-01'

/** Findings for used wrenches whose calibration has expired or is not recorded. */
export function checkCalibration(
  toolbox: Toolbox,
  wrenches: readonly Id[],
  today: DateText,
): ServiceFindings {
  const document = { kind: 'toolbox', id: toolbox.id } as const
  return wrenches.flatMap((id): ServiceFindings => {
    const wrenchInToolbox = toolbox.wrenches[id]
    if (wrenchInToolbox === undefined) return []
    const { from, interval, cycles, byCycles } = readCalibrationInputs(wrenchInToolbox)
    const wrench = wrenchInToolbox.name
    const path = `/wrenches/${id}`
    if (from === undefined)
      return [serviceFinding('service/calibration-not-recorded', 'info', document, path, { wrench })]
    const found: Finding<ServiceCodes>[] = []
    // A future calibration has not expired, and the calendar ends with the year 9999.
    const mayHaveExpired = compareDates(from, today) <= 0 && compareDates(from, LAST_FULL_YEAR) < 0
    const dueOn = interval.period && mayHaveExpired ? addPeriod(from, interval.period) : undefined
    if (dueOn !== undefined && compareDates(dueOn, today) <= 0) {
      const at = `${path}/calibration/date`
      found.push(serviceFinding('service/calibration-expired', 'warning', document, at, { wrench, dueOn }))
    }
    if (byCycles === 'due') {
      const at = `${path}/calibration/cyclesSince`
      const params = { wrench, cycles: cycles.used ?? cycles.limit, limit: cycles.limit }
      found.push(serviceFinding('service/calibration-cycles-used-up', 'warning', document, at, params))
    }
    return found
  })
}
