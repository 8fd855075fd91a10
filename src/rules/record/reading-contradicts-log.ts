import { readMeters } from '../../interval/index.js'
import { recordRule } from '../ruleMakers.js'

/**
 * A record outside its log whose meter reading contradicts the log: lower than an earlier reading, or higher
 * than possible in the days between. It was misread, or the record belongs to another machine.
 * Judges: Reads the meters of the log without and with the record. Finds each meter of the record with a new
 * error. Skipped without the log, or if the log contains the record.
 * Place: `/readings/<meter>`
 * Params: reason: code and params of the first new error
 * Harm: record
 * Source: the judgement of `readMeters`, a house rule.
 */
export const rule = recordRule('record/reading-contradicts-log', 'error', ({ document: record, log }) => {
  if (log === undefined || log.records.some(({ id }) => id === record.id)) return []
  const recordPath = `/records/${log.records.length}`
  const knownErrors = readMeters(log).findings.map(({ code, path }) => `${code} ${path}`)
  const { findings } = readMeters({ ...log, records: [...log.records, record] })
  const newErrors = findings.filter(
    ({ code, path, severity }) => severity === 'error' && !knownErrors.includes(`${code} ${path}`),
  )
  return (['hours', 'distance'] as const).flatMap((meter) => {
    const readingPath = `${recordPath}/readings/${meter}`
    const found =
      newErrors.find(({ path }) => path === readingPath) ??
      newErrors.find(
        ({ path }) => path.startsWith(`/meters/${meter}/`) || path.endsWith(`/readings/${meter}`),
      )
    if (found === undefined || record.readings[meter] === undefined) return []
    return [{ path: `/readings/${meter}`, params: { reason: { code: found.code, params: found.params } } }]
  })
})
