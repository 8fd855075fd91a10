import type { Finding } from '../base/index.js'
import { compareDates, type DateText, daysBetween } from '../calendar/index.js'
import type { DueOptions } from '../interval/index.js'
import type { MachineLog, MeterName, SpecSheet, Toolbox } from '../spec/index.js'
import { type ServiceCodes, serviceFinding } from './codes.js'
import { namePart } from './names.js'
import type { TighteningPlan } from './planTightenings.js'
import type { PlannedDue, PlannedMachine, PlannedTool } from './visitPlan.js'

/** What {@link reportVisit} reads. */
export interface ReportRequest {
  readonly sheet: SpecSheet
  readonly log: MachineLog
  readonly today: DateText
  readonly options: DueOptions
  readonly machine: PlannedMachine
  readonly due: readonly PlannedDue[]
  readonly tightening: TighteningPlan
  readonly tools: readonly PlannedTool[]
  readonly toolbox: Toolbox | undefined
}

/**
 * Findings about the documents of a visit that show only once it is planned: a variant that cannot be told, a stale
 * reading, a torque that no wrench covers, a socket that is not there, stands that do not hold.
 */
export function reportVisit(request: ReportRequest): readonly Finding<ServiceCodes>[] {
  const { sheet, log, machine, tightening, tools, toolbox } = request
  const ofLog = { kind: 'machine-log', id: log.id } as const
  const findings: Finding<ServiceCodes>[] = []
  const { variant } = machine
  if (variant.verdict === 'cannot tell')
    findings.push(
      variant.missing.length > 0
        ? serviceFinding('service/variant-open', 'warning', ofLog, '/identity', {
            facts: variant.missing,
            candidates: variant.candidates.map(({ name }) => name),
          })
        : serviceFinding('service/variant-contradicted', 'warning', ofLog, '/identity', {
            candidates: variant.candidates.map(({ name }) => name),
          }),
    )
  findings.push(...reportReadings(request))
  for (const { path, reasons } of tightening.uncovered) {
    const { torque } = findTorque(path, tightening)
    if (toolbox === undefined || !torque) continue
    findings.push(
      serviceFinding('service/no-wrench-fits', 'warning', { kind: 'spec-sheet', id: sheet.id }, path, {
        part: namePart(sheet, path),
        reasons,
      }),
    )
  }
  if (toolbox === undefined) return findings
  const ofToolbox = { kind: 'toolbox', id: toolbox.id } as const
  for (const { kind, verdict, have, reasons } of tools) {
    const [reason] = reasons
    if (reason === undefined || (verdict !== 'missing' && verdict !== 'does not fit')) continue
    if (kind !== 'socket' && kind !== 'stands') continue
    const path = kind === 'socket' ? '/sockets' : have === undefined ? '/stands' : `/stands/${have.id}`
    // A tool's reason is one of this room: it becomes the finding as it is.
    findings.push({ ...reason, severity: 'warning', document: ofToolbox, path } as Finding<ServiceCodes>)
  }
  return findings
}

/** Whether a part left uncovered has a stated torque; one by turns or not stated is told elsewhere. */
function findTorque(path: string, { tightenings }: TighteningPlan): { readonly torque: boolean } {
  const found = tightenings.find(({ part }) => part.path === path)
  return { torque: found?.verdict === 'does not fit' }
}

function reportReadings({ log, today, options, due }: ReportRequest): readonly Finding<ServiceCodes>[] {
  const ofLog = { kind: 'machine-log', id: log.id } as const
  return (['hours', 'distance'] as const).flatMap((meter: MeterName): readonly Finding<ServiceCodes>[] => {
    const readings = log.meters[meter]?.readings ?? []
    const past = readings.filter(({ date }) => compareDates(date, today) <= 0)
    const last = past.reduce<string | undefined>(
      (latest, { date }) => (latest === undefined || compareDates(date, latest) > 0 ? date : latest),
      undefined,
    )
    // Only where a service turns on it: one that is due by the calendar needs no newer reading.
    const matters = due.some(({ missing }) =>
      missing.some(({ code, params }) => code === 'interval/reading-stale' && params['meter'] === meter),
    )
    if (last === undefined || !matters) return []
    const days = daysBetween(last, today)
    return [
      serviceFinding('service/reading-stale', 'warning', ofLog, `/meters/${meter}/readings`, {
        meter,
        date: last,
        days,
        staleAfter: options.staleAfter.days,
      }),
    ]
  })
}
