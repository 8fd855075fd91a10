import { dropUndefined } from '../../base/index.js'
import { WHEEL_MARKS } from '../../spec/index.js'
import {
  ATTITUDES,
  BOLT_PATTERNS,
  DIPSTICK_READINGS,
  DOCUMENT_KINDS,
  ENGINE_STATES,
  OPENING_ROLES,
} from '../shapes/wordLists.js'
import { driveWithoutSource, tighteningWithoutSource } from './leafNotations.js'
import type { Found, Part, Piece } from './piece.js'
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
  words,
} from './piece.js'
import {
  amountOrNotStated,
  FREE_WORDS_PATTERN,
  ID,
  LETTER,
  NOT_STATED,
  notStated,
  printedAmount,
  WORDS_PATTERN,
  withSource,
} from './valuePieces.js'

// The texts of parts other than leaves: access, filling, fastening, and the machines that a part applies to.

const id = (key: string): Piece => term(`(?<${key}>${ID})`, 'id')
const anyId = (): Piece => convert(id('id'), (found: { id?: unknown }) => found.id)

/** `raised on front-frame, rear-frame`. */
export const access = (): Piece =>
  oneOf(
    kindWords('from the ground', 'access'),
    sequence(words('raised on ', 'access', { kind: 'raised' }), field('supports', listOf(anyId(), ', '))),
    withSource(notStated()),
  )

/** `shared with axle, 1.5 L (1.6 US qt)`. */
export const oilSpace = (): Piece =>
  sequence(
    words('shared with ', 'oil space', { kind: 'shared' }),
    id('with'),
    afterComma(field('portion', withSource(printedAmount('volume')))),
  )

/** `to level hole at fill, 5 mm below`, `dipstick resting`. */
function methodWithoutSource(): Piece {
  const at = () => optional(' at ', id('opening'))
  const below = sequence(printedAmount('length'), ' below')
  return oneOf(
    sequence(kindWords('by quantity', 'method'), at()),
    sequence(kindWords('to level hole', 'method'), at(), afterComma(field('below', below))),
    sequence(
      term(`dipstick ${makeChoice('reading', DIPSTICK_READINGS)}`, 'method', { kind: 'dipstick' }),
      at(),
    ),
    sequence(kindWords('sight glass', 'method'), at()),
    notStated(),
  )
}
export const method = (): Piece =>
  withSource(methodWithoutSource(), (found) => [found['kind'] === NOT_STATED ? found : found['below']])

/** `700 mL (0.74 US qt), to level hole`: one source for both figures. */
export const fill = (): Piece =>
  withSource(
    sequence(
      field('drainAndRefill', amountOrNotStated('volume')),
      afterComma(field('method', methodWithoutSource())),
    ),
    ({ drainAndRefill, method }) => [drainAndRefill, (method as { below?: object } | undefined)?.below],
  )

/** `level on its wheels, engine stopped, 10 min after stop, recheck after run`. */
export const level = (): Piece =>
  sequence(
    { engine: NOT_STATED, recheckAfterRun: false },
    keyedWord('attitude', ATTITUDES, 'attitude'),
    afterComma(term(`engine ${makeChoice('engine', ENGINE_STATES)}`)),
    afterComma(field('temperature', withSource(printedAmount('temperature')))),
    afterComma(
      field('minutesAfterStop', withSource(sequence(printedAmount('duration', ['min']), ' after stop'))),
    ),
    afterComma('recheck after run', { recheckAfterRun: true }),
  )

/** `drain at mark down, fill at mark level`. */
export const uses = (): Piece =>
  listOf(
    sequence(
      keyedWord('role', OPENING_ROLES, 'use'),
      optional(term(` at ${makeChoice('wheelMark', WHEEL_MARKS)}`, 'wheel mark')),
    ),
    ', ',
  )

/** `drain at drain with side`, `cover rear-cover`, `suction at fill`. */
export const emptying = (): Piece =>
  oneOf(
    sequence(
      words('drain at ', 'emptying', { kind: 'drain plug' }),
      id('opening'),
      optional(labelled(' with ', 'also', listOf(anyId(), ' and '))),
    ),
    sequence(words('cover ', 'emptying', { kind: 'cover' }), id('cover')),
    sequence(words('suction at ', 'emptying', { kind: 'suction' }), id('opening')),
  )

/** `behind opening drain`, `behind cover pan`. */
export const filterHold = (): Piece =>
  oneOf(
    ...['opening', 'cover'].map((part) =>
      sequence(words(`behind ${part} `, 'filter', { kind: `behind ${part}` }), id(part)),
    ),
  )

