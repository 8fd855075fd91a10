import {
  findEdition,
  findGradeBand,
  GRADE_EDITIONS,
  GRADES_WITHOUT_LIMITS,
  type Grade,
  parseGrade,
} from '../../oil/index.js'
import { oilsRule } from '../ruleMakers.js'

/**
 * An edition of the grade system whose limits the library does not know, or in which the grade does not exist
 * yet (SAE 110 was added in 2005). The viscosity limits of the grade are then unknown.
 * Judges: Every grade oil with an `edition`, including overrides, whose grade exists in its system. Finds an
 * edition that is not exactly one of those in `grades`, or that does not have the grade (see terms: grade). A
 * year means the edition in force: of SAE J306 from 2019 `2019`, from 2005 `2005`, from 1991 `before 2005`;
 * of SAE J300 from 2013 `since 2013`, from 1999 `before 2013`; of ISO VG from 1992. Older years from 1920 are
 * not judged. Nor are the grades 62W to 65W of SAE J306 with a year from 2025, since their limits were not
 * read.
 * Place: `<oils>/choices/<place>/edition`
 * Params: grade: as written; system: as written; edition: as written; known: all editions of the system in
 * the order of `grades`, including those without the grade
 * Harm: job
 * Source: SAE J306 by edition, as quoted by lubricant makers. 1991 and 1998, and the years of SAE J300, from
 * memory.
 */
export const rule = oilsRule('oil/unknown-edition', 'warning', ({ path, choices }) =>
  choices.flatMap((choice, place) => {
    if (choice.kind !== 'grade' || choice.edition === undefined) return []
    const { grade, system, edition } = choice
    const known: readonly string[] = GRADE_EDITIONS[system]
    const parsed = parseGrade(grade, system)
    if (!parsed.ok) return []
    const knownEdition = findEdition(system, edition)
    if (knownEdition === 'not read' || (Number(edition) >= 2025 && lacksLimits(parsed.value))) return []
    if (knownEdition !== undefined && findGradeBand({ system, grade, edition: knownEdition }).kind === 'band')
      return []
    return [{ path: `${path}/choices/${place}/edition`, params: { grade, system, edition, known } }]
  }),
)

const lacksLimits = ({ system, winter = '' }: Grade) => GRADES_WITHOUT_LIMITS[system].includes(winter)
