import { sheetRule } from '../ruleMakers.js'

/**
 * Model years between two variants that no variant covers. A machine of such a year fits none.
 * Judges: A sheet whose variants all have a `when` with model years only. Sorts the variants by `from`. Finds
 * each variant whose `from` is more than one year after the highest `to` before it.
 * Place: `/machine/variants/<id>/when/modelYears` of the later variant
 * Params: from: the first missing year; to: the last missing year
 * Harm: record
 * House rule. Information only.
 */
export const rule = sheetRule('spec/model-year-gap', 'info', ({ document }) => {
  const variants = Object.entries(document.machine.variants).map(([id, { when = {} }]) => ({ id, when }))
  if (variants.some(({ when }) => Object.keys(when).join() !== 'modelYears')) return []
  const sorted = variants
    .map(({ id, when }) => ({ id, from: when.modelYears?.from ?? 0, to: when.modelYears?.to ?? Infinity }))
    .sort((item, other) => item.from - other.from)
  return sorted.flatMap(({ id, from }, place) => {
    if (place === 0) return []
    const before = Math.max(...sorted.slice(0, place).map(({ to }) => to))
    if (from <= before + 1) return []
    return [{ path: `/machine/variants/${id}/when/modelYears`, params: { from: before + 1, to: from - 1 } }]
  })
})
