import type { DateText } from '../calendar/index.js'
import { type Id, type MachineLog, type RecordedSample, resolveRecords } from '../spec/index.js'

/** An oil sample without a result. */
export interface OpenSample extends RecordedSample {
  readonly record: Id
  readonly date: DateText
  readonly gearcase: Id
  readonly instance?: Id
}

/** The oil samples of a log whose result has not been recorded, in the order of the records. */
export function listOpenSamples({ records }: MachineLog): readonly OpenSample[] {
  return resolveRecords(records).flatMap(({ record: { id, date, entries } }) =>
    entries.flatMap(({ gearcase, instance, sample }) =>
      sample === undefined || sample.result !== undefined
        ? []
        : [{ record: id, date, gearcase, ...(instance !== undefined && { instance }), ...sample }],
    ),
  )
}
