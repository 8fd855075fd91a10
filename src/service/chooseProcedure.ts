import { dropUndefined, type Result } from '../base/index.js'
import { compareDates, type DateText } from '../calendar/index.js'
import { buildProcedure, type ProcedureCodes, validateProcedure } from '../procedure/index.js'
import type { Id, MachineEventKind, ProcedureDocument } from '../spec/index.js'
import type { ServiceDue } from './listDue.js'
import type { VisitFacts } from './requireVisit.js'

/** Writes the procedure of the chosen services. */
/** The procedure of a visit: the writer's, checked for this machine, or one that is built for the chosen services. */
export function chooseProcedure(
  facts: VisitFacts,
  dueServices: readonly ServiceDue[],
  chosen: readonly ServiceDue[],
): Result<Pick<ProcedureDocument, 'steps'>, ProcedureCodes> {
  const { sheet, log, procedure } = facts
  const { identity } = log
  const events = listOpenEvents(facts, dueServices)
  if (procedure !== undefined) {
    const findings = validateProcedure({ ...procedure, identity, events }, sheet)
    return procedure.sheet.id === sheet.id
      ? { ok: true, value: procedure, findings }
      : { ok: false, findings: findings.filter(({ code }) => code === 'procedure/other-sheet') }
  }
  if (chosen.length === 0) return { ok: true, value: { steps: [] }, findings: [] }
  const services = [...new Set(chosen.map(({ service }) => service))]
  const only = chosen.map(({ service, gearcase, part }) =>
    dropUndefined({ service, gearcase, instance: part.instance?.id }),
  )
  return buildProcedure({ sheet, identity, services, only, ...(events.length > 0 && { events }) })
}

/** Events after which the oil of an affected gearcase was not changed. */
function listOpenEvents(
  { sheet, log, today }: VisitFacts,
  dueServices: readonly ServiceDue[],
): readonly MachineEventKind[] {
  const changed = new Set(dueServices.flatMap(({ gearcase, task }) => (task === 'change' ? gearcase : [])))
  const isChangedSince = (gearcase: Id, since: DateText) =>
    log.records.some(
      ({ date, entries }) =>
        compareDates(date, since) >= 0 &&
        entries.some((one) => one.gearcase === gearcase && sheet.services[one.service]?.task === 'change'),
    )
  return (log.events ?? []).flatMap((event) => {
    if ('meter' in event || compareDates(event.date, today) > 0) return []
    const affected = [...changed].filter((gearcase) => event.gearcases?.includes(gearcase) ?? true)
    return affected.every((gearcase) => isChangedSince(gearcase, event.date)) ? [] : event.kind
  })
}
