import { unknownNames } from '../lookup/unknownNames.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A sheet that names a source, axle, support, gearcase, opening, cover, shield or service that it does not have:
 * mistyped, or removed and forgotten here.
 * Judges: `axle` of supports and gearcases; `access/supports`; `oilSpace/with`, `oilSpace/passageTo`,
 * `oilSpace/fill/method/opening`; `opening` and `cover` of each way of `emptying` and of `filters/held`; `shields` of gearcases;
 * `satisfies` and `gearcases` of services; `source/ref` anywhere. Openings and covers are looked up in their own
 * gearcase. Finds each id that does not exist.
 * Place: the id
 * Params: to: the kind of part; id: as written; known: up to eight ids that exist; more: how many more exist; meant:
 * the likely one, if one is near
 * Harm: job
 * House rule.
 */
export const rule = sheetRule('spec/dangling-reference', 'error', ({ sheet }) =>
  sheet.references.flatMap(({ to, ...name }) =>
    unknownNames([name]).map((found) => ({ ...found, params: { to, ...found.params } })),
  ),
)
