import { isSameJson, readPointer } from '../../base/index.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * An override that sets what the sheet already has: it changes nothing, so the figure is perhaps wrong.
 * Judges: Every leaf of an override, of any kind, whose base leaf exists. Finds one that is the same except for its
 * sources.
 * Place: `/overrides/<place>/set/<place>/to`
 * Params: target: the pointer that it sets
 * Harm: record
 * House rule; information only.
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
