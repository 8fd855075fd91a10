import { findUnknownIds } from '../lookup/lookUp.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A sheet that names a source, axle, support, gearcase, opening, cover, shield or service that it does not
 * have. The id is mistyped, or the part was removed.
 * Judges: `axle` of supports and gearcases; `access/supports`; `oilSpace/with`, `oilSpace/passageTo`,
 * `oilSpace/fill/method/opening`; `opening` and `cover` of each entry of `emptying` and of `filters/held`;
 * `shields` of gearcases; `satisfies` and `gearcases` of services; `source/ref` anywhere. Openings and covers
 * are looked up in the same gearcase. Finds each id that does not exist.
 * Place: the id
 * Params: to: the kind of part; id: as written; known: up to eight ids that exist; more: how many more exist;
 * meant: the probable id, if one is similar
 * Harm: job
 * House rule.
 */
export const rule = sheetRule('spec/dangling-reference', 'error', ({ sheet }) =>
  sheet.references.flatMap(({ to, ...name }) =>
    findUnknownIds([name]).map((found) => ({ ...found, params: { to, ...found.params } })),
  ),
)
