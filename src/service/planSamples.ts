import { dropUndefined, type Reason, splitPointer } from '../base/index.js'
import { compareDates } from '../calendar/index.js'
import type { MachineLog, Step } from '../spec/index.js'
import { serviceReason } from './codes.js'
import { readLatestReadings } from './describeMachine.js'
import type { DueFacts, ServiceDue } from './listDue.js'
import { describePart, type PartName } from './names.js'
import type { VisitContext } from './visitContext.js'

/** The labels for the oil samples of the steps. */
export function planSamples(
  visit: VisitContext,
  { log, today }: DueFacts,
  due: readonly ServiceDue[],
): readonly Reason[] {
  return visit.procedure.steps
    .filter(({ do: action }) => action === 'take an oil sample')
    .map((step) => {
      const part = describeStepPart(visit, step)
      const isSamePart = (candidate: ServiceDue) =>
        candidate.part.path === part.path &&
        candidate.part.instance?.id === part.instance?.id &&
        candidate.task === 'change'
      const line = due
        .filter(isSamePart)
        .flatMap(({ lines }) => lines)
        .find(({ by, since, used }) => by === 'hours' && since === 'last service' && used !== undefined)
      const { hours } = readLatestReadings(log, today)
      return serviceReason(
        'service/sample-label',
        dropUndefined({
          machine: log.name,
          part,
          date: today,
          hours: hours && { value: hours.value, unit: hours.unit },
          oil: findLastOil(log, part),
          hoursOnOil: line?.used,
        }),
      )
    })
}

function describeStepPart({ sheet }: VisitContext, { on = '', at = {} }: Step) {
  const [, gearcase = ''] = splitPointer(on) ?? []
  return describePart(sheet, `/gearcases/${gearcase}`, dropUndefined({ instance: at.instance }))
}

/** The oil that the last record names for this gearcase. */
function findLastOil({ records }: MachineLog, { path, instance }: PartName): string | undefined {
  return records
    .toSorted((record, other) => compareDates(record.date, other.date))
    .flatMap(({ entries }) => entries)
    .findLast(
      (candidate) =>
        `/gearcases/${candidate.gearcase}` === path &&
        candidate.instance === instance?.id &&
        candidate.oil !== undefined,
    )?.oil?.name
}
