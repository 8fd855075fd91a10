import { unknownName } from '../lookup/unknownName.js'
import { defineRule } from '../rule.js'

/**
 * A record of a machine whose log is not in a set which holds other logs: the work would be written down for
 * nobody. In a set without any log nothing is said. House rule.
 */
export const machineNotFound = defineRule({
  code: 'record/machine-not-found',
  severity: 'error',
  about: 'service-record',
  check: ({ document: record, set: { logs } }) => {
    const known = logs.map(({ document }) => document.id)
    const isInsideLog = logs.some(({ document }) => document.records.includes(record))
    if (known.length === 0 || known.includes(record.machine) || isInsideLog) return []
    return [unknownName('/machine', record.machine, known)]
  },
})
