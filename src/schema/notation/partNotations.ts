import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import { driveText, tighteningText } from './leafNotations.js'
import {
  always,
  asPattern,
  field,
  listOf,
  oneOf,
  optional,
  type Piece,
  sequence,
  someOf,
  term,
  wordOf,
  words,
} from './piece.js'
import { amount, amountOf, cited, citing, FREE_WORDS, ID, notStated, printed, WORDS } from './valuePieces.js'

// The texts of the parts between the leaves: how a part is reached, filled, turned, and to which machines it applies.

const id = (key: string): Piece => term(`(?<${key}>${ID})`, 'id')
const anyId = (): Piece => term(`(?<id>${ID})`, 'id', (found) => found['id'])

/** `raised on front-frame, rear-frame`. */
export const access = (): Piece =>
  oneOf(
    words('from the ground', 'access', { kind: 'from the ground' }),
    sequence(
      always({ kind: 'raised' }),
      words('raised on ', 'access'),
      field('supports', listOf(anyId(), ', ')),
    ),
    cited(notStated()),
  )

/** `shared with axle, 1.5 L (1.6 US qt)`. */
export const oilSpace = (): Piece =>
  sequence(
    always({ kind: 'shared' }),
    words('shared with ', 'oil space'),
    id('with'),
    optional(
      sequence(words(', '), field('portion', cited(printed(amount('volume', UNITS_BY_MEASURE.volume))))),
    ),
  )

const at = (): Piece => optional(sequence(words(' at '), id('opening')))

/** `to level hole at fill, 5 mm below`, `dipstick resting`. */
function methodText(below: Piece): Piece {
  const kind = (text: string) => words(text, 'method', { kind: text })
  return oneOf(
    sequence(kind('by quantity'), at()),
    sequence(kind('to level hole'), at(), optional(sequence(words(', '), field('below', below)))),
    sequence(always({ kind: 'dipstick' }), term('dipstick (?<reading>screwed in|resting)', 'method'), at()),
    sequence(kind('sight glass'), at()),
    notStated(),
  )
}
const below = () => sequence(printed(amount('length', UNITS_BY_MEASURE.length)), words(' below'))
export const method = (): Piece =>
  citing(methodText(below()), (found) => [found['kind'] === 'not stated' ? found : found['below']])

/** `700 mL (0.74 US qt), to level hole`: one source for both figures. */
export const fill = (): Piece =>
  citing(
    sequence(
      field('drainAndRefill', oneOf(notStated(), printed(amount('volume', UNITS_BY_MEASURE.volume)))),
      optional(sequence(words(', '), field('method', methodText(below())))),
    ),
    ({ drainAndRefill, method }) => [drainAndRefill, (method as { below?: object } | undefined)?.below],
  )

/** `level on its wheels, engine stopped, 10 min after stop, recheck after run`. */
export const level = (): Piece =>
  sequence(
    wordOf('attitude', ['level on its wheels', 'level on stands', 'not stated'], 'attitude'),
    optional(term(', engine (?<engine>stopped|running)'), { engine: 'not stated' }),
    optional(
      sequence(
        words(', '),
        field('temperature', cited(printed(amountOf('temperature', UNITS_BY_MEASURE.temperature)))),
      ),
    ),
    optional(
      sequence(
        words(', '),
        field(
          'minutesAfterStop',
          cited(sequence(printed(amount('duration', ['min'])), words(' after stop'))),
        ),
      ),
    ),
    optional(words(', recheck after run', undefined, { recheckAfterRun: true }), { recheckAfterRun: false }),
  )

/** `drain at mark down, fill at mark level`. */
export const uses = (): Piece =>
  listOf(
    sequence(
      wordOf('role', ['fill', 'drain', 'level'], 'use'),
      optional(term(' at (?<wheelMark>mark down|mark level|mark up)', 'wheel mark')),
    ),
    ', ',
  )

/** `drain at drain with side`, `cover rear-cover`, `suction at fill`. */
export const emptying = (): Piece =>
  oneOf(
    sequence(
      always({ kind: 'drain plug' }),
      words('drain at ', 'emptying'),
      id('opening'),
      optional(sequence(words(' with '), field('also', listOf(anyId(), ' and ')))),
    ),
    sequence(always({ kind: 'cover' }), words('cover ', 'emptying'), id('cover')),
    sequence(always({ kind: 'suction' }), words('suction at ', 'emptying'), id('opening')),
  )

/** `behind opening drain`, `behind cover pan`. */
export const filterHold = (): Piece =>
  oneOf(
    sequence(always({ kind: 'behind opening' }), words('behind opening ', 'filter'), id('opening')),
    sequence(always({ kind: 'behind cover' }), words('behind cover ', 'filter'), id('cover')),
  )

