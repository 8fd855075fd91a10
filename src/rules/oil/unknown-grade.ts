import { GRADE_EDITIONS, type GradeSystem, parseGrade } from '../../oil/index.js'
import { documentRule } from '../ruleMakers.js'

/**
 * A viscosity grade that is not in its system, such as 80W-90 in SAE J300, the system for engine oils. No oil
 * could be compared with it.
 * Judges: Every grade oil of a sheet, including overrides; every container of a stock with grade and system.
 * Finds a grade that is not in its system.
 * Place: `<oils>/choices/<place>/grade`, or `/containers/<id>/oil/grade`
 * Params: grade: as written; system: as written; others: the systems that have the grade
 * Harm: job
 * Source: SAE J306, SAE J300 and ISO 3448, as quoted by lubricant makers.
 */
export const rule = documentRule('spec-sheet', 'stock')(
  'oil/unknown-grade',
  'error',
  ({ document, sheet }) => {
    const oils =
      document.kind === 'stock'
        ? Object.entries(document.containers).map(([id, { oil }]) => ({
            path: `/containers/${id}/oil/grade`,
            oil,
          }))
        : (sheet?.oils ?? []).flatMap(({ path, choices }) =>
            choices.map((oil, place) => ({ path: `${path}/choices/${place}/grade`, oil })),
          )
    return oils.flatMap(({ path, oil }) => {
      if (!('grade' in oil) || oil.grade === undefined || oil.system === undefined) return []
      const { grade, system } = oil
      if (parseGrade(grade, system).ok) return []
      const systems = Object.keys(GRADE_EDITIONS) as GradeSystem[]
      const others = systems.filter((other) => parseGrade(grade, other).ok)
      return [{ path, params: { grade, system, others } }]
    })
  },
)
