import { findUnknownIds } from '../lookup/lookUp.js'
import { recordRule } from '../ruleMakers.js'

/**
 * Oil from a container that is in no stock of the set. The oil cannot be checked, and the stock would not be
 * reduced.
 * Judges: The `oil/container` of every entry. Finds an id that no stock has. Skipped in a set without a
 * stock.
 * Place: `/entries/<place>/oil/container`
 * Params: id: as written; known: up to eight ids of containers; more: how many more exist; meant: the
 * probable id, if one is similar
 * Harm: record
 * House rule.
 */
export const rule = recordRule(
  'record/unknown-container',
  'warning',
  ({ document: record, set: { stocks } }) => {
    const known = stocks.flatMap(({ document }) => Object.keys(document.containers))
    const namedContainers = record.entries.flatMap(({ oil }, place) =>
      oil?.container === undefined
        ? []
        : [{ path: `/entries/${place}/oil/container`, id: oil.container, known }],
    )
    return stocks.length === 0 ? [] : findUnknownIds(namedContainers)
  },
)
