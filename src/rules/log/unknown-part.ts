import { findUnknownIds, lookUp } from '../lookup/lookUp.js'
import { logRule } from '../ruleMakers.js'

/**
 * An event or top-up of a gearcase or instance that is not on the log's sheet. The event would make no
 * service due, and the lost oil would not be counted.
 * Judges: The `gearcases` of every event; the `gearcase` of every top-up and, if the sheet has that gearcase,
 * its `instance`. Finds each id that the sheet does not have. Skipped without the sheet.
 * Place: the id
 * Params: id: as written; known: up to eight ids that exist; more: how many more exist; meant: the probable
 * id, if one is similar
 * Harm: record
 * House rule.
 */
export const rule = logRule('log/unknown-part', 'error', ({ document: log, sheet }) => {
  if (sheet === undefined) return []
  const gearcases = Object.keys(sheet.document.gearcases)
  return findUnknownIds([
    ...(log.events ?? []).flatMap((event, place) =>
      ('gearcases' in event ? (event.gearcases ?? []) : []).map((id, at) => ({
        path: `/events/${place}/gearcases/${at}`,
        id,
        known: gearcases,
      })),
    ),
    ...(log.topUps ?? []).flatMap(({ gearcase, instance }, place) => {
      const namedGearcase = lookUp(sheet.document.gearcases, gearcase)
      if (namedGearcase === undefined)
        return [{ path: `/topUps/${place}/gearcase`, id: gearcase, known: gearcases }]
      const instances = Object.keys(namedGearcase.instances ?? {})
      return instance === undefined
        ? []
        : [{ path: `/topUps/${place}/instance`, id: instance, known: instances }]
    }),
  ])
})
