import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import { DRIVE_KINDS } from '../../spec/index.js'
import {
  field,
  fixedValue,
  keyedWord,
  listOf,
  oneOf,
  optional,
  type Piece,
  sequence,
  someOf,
  term,
  words,
} from './piece.js'
import {
  amount,
  amountOfMeasure,
  angle,
  FIGURE_PATTERN,
  FREE_WORDS_PATTERN,
  INTERVAL_FIGURE_PATTERN,
  makePositivePattern,
  notStated,
  printed,
  unitGroup,
  value,
  WORDS_PATTERN,
  withOwnSource,
  withSource,
  withSourceFor,
} from './valuePieces.js'

// The texts of leaves, which overrides replace whole.

/** Torques in order; the last is the final torque. */
function torqueStages(): Piece {
  const { pattern, read } = listOf(printed(amount('torque', UNITS_BY_MEASURE.torque)), ' then ')
  return {
    pattern,
    read: (reading) => {
      const { path, marks } = reading
      const firstMark = marks.length
      const values = read(reading) as readonly unknown[] | undefined
      if (values === undefined) return undefined
      const lastPath = `${path}/${values.length - 1}`
      for (const [place, mark] of [...marks.entries()].slice(firstMark)) {
        const isLast = mark.path === lastPath || mark.path.startsWith(`${lastPath}/`)
        const newPath = isLast
          ? `${path}/torque${mark.path.slice(lastPath.length)}`
          : `${path}/stages${mark.path.slice(path.length)}`
        marks[place] = { ...mark, path: newPath }
      }
      const stages = values.slice(0, -1)
      return { kind: 'torque', torque: values.at(-1), ...(stages.length > 0 && { stages }) }
    },
  }
}

/** `30 N·m (22 lbf·ft), dry`, `40 N·m then 90°`, `1 to 1.5 turns, sealant`, `not stated`. */
const torqueOrTurns = (): Piece =>
  sequence(
    oneOf(
      sequence(torqueStages(), optional(sequence(words(' then '), field('thenAngle', angle())))),
      sequence(
        term(
          `(?<min>${FIGURE_PATTERN})(?:(?:–| to )(?<max>${FIGURE_PATTERN}))? turns?`,
          'turns',
          (found) => ({
            kind: 'turns',
            ...found,
          }),
        ),
        optional(
          sequence(words(', '), field('maxTorque', printed(amount('torque', UNITS_BY_MEASURE.torque)))),
        ),
      ),
      notStated(),
    ),
    optional(
      sequence(
        words(', '),
        keyedWord(
          'threadCondition',
          ['dry', 'oiled', 'sealant', 'anti-seize', 'threadlocker', 'as supplied'],
          'thread condition',
        ),
      ),
      { threadCondition: 'not stated' },
    ),
  )
export const tighteningWithoutSource = torqueOrTurns
export const tightening = (): Piece => withSource(torqueOrTurns())

export const SAE_GRADE_PATTERN = '[0-9]{1,3}W(?:-[0-9]{1,3})?|[0-9]{1,3}'
export const CATEGORY_PATTERN = '[A-Z]{2}(?:-[0-9][A-Z]?)?'

function oil(): Piece {
  const category = `(?: (?<category>${CATEGORY_PATTERN}))?`
  const sae = term(
    `SAE (?:(?<system>J306|J300)(?::(?<edition>[0-9]{4}))? )?(?<grade>${SAE_GRADE_PATTERN})${category}`,
    'oil',
    ({ system, grade = '', ...found }) => ({
      kind: 'grade',
      grade,
      system: findSaeSystem(system, grade),
      ...found,
    }),
  )
  const iso = term(`ISO VG (?<grade>[0-9]{1,4})${category}`, 'oil', ({ grade, ...found }) => ({
    kind: 'grade',
    grade: `VG ${grade}`,
    system: 'ISO VG',
    ...found,
  }))
  const fluid = term(`maker fluid (?<name>${WORDS_PATTERN})`, 'oil', ({ name }) => ({
    kind: 'maker fluid',
    name,
  }))
  const additive = sequence(
    term('(?<how>plus|including) ', 'additive', ({ how }) => ({ includedInRefill: how === 'including' })),
    field('volume', printed(amount('volume', UNITS_BY_MEASURE.volume))),
    term(` of (?<name>${WORDS_PATTERN})`),
  )
  const ambient = printed(amountOfMeasure('temperature', UNITS_BY_MEASURE.temperature))
  return sequence(
    oneOf(sae, iso, fluid),
    optional(sequence(words(', '), field('ambient', ambient))),
    optional(
      sequence(
        words(', '),
        term('limited-slip (?<limitedSlip>required|not permitted|either)', 'limited-slip'),
      ),
      { limitedSlip: 'not stated' },
    ),
    optional(sequence(words(', '), field('additive', additive))),
  )
}

