import { isSameJson, readPointer } from '../../base/index.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * An override equal to the base value. It changes nothing, so the figure may be wrong.
 * Judges: Every leaf of an override, of any kind, whose base leaf exists. Finds a leaf that differs from its
 * base only in sources, or not at all.
 * Place: `/overrides/<place>/set/<place>/to`
 * Params: target: the overridden pointer
 * Harm: record
 * House rule. Information only.
 */
export const rule = sheetRule('spec/override-equals-base', 'info', ({ document, sheet }) =>
  sheet.leaves.flatMap(({ leaf, path, replaces }) => {
    const base = replaces === undefined ? undefined : readPointer(document, replaces)
    if (
      replaces === undefined ||
      base === undefined ||
      !isSameJson(withoutSources(leaf), withoutSources(base))
    )
      return []
    return [{ path, params: { target: replaces } }]
  }),
)

const withoutSources = (leaf: unknown): unknown =>
  JSON.parse(JSON.stringify(leaf, (key, value) => (key === 'source' ? undefined : value)))
