import type { Reason } from '../base/index.js'
import { isDrainOpened, type RecordEntry, type ServiceRecord, type SpecSheet } from '../spec/index.js'
import { type RecordCodes, recordReason } from './codes.js'

/**
 * The reason why the work of an entry does not count as done; undefined if it does. A change is done if an
 * opening or cover that lets the oil out was opened and any quantity of oil went in; a check is done unless
 * the record says that the level was not checked. Work that cannot be judged counts: records without details,
 * of another sheet or revision, and gearcases without their own oil.
 */
export function judgeDone(
  record: ServiceRecord,
  entry: RecordEntry,
  sheet: SpecSheet | undefined,
): Reason<keyof RecordCodes> | undefined {
  const { service, gearcase: id, notDone, refilled, level } = entry
  if (notDone !== undefined) return recordReason('record/reported-not-done', { why: notDone })
  if (record.detail !== 'full' || sheet === undefined) return undefined
  if (record.sheet.id !== sheet.id || record.sheet.revision !== sheet.revision) return undefined
  const { gearcases, services } = sheet
  if (!Object.hasOwn(gearcases, id)) return undefined
  const gearcase = gearcases[id]
  const task = Object.hasOwn(services, service) ? services[service]?.task : undefined
  if (gearcase === undefined || task === undefined || gearcase.oilSpace.kind === 'shared') return undefined
  const params = { gearcase: gearcase.name }
  if (task === 'check')
    return level === 'not checked' ? recordReason('record/level-not-checked', params) : undefined
  if (!isDrainOpened(record, entry, gearcase)) return recordReason('record/old-oil-not-drained', params)
  const isOilIn = refilled === undefined ? level === 'at the mark' || level === 'above' : refilled.value > 0
  return isOilIn ? undefined : recordReason('record/new-oil-not-filled', params)
}
