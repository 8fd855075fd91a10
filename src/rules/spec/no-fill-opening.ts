import { sheetRule } from '../ruleMakers.js'

/**
 * An oil space without an opening for filling. A machine drained by this sheet could not be refilled.
 * Judges: Every gearcase with its own oil. Finds a gearcase if neither it nor a gearcase that shares its oil
 * has an opening with the use `fill`. It is information if the fill method is `not stated`, since such a
 * sheet only gives figures.
 * Place: `/gearcases/<id>/openings`
 * Params: gearcase: its name
 * Harm: job
 * Common practice, no source: find the fill opening before the drain is opened.
 */
export const rule = sheetRule('spec/no-fill-opening', 'error', ({ document }) => {
  const gearcases = Object.entries(document.gearcases)
  return gearcases.flatMap(([id, { name, oilSpace }]) => {
    if (oilSpace.kind === 'shared') return []
    const canFill = gearcases.some(
      ([other, gearcase]) =>
        (other === id || (gearcase.oilSpace.kind === 'shared' && gearcase.oilSpace.with === id)) &&
        Object.values(gearcase.openings).some(({ uses }) => uses.some(({ role }) => role === 'fill')),
    )
    if (canFill) return []
    const found = { path: `/gearcases/${id}/openings`, params: { gearcase: name } }
    return oilSpace.fill.method.kind === 'not stated' ? [{ ...found, severity: 'info' as const }] : [found]
  })
})