/** Gear oil grades start at 65 and 70W, engine oil grades end at 60 and 25W, so a grade shows its system. */
export function findSaeSystem(system: string | undefined, grade: string): string {
  return `SAE ${system ?? (Number.parseInt(grade, 10) >= 65 ? 'J306' : 'J300')}`
}

/** `SAE 80W-90 GL-5, -10 to 45 °C; ISO VG 220`: oils in the manual's order of preference. */
export const oils = (): Piece =>
  withSource(
    oneOf(notStated(), sequence(fixedValue({ kind: 'oils' }), field('choices', listOf(oil(), '; ')))),
  )

function ringSize(figures: readonly string[]): Piece {
  const unit = unitGroup(['mm', 'in'])
  const figurePattern = figures.map((name) => `(?<${name}>${makePositivePattern(9)})`).join(' x ')
  const found = term(`${figurePattern} ${unit.pattern}`, 'size', (groups) => ({
    ...groups,
    unit: unit.read(groups['unit']),
  }))
  return optional(sequence(words(' '), field('size', found)))
}

/** `flat copper crush washer 20 x 24 x 1.5 mm, every opening, part UM-2024`, `none`, `not stated`. */
export const seal = (): Piece =>
  withSource(
    oneOf(purchasableSeal(value, withOwnSource), words('none', undefined, { kind: 'none' }), notStated()),
  )

/** A seal that can be bought. `makeValuePiece` makes the piece of a value, with or without a source. */
export function purchasableSeal(
  makeValuePiece: (piece: Piece) => Piece,
  makePartPiece: (piece: Piece) => Piece = (piece) => piece,
): Piece {
  const rubber = 'NBR|HNBR|FKM|ACM|EPDM|VMQ|FVMQ|AU|CR|FFKM'
  const material = ({ material = 'not stated' }) => ({ material })
  const rubberSeal = (suffix: string, build: (found: Readonly<Record<string, string>>) => object) =>
    term(`(?:(?<material>${rubber}) )?${suffix}`, 'seal', build)
  const ring = ['inside', 'outside', 'thickness']
  const millimetres = amount('length', ['mm'])
  const sealKind = oneOf(
    sequence(
      term(
        '(?:(?<form>flat|folded|captive) )?(?:(?<material>copper|aluminium|soft steel|fibre) )?crush washer',
        'seal',
        (found) => ({ kind: 'crush washer', form: found['form'] ?? 'not stated', ...material(found) }),
      ),
      ringSize(ring),
    ),
    sequence(
      rubberSeal('(?<name>bonded seal|profile ring)', (found) => ({
        kind: 'bonded seal',
        ...(found['name'] === 'profile ring' && { form: 'profile ring' }),
        ...material(found),
      })),
      ringSize(ring),
    ),
    sequence(
      rubberSeal('o-ring(?: (?<designation>(?:AS568)?-[0-9]{3}|[A-Z][0-9]{1,4}A?))?', (found) => ({
        kind: 'o-ring',
        ...found,
        ...material(found),
      })),
      ringSize(['inside', 'section']),
    ),
    term(`thread sealant (?<product>${WORDS_PATTERN})`, 'seal', (found) => ({
      kind: 'thread sealant',
      ...found,
    })),
    term(`gasket (?<material>${WORDS_PATTERN})`, 'seal', (found) => ({ kind: 'gasket', ...found })),
    sequence(
      term(`liquid gasket (?<product>${WORDS_PATTERN})`, 'seal', (found) => ({
        kind: 'liquid gasket',
        ...found,
      })),
      optional(sequence(words(', bead '), field('bead', makeValuePiece(millimetres))), {
        bead: { kind: 'not stated' },
      }),
      optional(
        sequence(words(', cure '), field('cureBeforeOil', makeValuePiece(amount('duration', ['h', 'min'])))),
        {
          cureBeforeOil: { kind: 'not stated' },
        },
      ),
    ),
  )
  return sequence(
    sealKind,
    optional(sequence(words(', '), keyedWord('replace', ['every opening', 'on condition'], 'replacement')), {
      replace: 'not stated',
    }),
    optional(
      sequence(
        term(`, part (?<partNumber>${WORDS_PATTERN})`),
        optional(sequence(words(', superseded by '), field('supersededBy', makePartPiece(otherNumber())))),
        optional(
          sequence(
            words(', equivalent to '),
            field('equivalents', listOf(makePartPiece(otherNumber()), ', equivalent to ')),
          ),
        ),
      ),
    ),
  )
}

