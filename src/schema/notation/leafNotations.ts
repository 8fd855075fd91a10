import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import { ACROSS_FACE, CASE_FACES, DRIVE_KINDS, FACE_HEIGHTS } from '../../spec/index.js'
import {
  ELASTOMERS,
  LIMITED_SLIP,
  REPLACEMENTS,
  THREAD_CONDITIONS,
  WASHER_FORMS,
  WASHER_MATERIALS,
} from '../shapes/wordLists.js'
import type { Found, Piece } from './piece.js'
import {
  afterComma,
  convert,
  field,
  keyedWord,
  kindWords,
  labelled,
  listOf,
  makeChoice,
  oneOf,
  optional,
  sequence,
  someOf,
  term,
} from './piece.js'
import {
  amountOrNotStated,
  angle,
  FIGURE_PATTERN,
  FREE_WORDS_PATTERN,
  INTERVAL_FIGURE_PATTERN,
  makePositivePattern,
  measured,
  NOT_STATED,
  notStated,
  printed,
  printedAmount,
  WORDS_PATTERN,
  withOwnSource,
  withSource,
} from './valuePieces.js'

// The texts of leaves; an override replaces a whole leaf.

/** Torques in order; the last is the final torque. */
function torqueStages(): Piece {
  const { pattern, read } = listOf(printedAmount('torque'), ' then ')
  return {
    pattern,
    read: (reading) => {
      const { path, marks } = reading
      const firstMark = marks.length
      const stages = read(reading) as unknown[] | undefined
      if (stages === undefined) return undefined
      const torque = stages.pop()
      const rename = (place: string) => (place === String(stages.length) ? 'torque' : `stages/${place}`)
      for (const mark of marks.splice(firstMark))
        marks.push({ ...mark, path: path + mark.path.slice(path.length).replace(/\d+/, rename) })
      return { torque, ...(stages.length > 0 && { stages }) }
    },
  }
}

/** `30 N·m (22 lbf·ft), dry`, `40 N·m then 90°`, `1 to 1.5 turns, sealant`, `not stated`. */
export const tighteningWithoutSource = (): Piece =>
  sequence(
    { threadCondition: NOT_STATED },
    oneOf(
      sequence({ kind: 'torque' }, torqueStages(), optional(labelled(' then ', 'thenAngle', angle()))),
      sequence(
        term(`(?<min>${FIGURE_PATTERN})((–| to )(?<max>${FIGURE_PATTERN}))? turns?`, 'turns', {
          kind: 'turns',
        }),
        afterComma(field('maxTorque', printedAmount('torque'))),
      ),
      notStated(),
    ),
    afterComma(keyedWord('threadCondition', THREAD_CONDITIONS, 'thread condition')),
  )
export const tightening = (): Piece => withSource(tighteningWithoutSource())

export const SAE_GRADE_PATTERN = '[0-9]{1,3}W(-[0-9]{1,3})?|[0-9]{1,3}'
export const CATEGORY_PATTERN = '[A-Z]{2}(-[0-9][A-Z]?)?'

function oil(): Piece {
  const makeGrade = (pattern: string, build: (found: Found) => object) =>
    term(`${pattern}( (?<category>${CATEGORY_PATTERN}))?`, 'oil', (found: Found) => ({
      kind: 'grade',
      ...build(found),
    }))
  return sequence(
    { limitedSlip: NOT_STATED },
    oneOf(
      makeGrade(
        `SAE ((?<system>J306|J300)(:(?<edition>[0-9]{4}))? )?(?<grade>${SAE_GRADE_PATTERN})`,
        ({ system, grade = '', ...found }) => ({ grade, system: findSaeSystem(system, grade), ...found }),
      ),
      makeGrade('ISO VG (?<grade>[0-9]{1,4})', ({ grade, ...found }) => ({
        grade: `VG ${grade}`,
        system: 'ISO VG',
        ...found,
      })),
      term(`maker fluid (?<name>${WORDS_PATTERN})`, 'oil', { kind: 'maker fluid' }),
    ),
    afterComma(field('ambient', printedAmount('temperature'))),
    afterComma(term(`limited-slip ${makeChoice('limitedSlip', LIMITED_SLIP)}`, 'limited-slip')),
    afterComma(
      field(
        'additive',
        sequence(
          term('(?<how>plus|including) ', 'additive', ({ how }: Found) => ({
            includedInRefill: how === 'including',
          })),
          field('volume', printedAmount('volume')),
          term(` of (?<name>${WORDS_PATTERN})`),
        ),
      ),
    ),
  )
}

/** Gear oil grades start at 65 and 70W, engine oil grades end at 60 and 25W, so a grade shows its system. */
export function findSaeSystem(system: string | undefined, grade: string): string {
  return `SAE ${system ?? (Number.parseInt(grade, 10) >= 65 ? 'J306' : 'J300')}`
}

/** `SAE 80W-90 GL-5, -10 to 45 °C; ISO VG 220`: oils in the manual's order of preference. */
export const oils = (): Piece =>
  withSource(oneOf(notStated(), sequence({ kind: 'oils' }, field('choices', listOf(oil(), '; ')))))

/** ` 20 x 24 x 1.5 mm`. */
function ringSize(...figures: readonly string[]): Piece {
  const patterns = figures.map((name) => `(?<${name}>${makePositivePattern(9)})`)
  return optional(labelled(' ', 'size', measured(patterns.join(' x '), ['mm', 'in'], 'size')))
}

/** `flat copper crush washer 20 x 24 x 1.5 mm, every opening, part UM-2024`, `none`, `not stated`. */
export const seal = (): Piece =>
  withSource(oneOf(purchasableSeal(withSource, withOwnSource), kindWords('none'), notStated()))

