import { unknownName } from '../lookup/unknownName.js'
import { recordRule } from '../ruleMakers.js'

/**
 * Oil from a container that no stock of the set holds: it cannot be judged, and the shelf keeps the old count.
 * Judges: The `oil/container` of every entry. Finds an id that no stock has. Not judged in a set without a stock.
 * Place: `/entries/<place>/oil/container`
 * Params: id: as written; known: up to eight ids of containers; more: how many more exist; meant: the likely one, if
 * one is near
 * House rule.
 */
export const rule = recordRule(
  'record/unknown-container',
  'warning',
  ({ document: record, set: { stocks } }) => {
    if (stocks.length === 0) return []
    const known = stocks.flatMap(({ document }) => Object.keys(document.containers))
    return record.entries.flatMap(({ oil }, place) => {
      const id = oil?.container
      if (id === undefined || known.includes(id)) return []
      const path = `/entries/${place}/oil/container`
      return [unknownName(path, id, known)]
    })
  },
)
