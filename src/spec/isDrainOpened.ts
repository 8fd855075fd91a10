import type { Filter } from './filter.js'
import type { Gearcase } from './gearcase.js'
import type { RecordEntry, ServiceRecord } from './serviceRecord.js'

/**
 * Whether a record opened a drain of the gearcase, in any entry for this gearcase and instance. Also true if
 * the sheet names no drain.
 */
export function isDrainOpened(
  { entries }: ServiceRecord,
  { gearcase, instance }: RecordEntry,
  { emptying }: Gearcase,
): boolean {
  const openedParts = entries
    .filter((recordEntry) => recordEntry.gearcase === gearcase && recordEntry.instance === instance)
    .flatMap((recordEntry) => recordEntry.opened)
  const isOpened = (part: string) => openedParts.includes(`/gearcases/${gearcase}/${part}`)
  return (
    emptying.length === 0 ||
    emptying.some((method) =>
      isOpened(method.kind === 'cover' ? `covers/${method.cover}` : `openings/${method.opening}`),
    )
  )
}

/** Whether an oil change needs a new filter; if the manual does not say, a strainer is cleaned and a filter renewed. */
export function isFilterRenewed({ kind, change }: Filter): boolean {
  return change === 'every change' || (change === 'not stated' && kind !== 'strainer')
}
