import { MIXED_FLUIDS, WHEEL_MARKS } from '../../spec/index.js'
import { buildOnce } from '../shapes/makeShape.js'
import { entryText } from './entryText.js'
import { howTightened } from './howTightened.js'
import { makeNotations } from './notation.js'
import { asPattern, field, oneOf, optional, type Piece, sequence, term, words } from './piece.js'
import { asHolder, type LeftOut, makeTable, type PlaceRow } from './placeTable.js'
import { hours, quantityOf, readings, workingTime } from './quantityNotations.js'
import { readByPointer } from './readByPointer.js'
import { FREE_WORDS, ID, WORDS } from './valuePieces.js'

/** `hallbrekka-tind-4, revision 2023-03`. */
const sheetReference = (): Piece => term(`(?<id>${ID}), revision (?<revision>${WORDS})`, 'sheet')

/** `gear oil 80W-90 from quart-80w-90`: a name, and the id of its container. */
function oilUsed(): Piece {
  const { read } = term(`(?<name>[^\\[\\]]+?)(?: from (?<container>${ID}))?$`, 'name')
  const free = new RegExp(`^(?:${FREE_WORDS})$`, 'u')
  return {
    pattern: FREE_WORDS,
    read: (reading) => (free.test(reading.text) ? read(reading) : undefined),
  }
}

/** `22.5 N·m with small-click`, `1.5 turns at mark down`, `by hand`. */
const tightened = (): Piece =>
  sequence(
    howTightened(),
    optional(term(` at (?<wheelMark>${WHEEL_MARKS.map(asPattern).join('|')})`, 'wheel mark')),
  )

/** `new, part HB-1620`, `inspected and used again`. */
const sealDone = (): Piece =>
  term(`(?<done>new|inspected and used again)(?:, part (?<partNumber>${WORDS}))?`, 'seal done')

/** `new, part RF-310, found fine paste`. */
const filterDone = (): Piece =>
  term(
    `(?<done>new|cleaned)(?:, part (?<partNumber>${WORDS}))?(?:, found (?<found>clean|fine paste|chips|pieces))?`,
    'filter done',
  )

/** `1.2 L to Nordfoss Collection, receipt K-1043`, `700 mL to the solvent store, kept apart: coolant`. */
function usedOil(): Piece {
  const to = () => term(`to (?<to>${WORDS})`, 'name')
  return sequence(
    oneOf(sequence(field('volume', quantityOf('volume')), optional(sequence(words(' '), to()))), to()),
    optional(term(`, receipt (?<receipt>${WORDS})`)),
    optional(term(`, kept apart: (?<keptApart>${MIXED_FLUIDS.join('|')})`)),
  )
}

export const recordNotations = () =>
  makeNotations({
    sheetReference,
    readings,
    quantityHours: hours,
    quantityWorkingTime: workingTime,
    quantityDistance: () => quantityOf('distance'),
    entry: entryText,
    quantityVolume: () => quantityOf('volume'),
    oilUsed,
    tightened,
    quantityTorque: () => quantityOf('torque'),
    sealDone,
    filterDone,
    usedOil,
  })

export type RecordNotation = keyof ReturnType<typeof recordNotations>

const none = () => []

/** Whether no entry says more than what was serviced. */
const detailOf: LeftOut = ({ holder: { entries } }) => {
  const isBare = (one: unknown) =>
    typeof one === 'string'
      ? !one.includes(',')
      : Object.entries(asHolder(one) ?? {}).every(
          ([key, value]) =>
            ['service', 'gearcase', 'instance'].includes(key) || (Array.isArray(value) && value.length === 0),
        )
  const isHistory = Array.isArray(entries) ? entries.every(isBare) : isBare(entries)
  return isHistory ? 'date and meters only' : 'full'
}

/** One visit a day is usual: the machine and the day. */
const idOf: LeftOut = ({ holder: { machine, date } }) =>
  typeof machine === 'string' && typeof date === 'string' ? `${machine}-${date}` : undefined

/** The places where a service record takes short notation, by itself or inside a log. */
export const recordRows = (): { readonly [place: string]: PlaceRow<RecordNotation> } => ({
  '': { leftOut: { detail: detailOf, id: idOf } },
  '/sheet': { text: 'sheetReference' },
  '/readings': { text: 'readings' },
  '/readings/hours': { text: 'quantityHours' },
  '/readings/distance': { text: 'quantityDistance' },
  '/workingTime': { text: 'quantityWorkingTime' },
  '/corrected/readings': { text: 'readings' },
  '/corrected/readings/hours': { text: 'quantityHours' },
  '/corrected/readings/distance': { text: 'quantityDistance' },
  '/entries': { under: '[]' },
  '/entries/*': { text: 'entry', leftOut: { opened: none, tightened: none, seals: none } },
  '/entries/*/drained': { text: 'quantityVolume', word: 'not judged' },
  '/entries/*/refilled': { text: 'quantityVolume' },
  '/entries/*/oil': { text: 'oilUsed' },
  '/entries/*/sample': { under: 'bottle' },
  '/entries/*/tightened': { byPointer: 'tightened' },
  '/entries/*/tightened/*/torque': { text: 'quantityTorque' },
  '/entries/*/seals': { byPointer: 'sealDone' },
  '/entries/*/filters': { byPointer: 'filterDone' },
  '/usedOilLog/*': { text: 'usedOil' },
  '/usedOilLog/*/volume': { text: 'quantityVolume' },
  '/shields': { byPointer: 'tightened' },
  '/shields/*/torque': { text: 'quantityTorque' },
})

/** Where a service record may be short. */
export const recordPlaces = /* @__PURE__ */ buildOnce(() =>
  makeTable(recordRows(), recordNotations(), { byPointer: readByPointer }),
)