/** `10 x M8 8.8, external hex 13 mm, 25 ± 3 N·m, dry`. */
export const fasteners = (...others: readonly Part[]): Piece =>
  withSource(
    sequence(
      term(
        `((?<count>[1-9][0-9]{0,3}) x )?(?<thread>[A-Z0-9]${LETTER}*( [A-Z]{2,4}(-[0-9][AB])?)?)` +
          '( (?<propertyClass>[0-9]{1,2}\\.[0-9]|A[1-5]-[0-9]{2,3}))?',
        'fasteners',
        // Made for each text, since a source is added to the tightening.
        ({ count, ...found }: Found) => ({
          drive: { kind: NOT_STATED },
          tightening: { kind: NOT_STATED, threadCondition: NOT_STATED },
          ...found,
          count: count ? Number(count) : NOT_STATED,
        }),
      ),
      afterComma(field('drive', driveWithoutSource())),
      afterComma(field('tightening', tighteningWithoutSource())),
      ...others,
    ),
    ({ tightening }) => [tightening],
  )
/** The fasteners of a cover, with their order of tightening. */
export const bolts = (): Piece =>
  fasteners({ pattern: NOT_STATED }, afterComma(keyedWord('pattern', BOLT_PATTERNS, 'pattern of bolts')))

/**
 * `variant short or long, model years 2019 to 2021, serial TS 00001 to 09999, market NO`: all parts must be
 * met.
 */
export function condition(): Piece {
  const range = (end: string) => `((from )?(?<from>${end})( to (?<to>${end}))?|to (?<only>${end}))`
  const anyMarket = term('(?<market>[A-Za-z][A-Za-z0-9-]{0,31})', 'market', (found: Found) => found['market'])
  return someOf(
    [
      labelled('variant ', 'variants', listOf(anyId(), ' or '), 'condition'),
      term(`model years ${range('[0-9]{4}')}`, 'condition', ({ from, to, only = to }: Found) => ({
        modelYears: dropUndefined({ from: from && Number(from), to: only && Number(only) }),
      })),
      term(
        `serial ((?<prefix>[A-Z][A-Z0-9-]{0,15}) )?${range('[0-9]{1,15}')}`,
        'condition',
        ({ only, to = only, ...serials }: Found) => ({ serials: dropUndefined({ ...serials, to }) }),
      ),
      labelled('market ', 'market', listOf(anyMarket, ' or '), 'condition'),
    ],
    ', ',
  )
}

/** `Tind 4 S, short bed, when serial TS 00001 to 09999`. */
export function variant(): Piece {
  // Chunks between commas that do not start with the word `when`.
  const starts = ['', 'w', 'wh', 'whe']
  const otherWords = starts.map((start, at) => `${start}[^ ,;\\[\\]${'when'.charAt(at)}]${LETTER}*`)
  const chunk = `(${[...otherWords, `when${LETTER}+`, ...starts.slice(1)].join('|')})( ${LETTER}+)*`
  const pattern = `(?<name>${chunk}(, ${chunk})*)`
  // A chunk ends at a comma, so the reader does not take the `whe` of `when` for a chunk.
  const { read } = term(`${pattern}(?=,|$)`, 'name')
  return sequence({ pattern, read }, afterComma(labelled('when ', 'when', condition())))
}

/** `both ends of the front cross tube, lifts front`. */
export const support = (): Piece =>
  sequence(
    term(`(?<at>${WORDS_PATTERN})`, 'support'),
    afterComma(term(`jack (?<jack>${WORDS_PATTERN})`)),
    afterComma('lifts ', id('axle')),
  )

/** `2 wheels`, `2 wheels, ramps`, `2 wheels, no ramps`. */
export const axle = (): Piece =>
  sequence(
    term('(?<wheels>[1-9][0-9]{0,3}) wheels?', 'wheels', ({ wheels }: Found) => ({ wheels: Number(wheels) })),
    afterComma(
      term('(?<ramps>(no )?ramps)', undefined, ({ ramps }: Found) => ({ ramps: ramps === 'ramps' })),
    ),
  )

/**
 * `Tind 4 workshop manual, workshop manual, edition 3, 2021-02-01`: the title, the kind of document, edition
 * and date.
 */
export function documentSource(): Piece {
  const { read } = term(
    `(?=${FREE_WORDS_PATTERN}$)(?<title>.+?)(, ${makeChoice('document', DOCUMENT_KINDS)})?` +
      `(, edition (?<edition>${WORDS_PATTERN}))?(, (?<date>[0-9]{4}-[0-9]{2}-[0-9]{2}))?$`,
  )
  return { pattern: FREE_WORDS_PATTERN, read }
}
