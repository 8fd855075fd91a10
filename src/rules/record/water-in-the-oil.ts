import { defineRule } from '../rule.js'

/**
 * Milky oil: water has come in. Find where it entered (breather, shaft seal, plug) and change the oil again after a
 * short run. A warning, since the change itself was right.
 * Judges: Every judged entry. Finds `oilFinding` of `milky`.
 * Place: `/entries/<place>/oilFinding`
 * Params: gearcase: its name
 * Common practice, no source.
 */
export const waterInTheOil = defineRule({
  code: 'record/water-in-the-oil',
  severity: 'warning',
  about: 'service-record',
  check: ({ record }) =>
    record.entries.flatMap(({ path, entry, gearcase }) =>
      entry.oilFinding === 'milky'
        ? [{ path: `${path}/oilFinding`, params: { gearcase: gearcase.name } }]
        : [],
    ),
})
