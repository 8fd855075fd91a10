import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import { driveWithoutSource, tighteningWithoutSource } from './leafNotations.js'
import {
  escapePattern,
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
  FREE_WORDS_PATTERN,
  ID,
  notStated,
  printed,
  WORDS_PATTERN,
  withSource,
  withSourceFor,
} from './valuePieces.js'

// The texts of parts other than leaves: access, filling, fastening, and the machines that a part applies to.

const id = (key: string): Piece => term(`(?<${key}>${ID})`, 'id')
const anyId = (): Piece => term(`(?<id>${ID})`, 'id', (found) => found['id'])

/** `raised on front-frame, rear-frame`. */
export const access = (): Piece =>
  oneOf(
    words('from the ground', 'access', { kind: 'from the ground' }),
    sequence(
      fixedValue({ kind: 'raised' }),
      words('raised on ', 'access'),
      field('supports', listOf(anyId(), ', ')),
    ),
    withSource(notStated()),
  )

/** `shared with axle, 1.5 L (1.6 US qt)`. */
export const oilSpace = (): Piece =>
  sequence(
    fixedValue({ kind: 'shared' }),
    words('shared with ', 'oil space'),
    id('with'),
    optional(
      sequence(words(', '), field('portion', withSource(printed(amount('volume', UNITS_BY_MEASURE.volume))))),
    ),
  )

const at = (): Piece => optional(sequence(words(' at '), id('opening')))

/** `to level hole at fill, 5 mm below`, `dipstick resting`. */
function methodWithoutSource(below: Piece): Piece {
  const kind = (text: string) => words(text, 'method', { kind: text })
  return oneOf(
    sequence(kind('by quantity'), at()),
    sequence(kind('to level hole'), at(), optional(sequence(words(', '), field('below', below)))),
    sequence(
      fixedValue({ kind: 'dipstick' }),
      term('dipstick (?<reading>screwed in|resting)', 'method'),
      at(),
    ),
    sequence(kind('sight glass'), at()),
    notStated(),
  )
}
const below = () => sequence(printed(amount('length', UNITS_BY_MEASURE.length)), words(' below'))
export const method = (): Piece =>
  withSourceFor(methodWithoutSource(below()), (found) => [
    found['kind'] === 'not stated' ? found : found['below'],
  ])

/** `700 mL (0.74 US qt), to level hole`: one source for both figures. */
export const fill = (): Piece =>
  withSourceFor(
    sequence(
      field('drainAndRefill', oneOf(notStated(), printed(amount('volume', UNITS_BY_MEASURE.volume)))),
      optional(sequence(words(', '), field('method', methodWithoutSource(below())))),
    ),
    ({ drainAndRefill, method }) => [drainAndRefill, (method as { below?: object } | undefined)?.below],
  )

/** `level on its wheels, engine stopped, 10 min after stop, recheck after run`. */
export const level = (): Piece =>
  sequence(
    keyedWord('attitude', ['level on its wheels', 'level on stands', 'not stated'], 'attitude'),
    optional(term(', engine (?<engine>stopped|running)'), { engine: 'not stated' }),
    optional(
      sequence(
        words(', '),
        field(
          'temperature',
          withSource(printed(amountOfMeasure('temperature', UNITS_BY_MEASURE.temperature))),
        ),
      ),
    ),
    optional(
      sequence(
        words(', '),
        field(
          'minutesAfterStop',
          withSource(sequence(printed(amount('duration', ['min'])), words(' after stop'))),
        ),
      ),
    ),
    optional(words(', recheck after run', undefined, { recheckAfterRun: true }), { recheckAfterRun: false }),
  )

/** `drain at mark down, fill at mark level`. */
export const uses = (): Piece =>
  listOf(
    sequence(
      keyedWord('role', ['fill', 'drain', 'level'], 'use'),
      optional(term(' at (?<wheelMark>mark down|mark level|mark up)', 'wheel mark')),
    ),
    ', ',
  )

/** `drain at drain with side`, `cover rear-cover`, `suction at fill`. */
export const emptying = (): Piece =>
  oneOf(
    sequence(
      fixedValue({ kind: 'drain plug' }),
      words('drain at ', 'emptying'),
      id('opening'),
      optional(sequence(words(' with '), field('also', listOf(anyId(), ' and ')))),
    ),
    sequence(fixedValue({ kind: 'cover' }), words('cover ', 'emptying'), id('cover')),
    sequence(fixedValue({ kind: 'suction' }), words('suction at ', 'emptying'), id('opening')),
  )

/** `behind opening drain`, `behind cover pan`. */
export const filterHold = (): Piece =>
  oneOf(
    sequence(fixedValue({ kind: 'behind opening' }), words('behind opening ', 'filter'), id('opening')),
    sequence(fixedValue({ kind: 'behind cover' }), words('behind cover ', 'filter'), id('cover')),
  )

