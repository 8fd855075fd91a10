import { splitPointer } from '../../base/index.js'
import { findLeafRow } from '../../spec/index.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * An override of one kind that points to a leaf of another kind, such as a torque for a quantity. It could
 * not be used as either.
 * Judges: Every entry of an override whose `path` points to a leaf. Finds a `kind` other than the leaf's.
 * Place: `/overrides/<place>/set/<place>/kind`
 * Params: target: the path; kind: as written; there: the kind of the leaf
 * Harm: machine
 * House rule: an override replaces a leaf by one of the same kind.
 */
export const rule = sheetRule('spec/override-of-other-kind', 'error', ({ document }) =>
  (document.overrides ?? []).flatMap(({ set }, place) =>
    set.flatMap(({ kind, path: target }, at) => {
      const there = findLeafRow(splitPointer(target) ?? [])?.kind
      return there === undefined || there === kind
        ? []
        : [{ path: `/overrides/${place}/set/${at}/kind`, params: { target, kind, there } }]
    }),
  ),
)
