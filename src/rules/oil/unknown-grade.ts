import type { JsonPointer } from '../../base/index.js'
import { GRADE_EDITIONS, type GradeSystem, parseGrade } from '../../oil/index.js'
import type { Stock } from '../../spec/index.js'
import type { OilsAt } from '../lookup/indexSheet.js'
import { ruleAbout } from '../ruleMakers.js'

/**
 * A viscosity grade that its system does not have, such as 80W-90 called an engine oil grade of SAE J300: the same
 * number means another oil there, and no oil could be judged against it.
 * Judges: Every grade oil of a sheet, overrides included; every container of a stock with grade and system. Finds a
 * grade that its system does not have.
 * Place: `<oils>/choices/<place>/grade`, or `/containers/<id>/oil/grade`
 * Params: grade: as written; system: as written; others: the systems that have it
 * Source: SAE J306, SAE J300 and ISO 3448, as quoted by lubricant makers.
 */
export const rule = ruleAbout('spec-sheet', 'stock')('oil/unknown-grade', 'error', ({ document, sheet }) =>
  (document.kind === 'stock' ? stockGrades(document) : sheetGrades(sheet?.oils ?? [])).flatMap(
    ({ path, grade, system }) => {
      if (parseGrade(grade, system).ok) return []
      const others = (Object.keys(GRADE_EDITIONS) as GradeSystem[]).filter(
        (other) => parseGrade(grade, other).ok,
      )
      return [{ path, params: { grade, system, others } }]
    },
  ),
)

interface GradeAt {
  readonly path: JsonPointer
  readonly grade: string
  readonly system: GradeSystem
}

function stockGrades({ containers }: Stock): readonly GradeAt[] {
  return Object.entries(containers).flatMap(
    ([
      id,
      {
        oil: { grade, system },
      },
    ]) =>
      grade === undefined || system === undefined
        ? []
        : [{ path: `/containers/${id}/oil/grade`, grade, system }],
  )
}

function sheetGrades(oils: readonly OilsAt[]): readonly GradeAt[] {
  return oils.flatMap(({ path, choices }) =>
    choices.flatMap((choice, place) =>
      choice.kind === 'grade'
        ? [{ path: `${path}/choices/${place}/grade`, grade: choice.grade, system: choice.system }]
        : [],
    ),
  )
}
