import { afterComma, field, listOf, oneOf, type Piece, sequence, term, words } from './piece.js'
import { quantityOfMeasure, recordedTightening } from './quantityNotations.js'
import { ID, WORDS_PATTERN } from './valuePieces.js'

/** An entry as in its text, with parts of the gearcase by id. */
interface EntryParts {
  readonly gearcase: string
  readonly tightened?: readonly { readonly opening: string }[]
  readonly newSeals?: string
  readonly oldSeals?: string
}

const OIL_FINDINGS = 'clear|dark|milky|burnt|metallic'
/** Words without the `?` of a record yet to be filled in. */
const BOTTLE_PATTERN = '[^ ,;?\\[\\]]+(?: [^ ,;?\\[\\]]+)*'
const ID_LIST_PATTERN = `${ID}(?: and ${ID})*`
const volume = (key: string, end: string): Piece => afterComma(field(key, quantityOfMeasure('volume')), end)

/** `drain 22.5 N·m with small-click`, `fill 1.5 turns`, `level by hand`. */
const tightening = (): Piece => sequence(term(`(?<opening>${ID}) `, 'tightening'), recordedTightening())

/**
 * Reads and writes the work at one gearcase. The text starts with the service and the gearcase: `gear-oil-change of
 * hub left`. These parts follow in this order; each may be absent: `440 mL drained`, `450 mL refilled`, `oil gear oil
 * 80W-90 from quart-80w-90, batch L-2231`, `old oil dark`, `magnet clean`, `sample B-12`, `level at the mark`, `joints
 * dry`, each plug as `drain 22.5 N·m with small-click`, and `new seals drain and fill`. Each tightened plug also counts
 * as opened.
 */
export const entryPiece = (): Piece => {
  const { pattern, read } = sequence(
    term(`(?<service>${ID}) of (?<gearcase>${ID})(?: (?<instance>${ID}))?`, 'service'),
    volume('drained', ' drained'),
    volume('refilled', ' refilled'),
    afterComma(
      'oil ',
      field('oil', sequence(oilName(), afterComma(term(`batch (?<batch>${BOTTLE_PATTERN})`)))),
    ),
    afterComma(term(`old oil (?<oilFinding>${OIL_FINDINGS})`)),
    afterComma(oneOf(words('no magnet', undefined, { magnet: 'no magnet' }), magnet())),
    afterComma(field('sample', term(`sample (?<bottle>${BOTTLE_PATTERN})`))),
    afterComma(term('level (?<level>at the mark|below|above|not checked)')),
    afterComma(term('joints (?<leaks>dry|weeping|dripping|not checked)')),
    afterComma(field('tightened', listOf(tightening(), ', '))),
    afterComma(term(`new seals? (?<newSeals>${ID_LIST_PATTERN})`)),
    afterComma(term(`seals? used again (?<oldSeals>${ID_LIST_PATTERN})`)),
  )
  return {
    pattern,
    read: (reading) => {
      const parts = read(reading)
      return parts === undefined ? undefined : addPointers(parts as EntryParts)
    },
  }
}

const magnet = (): Piece => term('magnet (?<magnet>clean|fine paste|chips|pieces)')

/** `gear oil 80W-90 from quart-80w-90`: a name, and the id of its container. */
const oilName = (): Piece =>
  term(`(?<all>${WORDS_PATTERN})`, 'oil', ({ all = '' }) => {
    const { name = all, container } =
      new RegExp(`^(?<name>.+) from (?<container>${ID})$`).exec(all)?.groups ?? {}
    return container === undefined ? { name } : { name, container }
  })

/** The whole entry. If the text names only the service, the lists get their defaults. */
function addPointers({ newSeals, oldSeals, tightened, ...entry }: EntryParts) {
  const at = (opening: string) => `/gearcases/${entry.gearcase}/openings/${opening}`
  const makeSeals = (ids: string | undefined, done: string) =>
    (ids?.split(' and ') ?? []).map((id) => ({ on: `${at(id)}/seals/0`, done }))
  const seals = [...makeSeals(newSeals, 'new'), ...makeSeals(oldSeals, 'inspected and used again')]
  return {
    ...entry,
    ...(tightened && {
      opened: tightened.map(({ opening }) => at(opening)),
      tightened: tightened.map(({ opening, ...done }) => ({ ...done, on: at(opening) })),
    }),
    ...(seals.length > 0 && { seals }),
  }
}
