import { isSameJson, readPointer } from '../../base/index.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * An override that sets what the sheet has anyway: it changes nothing, so a figure may have been meant to differ.
 * Judges: Every leaf of an override, of any kind, whose base leaf exists. Finds one that is the same, but for sources.
 * Place: `/overrides/<place>/set/<place>/to`
 * Params: target: the pointer that it sets
 * Harm: record
 * House rule; information only.
 */
export const rule = sheetRule('spec/override-equals-base', 'info', ({ document, sheet }) =>
  sheet.leaves.flatMap(({ leaf, path, replaces }) => {
    const base = replaces === undefined ? undefined : readPointer(document, replaces)
    if (replaces === undefined || base === undefined || !isSameJson(bare(leaf), bare(base))) return []
    return [{ path, params: { target: replaces } }]
  }),
)

/** Without sources, which may differ. */
const bare = (leaf: unknown): unknown =>
  JSON.parse(JSON.stringify(leaf, (key, value) => (key === 'source' ? undefined : value)))
