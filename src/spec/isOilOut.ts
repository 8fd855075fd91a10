import type { Gearcase } from './gearcase.js'
import type { RecordEntry, ServiceRecord } from './serviceRecord.js'

/**
 * Whether a record opened one of the openings or covers that empty the gearcase, in any entry for this gearcase and instance; also
 * true if the sheet names none.
 */
export function isOilOut(
  { entries }: ServiceRecord,
  { gearcase, instance }: RecordEntry,
  { emptying }: Gearcase,
): boolean {
  const opened = entries
    .filter((one) => one.gearcase === gearcase && one.instance === instance)
    .flatMap((one) => one.opened)
  const isOpened = (part: string) => opened.includes(`/gearcases/${gearcase}/${part}`)
  return (
    emptying.length === 0 ||
    emptying.some((way) => isOpened(way.kind === 'cover' ? `covers/${way.cover}` : `openings/${way.opening}`))
  )
}
