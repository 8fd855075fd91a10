import { splitPointer } from '../../base/index.js'
import { nameLeafKind } from '../../spec/index.js'
import { defineRule } from '../rule.js'

/**
 * An override that says one kind of leaf and points at another, such as a torque set where a quantity stands.
 * It could not be used in either sense. House rule: an override replaces a leaf by one of its own kind.
 */
export const overrideOfOtherKind = defineRule({
  code: 'spec/override-of-other-kind',
  severity: 'error',
  about: 'spec-sheet',
  check: ({ document }) =>
    (document.overrides ?? []).flatMap(({ set }, place) =>
      set.flatMap(({ kind, path: target }, at) => {
        const there = nameLeafKind(splitPointer(target) ?? [])
        return there === undefined || there === kind
          ? []
          : [{ path: `/overrides/${place}/set/${at}/kind`, params: { target, kind, there } }]
      }),
    ),
})
