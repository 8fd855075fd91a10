import { readMeters } from '../../interval/index.js'
import { recordRule } from '../ruleMakers.js'

/**
 * A record outside its log whose meter reading contradicts the readings of the log: it is lower than an earlier one,
 * or higher than is possible in the days between. It was misread, or the record is of another machine.
 * Judges: Reads the meters of the log without and with the record. Finds each meter of the record for which a new
 * error appears. Not judged without the log, or if the log holds the record.
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
