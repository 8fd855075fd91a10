import { canBothBeMet } from '../lookup/canBothBeMet.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * Two variants whose conditions one machine could meet at once: its serial or model year would not say which of the
 * two it is, and no figure that differs between them could be given.
 * Judges: Every two variants with a `when`. They overlap under the same test as in `spec/overlapping-overrides`,
 * without its part about variants. The later variant gets one finding, with the first earlier one that it overlaps.
 * Place: `/machine/variants/<id>/when`
 * Params: variant: the later id; with: the earlier id
 * Harm: machine
 * House rule: exactly one variant is selected.
 */
export const rule = sheetRule('spec/variants-overlap', 'error', ({ document }) => {
  const sheetWithoutVariants = { ...document, machine: { ...document.machine, variants: {} } }
  const variants = Object.entries(document.machine.variants)
  return variants.flatMap(([id, { when }], place) => {
    if (when === undefined) return []
    const overlapping = variants
      .slice(0, place)
      .find(
        ([, earlier]) => earlier.when !== undefined && canBothBeMet(sheetWithoutVariants, earlier.when, when),
      )
    if (overlapping === undefined) return []
    return [{ path: `/machine/variants/${id}/when`, params: { variant: id, with: overlapping[0] } }]
  })
})