/** `10 x M8 8.8, external hex 13 mm, 25 ± 3 N·m, dry`; for a cover, also the order of tightening. */
function fastenersPiece(pattern: Piece): Piece {
  return withSourceFor(
    sequence(
      term(
        '(?:(?<count>[1-9][0-9]{0,3}) x )?(?<thread>[A-Z0-9][^ ,;\\[\\]]*(?: [A-Z]{2,4}(?:-[0-9][AB])?)?)' +
          '(?: (?<propertyClass>[0-9]{1,2}\\.[0-9]|A[1-5]-[0-9]{2,3}))?',
        'fasteners',
        ({ count, ...found }) => ({ count: count === undefined ? 'not stated' : Number(count), ...found }),
      ),
      optional(sequence(words(', '), field('drive', driveWithoutSource())), {
        drive: { kind: 'not stated' },
      }),
      optional(sequence(words(', '), field('tightening', tighteningWithoutSource())), {
        tightening: { kind: 'not stated', threadCondition: 'not stated' },
      }),
      pattern,
    ),
    ({ tightening }) => [tightening],
  )
}
export const fasteners = (): Piece => fastenersPiece(fixedValue({}))
export const bolts = (): Piece =>
  fastenersPiece(
    optional(
      sequence(
        words(', '),
        keyedWord('pattern', ['crosswise', 'from the middle outwards', 'in turn'], 'pattern of bolts'),
      ),
      { pattern: 'not stated' },
    ),
  )

/**
 * `variant short or long, model years 2019 to 2021, serial TS 00001 to 09999, market NO`: all parts must be
 * met.
 */
export function condition(): Piece {
  const range = (end: string) => `(?:from )?(?<from>${end})(?: to (?<to>${end}))?|to (?<only>${end})`
  const anyMarket = term('(?<market>[A-Za-z][A-Za-z0-9-]{0,31})', 'market', (found) => found['market'])
  return someOf(
    [
      sequence(words('variant ', 'condition'), field('variants', listOf(anyId(), ' or '))),
      term(`model years (?:${range('[0-9]{4}')})`, 'condition', ({ from, to, only }) => ({
        modelYears: makeNumberRange(from, to ?? only),
      })),
      term(
        `serial (?:(?<prefix>[A-Z][A-Z0-9-]{0,15}) )?(?:${range('[0-9]{1,15}')})`,
        'condition',
        ({ prefix, from, to, only }) => ({ serials: dropUndefinedEnds({ prefix, from, to: to ?? only }) }),
      ),
      sequence(words('market ', 'condition'), field('market', listOf(anyMarket, ' or '))),
    ],
    ', ',
  )
}

const makeNumberRange = (from: string | undefined, to: string | undefined) =>
  dropUndefinedEnds({ from: from && Number(from), to: to && Number(to) })
const dropUndefinedEnds = (ends: object) =>
  Object.fromEntries(Object.entries(ends).filter(([, value]) => value !== undefined))

/** `Tind 4 S, short bed, when serial TS 00001 to 09999`. */
export function variant(): Piece {
  const pattern = `(?<name>${chunksExcept('when')})`
  // A chunk ends at a comma, so the reader does not take the `whe` of `when` for a chunk.
  const { read } = term(`${pattern}(?=,|$)`, 'name')
  return sequence({ pattern, read }, optional(sequence(words(', when '), field('when', condition()))))
}

/** `both ends of the front cross tube, lifts front`. */
export const support = (): Piece =>
  sequence(
    term(`(?<at>${WORDS_PATTERN})`, 'support'),
    optional(term(`, jack (?<jack>${WORDS_PATTERN})`)),
    optional(sequence(words(', lifts '), id('axle'))),
  )

/** `2 wheels`, `2 wheels, ramps`, `2 wheels, no ramps`. */
export const axle = (): Piece =>
  sequence(
    term('(?<wheels>[1-9][0-9]{0,3}) wheels?', 'wheels', ({ wheels }) => ({ wheels: Number(wheels) })),
    optional(term(', (?<ramps>(?:no )?ramps)', undefined, ({ ramps }) => ({ ramps: ramps === 'ramps' }))),
  )

/**
 * `Tind 4 workshop manual, workshop manual, edition 3, 2021-02-01`: the title, the kind of document, edition
 * and date.
 */
export function documentSource(): Piece {
  const kinds = ['owner manual', 'workshop manual', 'service bulletin', 'parts list', 'plate', 'other']
  const suffix =
    `(?:, (?<document>${kinds.map(escapePattern).join('|')}))?(?:, edition (?<edition>${WORDS_PATTERN}))?` +
    '(?:, (?<date>[0-9]{4}-[0-9]{2}-[0-9]{2}))?$'
  const { read } = term(`(?<title>[^\\[\\]]+?)${suffix}`, 'title')
  const freePattern = new RegExp(`^(?:${FREE_WORDS_PATTERN})$`, 'u')
  return {
    pattern: FREE_WORDS_PATTERN,
    read: (reading) => (freePattern.test(reading.text) ? read(reading) : undefined),
  }
}

/** Chunks between commas that do not start with this word. */
function chunksExcept(first: string): string {
  const word = '[^ ,;\\[\\]]'
  const prefixes = [...first].map((_letter, place) => first.slice(0, place))
  const otherWords = [...first].map(
    (letter, place) => `${first.slice(0, place)}[^ ,;\\[\\]${letter}]${word}*`,
  )
  const chunk = `(?:${[...otherWords, `${first}${word}+`, ...prefixes.slice(1)].join('|')})(?: ${word}+)*`
  return `${chunk}(?:, ${chunk})*`
}
