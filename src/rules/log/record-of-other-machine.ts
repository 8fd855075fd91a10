import { logRule } from '../ruleMakers.js'

/**
 * A record of another machine inside a log. It was copied from another log, and its services would count for
 * the wrong machine.
 * Judges: Every record of a log. Finds any whose `machine` is not the `id` of the log.
 * Place: `/records/<place>/machine`
 * Params: machine: the machine that the record names; log: the log's id; record: the record's id
 * Harm: record
 * House rule: a record names the log that contains it.
 */
export const rule = logRule('log/record-of-other-machine', 'error', ({ document: log }) =>
  log.records.flatMap(({ machine, id }, place) =>
    machine === log.id
      ? []
      : [{ path: `/records/${place}/machine`, params: { machine, log: log.id, record: id } }],
  ),
)
