import { findGradeBand, GRADE_EDITIONS, isWithinGrade, parseGrade } from '../../oil/index.js'
import { containerRule } from '../ruleMakers.js'

/**
 * An oil in stock whose stated viscosity is outside its grade in every edition of the system. The grade or
 * the figure was copied from the wrong line of the data sheet, and the pour time would be calculated from it.
 * Judges: Every container with an existing grade and system: `kv100` for SAE grades, `kv40` for ISO VG. Finds
 * a figure outside the limits of the grade in every edition, or not above zero. A figure at a lower limit is
 * inside the grade; at an upper limit of SAE it is outside. Skipped if `kv100` is at least `kv40`.
 * Place: `/containers/<id>/oil/kv100` or `…/kv40`
 * Params: oil: its name; grade: as written; viscosity: as written
 * Harm: machine
 * Source: SAE J306, SAE J300, ISO 3448, as quoted by lubricant makers.
 */
export const rule = containerRule('oil/viscosity-outside-grade', 'warning', ([id, { oil }]) => {
  const { grade, system } = oil
  if (grade === undefined || system === undefined || !parseGrade(grade, system).ok) return []
  const key = system === 'ISO VG' ? 'kv40' : 'kv100'
  const viscosity = oil[key]
  const areSwapped = oil.kv40 !== undefined && oil.kv100 !== undefined && oil.kv100.value >= oil.kv40.value
  if (viscosity === undefined || areSwapped) return []
  const isPositive = viscosity.value > 0
  const isAllowed = GRADE_EDITIONS[system].some((edition) => {
    const band = findGradeBand({ system, grade, edition })
    return isPositive && band.kind === 'band' && isWithinGrade(viscosity, band)
  })
  return isAllowed
    ? []
    : [{ path: `/containers/${id}/oil/${key}`, params: { oil: oil.name, grade, viscosity } }]
})
