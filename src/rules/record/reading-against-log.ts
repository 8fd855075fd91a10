import { readMeters } from '../../interval/index.js'
import { defineRule } from '../rule.js'

/**
 * A record on its own sheet of paper whose meter reading cannot stand beside those of the machine's log: less
 * than before, or more than the days between allow. Misread, or the record of another machine. A record
 * inside the log is judged with the log. Source: the judgement of `readMeters`, a house rule.
 */
export const readingAgainstLog = defineRule({
  code: 'record/reading-against-log',
  severity: 'error',
  about: 'service-record',
  check: ({ document: record, log }) => {
    if (log === undefined || log.records.some(({ id }) => id === record.id)) return []
    const place = `/records/${log.records.length}`
    const before = readMeters(log).findings.map(({ code, path }) => `${code} ${path}`)
    const { findings } = readMeters({ ...log, records: [...log.records, record] })
    const caused = findings.filter(
      ({ code, path, severity }) => severity === 'error' && !before.includes(`${code} ${path}`),
    )
    return (['hours', 'distance'] as const).flatMap((meter) => {
      const own = `${place}/readings/${meter}`
      const found =
        caused.find(({ path }) => path === own) ??
        caused.find(({ path }) => path.startsWith(`/meters/${meter}/`) || path.endsWith(`/readings/${meter}`))
      if (found === undefined || record.readings[meter] === undefined) return []
      return [{ path: `/readings/${meter}`, params: { reason: { code: found.code, params: found.params } } }]
    })
  },
})
