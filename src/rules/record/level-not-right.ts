import { entryRule } from '../ruleMakers.js'

/**
 * A level left below or above its mark, or not checked although the sheet requires filling to a level. With
 * too little oil a gearcase wears; with too much, the oil foams and escapes through the breather.
 * Judges: Every judged entry with `level`, on a gearcase with its own oil. Finds every level except `at the
 * mark`; `not checked` is allowed if the fill method is `by quantity`.
 * Place: `/entries/<place>/level`
 * Params: gearcase: its name; level: as written
 * Harm: machine
 * Common practice, no source.
 */
export const rule = entryRule('record/level-not-right', 'warning', ({ path, entry, gearcase }) => {
  const { level } = entry
  if (level === undefined || level === 'at the mark' || gearcase.oilSpace.kind === 'shared') return []
  if (level === 'not checked' && gearcase.oilSpace.fill.method.kind === 'by quantity') return []
  return [{ path: `${path}/level`, params: { gearcase: gearcase.name, level } }]
})
