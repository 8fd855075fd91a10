import { readPointer, splitPointer } from '../../base/index.js'
import { findLeafRow } from '../../spec/index.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * An override whose pointer leads to no leaf of the sheet. It is mistyped, or points inside a leaf, and would
 * never be used. An optional leaf that the base sheet omits may be set.
 * Judges: Every entry of an override, its `path` split into unescaped tokens (RFC 6901). Finds a path that is
 * not under `leaves`, or whose parent (the path without its last token) is not on the sheet as written. Keys
 * are compared exactly; a list has only its indexes, without leading zeros. The last token is compared only
 * with `leaves`, so an index past the end of a list is allowed. `spec/override-of-other-kind` checks the
 * `kind` of the entry.
 * Place: `/overrides/<place>/set/<place>/path`
 * Params: target: the path
 * Harm: job
 * House rule: overrides replace whole leaves, so each figure keeps its source.
 */
export const rule = sheetRule('spec/override-target-missing', 'error', ({ document }) =>
  (document.overrides ?? []).flatMap(({ set }, place) =>
    set.flatMap(({ path: target }, at) => {
      const holder = target.slice(0, target.lastIndexOf('/'))
      const isLeaf = findLeafRow(splitPointer(target) ?? []) !== undefined
      if (isLeaf && readPointer(document, holder) !== undefined) return []
      return [{ path: `/overrides/${place}/set/${at}/path`, params: { target } }]
    }),
  ),
)