/** A seal that can be bought. The sources of its values and part numbers are optional. */
export function purchasableSeal(
  addSource: (piece: Piece) => Piece = (piece) => piece,
  addOwnSource: (piece: Piece) => Piece = (piece) => piece,
): Piece {
  const rubberPattern = `(${makeChoice('material', ELASTOMERS)} )?`
  const material = NOT_STATED
  const product = (kind: string, key: string) => term(`${kind} (?<${key}>${WORDS_PATTERN})`, 'seal', { kind })
  const relatedNumber = () => addOwnSource(term(`(?<partNumber>${WORDS_PATTERN})`, 'name'))
  return sequence(
    { replace: NOT_STATED },
    oneOf(
      sequence(
        term(
          `(${makeChoice('form', WASHER_FORMS)} )?(${makeChoice('material', WASHER_MATERIALS)} )?crush washer`,
          'seal',
          { kind: 'crush washer', form: NOT_STATED, material },
        ),
        ringSize('inside', 'outside', 'thickness'),
      ),
      sequence(
        term(`${rubberPattern}(?<name>bonded seal|profile ring)`, 'seal', ({ name, ...found }: Found) => ({
          kind: 'bonded seal',
          ...(name === 'profile ring' && { form: name }),
          material,
          ...found,
        })),
        ringSize('inside', 'outside', 'thickness'),
      ),
      sequence(
        term(`${rubberPattern}o-ring( (?<designation>(AS568)?-[0-9]{3}|[A-Z][0-9]{1,4}A?))?`, 'seal', {
          kind: 'o-ring',
          material,
        }),
        ringSize('inside', 'section'),
      ),
      product('thread sealant', 'product'),
      product('gasket', 'material'),
      sequence(
        { bead: { kind: NOT_STATED }, cureBeforeOil: { kind: NOT_STATED } },
        product('liquid gasket', 'product'),
        afterComma(labelled('bead ', 'bead', addSource(amountOrNotStated('length', ['mm'])))),
        afterComma(
          labelled('cure ', 'cureBeforeOil', addSource(amountOrNotStated('duration', ['h', 'min']))),
        ),
      ),
    ),
    afterComma(keyedWord('replace', REPLACEMENTS, 'replacement')),
    afterComma(
      term(`part (?<partNumber>${WORDS_PATTERN})`),
      afterComma(labelled('superseded by ', 'supersededBy', relatedNumber())),
      afterComma(labelled('equivalent to ', 'equivalents', listOf(relatedNumber(), ', equivalent to '))),
    ),
  )
}

/** `1 year 6 months`: whole numbers of the units of a period. */
function period(): Piece {
  const counts = ['year', 'month', 'week', 'day'].map((unit) =>
    term(`(?<${unit}>[1-9][0-9]{0,6}) ${unit}s?`, 'period'),
  )
  return convert(someOf(counts, ' '), (found) => {
    const parts = Object.entries(found).map(([unit, count]) => count + unit.charAt(0).toUpperCase())
    return `P${parts.join('')}`
  })
}

/** `200 h, 2000 km (1200 mi), 12 months`: at least one of these. A `window` may also be zero. */
function intervalWithoutSource(figure = makePositivePattern(6)): Piece {
  const distance = (pattern: string) =>
    measured(`(?<value>${pattern})`, UNITS_BY_MEASURE.distance, 'distance')
  const limits = [
    term(`(?<hours>${figure}) (hours?|h)`, 'hours'),
    field('distance', printed(distance(figure), distance(INTERVAL_FIGURE_PATTERN))),
    field('period', period()),
  ]
  return oneOf(sequence({ kind: 'interval' }, someOf(limits, ', ')), notStated())
}
export const interval = (): Piece => withSource(intervalWithoutSource())
export const window = (): Piece => withSource(intervalWithoutSource(INTERVAL_FIGURE_PATTERN))

/** `100 h when towing`, `factor 0.5 when towing`. The source belongs to the interval, if there is one. */
export const severeUse = (): Piece =>
  withSource(
    sequence(
      oneOf(
        sequence({ kind: 'interval' }, field('interval', intervalWithoutSource())),
        term(`factor (?<factor>${FIGURE_PATTERN})`, 'factor', { kind: 'factor' }),
      ),
      term(` when (?<criteria>${FREE_WORDS_PATTERN})`),
    ),
    (found) => [found['interval'] ?? found],
  )

/** Where a part is, in the manual's words. */
export const place = (): Piece =>
  withSource(oneOf(notStated(), term(`(?<text>${FREE_WORDS_PATTERN})`, 'place', { kind: 'place' })))

/** `bottom face, left, 60 mm`, `left face, half way up`. */
export const position = (): Piece =>
  withSource(
    oneOf(
      notStated(),
      sequence(
        term(
          `${makeChoice('face', CASE_FACES)} face(, ${makeChoice('across', ACROSS_FACE)})?(, ${makeChoice('height', FACE_HEIGHTS)})?`,
          'face',
          { kind: 'position' },
        ),
        afterComma(field('offset', printedAmount('length'))),
      ),
    ),
  )

/** `internal hex 10 mm`, `six-lobe T40`, `hand`. A section's source does not apply to drives. */
export const drive = (): Piece => withOwnSource(driveWithoutSource())
export const driveWithoutSource = (): Piece =>
  oneOf(
    notStated(),
    sequence(keyedWord('kind', DRIVE_KINDS, 'drive'), optional(term(` (?<size>${WORDS_PATTERN})`))),
  )
