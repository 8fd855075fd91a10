import { canBothBeMet } from '../lookup/canBothBeMet.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * Two variants whose conditions the same machine could meet. Serial or model year would not decide between
 * them, and no figure that differs between them could be given.
 * Judges: Every two variants with a `when`. The test for overlap is that of `spec/overlapping-overrides`,
 * without the variants. The later variant gets one finding, which names the first earlier variant that it
 * overlaps.
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
    const overlappingVariant = variants
      .slice(0, place)
      .find(
        ([, earlier]) => earlier.when !== undefined && canBothBeMet(sheetWithoutVariants, earlier.when, when),
      )
    if (overlappingVariant === undefined) return []
    return [{ path: `/machine/variants/${id}/when`, params: { variant: id, with: overlappingVariant[0] } }]
  })
})