/** `10 x M8 8.8, external hex 13 mm, 25 ± 3 N·m, dry`; of a cover also how they are tightened in turn. */
function fastenersText(pattern: Piece): Piece {
  return citing(
    sequence(
      term(
        '(?:(?<count>[1-9][0-9]{0,3}) x )?(?<thread>[A-Z0-9][^ ,;\\[\\]]*(?: [A-Z]{2,4}(?:-[0-9][AB])?)?)' +
          '(?: (?<propertyClass>[0-9]{1,2}\\.[0-9]|A[1-5]-[0-9]{2,3}))?',
        'fasteners',
        ({ count, ...found }) => ({ count: count === undefined ? 'not stated' : Number(count), ...found }),
      ),
      optional(sequence(words(', '), field('drive', driveText())), { drive: { kind: 'not stated' } }),
      optional(sequence(words(', '), field('tightening', tighteningText())), {
        tightening: { kind: 'not stated', threadCondition: 'not stated' },
      }),
      pattern,
    ),
    ({ tightening }) => [tightening],
  )
}
export const fasteners = (): Piece => fastenersText(always({}))
export const bolts = (): Piece =>
  fastenersText(
    optional(
      sequence(
        words(', '),
        wordOf('pattern', ['crosswise', 'from the middle outwards', 'in turn'], 'pattern of bolts'),
      ),
      { pattern: 'not stated' },
    ),
  )

/** `variant short or long, model years 2019 to 2021, serial TS 00001 to 09999, market NO`: all of them must be met. */
export function condition(): Piece {
  const range = (end: string) => `(?:from )?(?<from>${end})(?: to (?<to>${end}))?|to (?<only>${end})`
  const anyMarket = term('(?<market>[A-Za-z][A-Za-z0-9-]{0,31})', 'market', (found) => found['market'])
  return someOf(
    [
      sequence(words('variant ', 'condition'), field('variants', listOf(anyId(), ' or '))),
      term(`model years (?:${range('[0-9]{4}')})`, 'condition', ({ from, to, only }) => ({
        modelYears: numbersOf(from, to ?? only),
      })),
      term(
        `serial (?:(?<prefix>[A-Z][A-Z0-9-]{0,15}) )?(?:${range('[0-9]{1,15}')})`,
        'condition',
        ({ prefix, from, to, only }) => ({ serials: without({ prefix, from, to: to ?? only }) }),
      ),
      sequence(words('market ', 'condition'), field('market', listOf(anyMarket, ' or '))),
    ],
    ', ',
  )
}

const numbersOf = (from: string | undefined, to: string | undefined) =>
  without({ from: from && Number(from), to: to && Number(to) })
const without = (given: object) =>
  Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined))

/** `Tind 4 S, short bed, when serial TS 00001 to 09999`. */
export function variant(): Piece {
  const pattern = `(?<name>${chunksBut('when')})`
  // A chunk ends at a comma: the reader must not take the `whe` of `when` for one.
  const { read } = term(`${pattern}(?=,|$)`, 'name')
  return sequence({ pattern, read }, optional(sequence(words(', when '), field('when', condition()))))
}

/** `both ends of the front cross tube, lifts front`. */
export const support = (): Piece =>
  sequence(
    term(`(?<at>${WORDS})`, 'support'),
    optional(term(`, jack (?<jack>${WORDS})`)),
    optional(sequence(words(', lifts '), id('axle'))),
  )

/** `2 wheels`, `2 wheels, ramps`, `2 wheels, no ramps`. */
export const axle = (): Piece =>
  sequence(
    term('(?<wheels>[1-9][0-9]{0,3}) wheels?', 'wheels', ({ wheels }) => ({ wheels: Number(wheels) })),
    optional(term(', (?<ramps>(?:no )?ramps)', undefined, ({ ramps }) => ({ ramps: ramps === 'ramps' }))),
  )

/** `Tind 4 workshop manual, workshop manual, edition 3, 2021-02-01`: the title, and what kind of document it is. */
export function documentSource(): Piece {
  const kinds = ['owner manual', 'workshop manual', 'service bulletin', 'parts list', 'plate', 'other']
  const rest =
    `(?:, (?<document>${kinds.map(asPattern).join('|')}))?(?:, edition (?<edition>${WORDS}))?` +
    '(?:, (?<date>[0-9]{4}-[0-9]{2}-[0-9]{2}))?$'
  const { read } = term(`(?<title>[^\\[\\]]+?)${rest}`, 'title')
  const free = new RegExp(`^(?:${FREE_WORDS})$`, 'u')
  return {
    pattern: FREE_WORDS,
    read: (reading) => (free.test(reading.text) ? read(reading) : undefined),
  }
}

/** Chunks between commas, none of which has this as its first word. */
function chunksBut(first: string): string {
  const word = '[^ ,;\\[\\]]'
  const shorter = [...first].map((_letter, place) => first.slice(0, place))
  const others = [...first].map((letter, place) => `${first.slice(0, place)}[^ ,;\\[\\]${letter}]${word}*`)
  const chunk = `(?:${[...others, `${first}${word}+`, ...shorter.slice(1)].join('|')})(?: ${word}+)*`
  return `${chunk}(?:, ${chunk})*`
}