const otherNumber = (): Piece => term(`(?<partNumber>${WORDS_PATTERN})`, 'name')

/** A whole number of one unit of a period. */
const makePeriodPieces = () =>
  ['year', 'month', 'week', 'day'].map((unit) => {
    const letter = unit.charAt(0).toUpperCase()
    return term(`(?<count>[1-9][0-9]{0,6}) ${unit}s?`, 'period', ({ count }) => ({
      [letter]: `${count}${letter}`,
    }))
  })

/** `200 h, 2000 km (1200 mi), 12 months`: at least one of these. A `window` may also be zero. */
function intervalWithoutSource(allowsZero: boolean): Piece {
  const figure = allowsZero ? INTERVAL_FIGURE_PATTERN : makePositivePattern(6)
  const unit = unitGroup(UNITS_BY_MEASURE.distance)
  const distance = (pattern: string) =>
    term(`(?<value>${pattern}) ${unit.pattern}`, 'distance', ({ value, unit: spelled }) => ({
      value,
      unit: unit.read(spelled),
    }))
  const others = sequence(
    words(' ('),
    field('printed', listOf(distance(INTERVAL_FIGURE_PATTERN), ', ')),
    words(')'),
  )
  const parts = someOf(makePeriodPieces(), ' ')
  const period: Piece = {
    pattern: parts.pattern,
    read: (reading) => {
      const found = parts.read(reading) as object | undefined
      return found === undefined ? undefined : `P${Object.values(found).join('')}`
    },
  }
  return sequence(
    fixedValue({ kind: 'interval' }),
    someOf(
      [
        term(`(?<hours>${figure}) (?:hours?|h)`, 'hours'),
        field('distance', sequence(distance(figure), optional(others))),
        field('period', period),
      ],
      ', ',
    ),
  )
}
export const interval = (): Piece => withSource(oneOf(intervalWithoutSource(false), notStated()))
export const window = (): Piece => withSource(oneOf(intervalWithoutSource(true), notStated()))

/** `100 h when towing`, `factor 0.5 when towing`. The source belongs to the interval, if there is one. */
export const severeUse = (): Piece =>
  withSourceFor(
    sequence(
      oneOf(
        sequence(
          fixedValue({ kind: 'interval' }),
          field('interval', oneOf(intervalWithoutSource(false), notStated())),
        ),
        term(`factor (?<factor>${FIGURE_PATTERN})`, 'factor', (found) => ({ kind: 'factor', ...found })),
      ),
      term(` when (?<criteria>${FREE_WORDS_PATTERN})`),
    ),
    (found) => [found['interval'] ?? found],
  )

/** Where a part is, in the manual's words. */
export const place = (): Piece =>
  withSource(
    oneOf(
      notStated(),
      term(`(?<text>${FREE_WORDS_PATTERN})`, 'place', (found) => ({ kind: 'place', ...found })),
    ),
  )

/** `internal hex 10 mm`, `six-lobe T40`, `hand`. A section's source does not apply to drives. */
export const drive = (): Piece => withOwnSource(driveWithoutSource())
export const driveWithoutSource = (): Piece =>
  oneOf(
    notStated(),
    sequence(keyedWord('kind', DRIVE_KINDS, 'drive'), optional(term(` (?<size>${WORDS_PATTERN})`))),
  )
