import { MIXED_FLUIDS, WHEEL_MARKS } from '../../spec/index.js'
import { buildOnce } from '../shapes/makeShape.js'
import { entryPiece } from './entryPiece.js'
import { makeNotations } from './notation.js'
import { field, makeChoice, oneOf, optional, type Piece, sequence, term } from './piece.js'
import { asObject, each, type MakeDefault, type PlaceNode, type PlaceTable } from './placeTable.js'
import { hours, quantityOfMeasure, readings, recordedTightening, workingTime } from './quantityNotations.js'
import { readByPointer } from './readList.js'
import { FREE_WORDS_PATTERN, ID, WORDS_PATTERN } from './valuePieces.js'

/** `hallbrekka-tind-4, revision 2023-03`. */
const sheetReference = (): Piece => term(`(?<id>${ID}), revision (?<revision>${WORDS_PATTERN})`, 'sheet')

/** `gear oil 80W-90 from quart-80w-90`: a name, and the id of its container. */
function oilUsed(): Piece {
  const { read } = term(`(?=${FREE_WORDS_PATTERN}$)(?<name>.+?)( from (?<container>${ID}))?$`)
  return { pattern: FREE_WORDS_PATTERN, read }
}

/** `22.5 N·m with small-click`, `1.5 turns at mark down`, `by hand`. */
const tightened = (): Piece =>
  sequence(recordedTightening(), optional(term(` at ${makeChoice('wheelMark', WHEEL_MARKS)}`, 'wheel mark')))

/** `new, part HB-1620`, `inspected and used again`. */
const sealDone = (): Piece =>
  term(`(?<done>new|inspected and used again)(?:, part (?<partNumber>${WORDS_PATTERN}))?`, 'seal done')

/** `new, part RF-310, found fine paste`. */
const filterDone = (): Piece =>
  term(
    `(?<done>new|cleaned)(?:, part (?<partNumber>${WORDS_PATTERN}))?(?:, found (?<found>clean|fine paste|chips|pieces))?`,
    'filter done',
  )

/** `1.2 L to Nordfoss Collection, receipt K-1043`, `700 mL to the solvent store, kept apart: coolant`. */
function usedOil(): Piece {
  const to = () => term(`to (?<to>${WORDS_PATTERN})`, 'name')
  return sequence(
    oneOf(sequence(field('volume', quantityOfMeasure('volume')), optional(' ', to())), to()),
    optional(term(`, receipt (?<receipt>${WORDS_PATTERN})`)),
    optional(term(`, kept apart: ${makeChoice('keptApart', MIXED_FLUIDS)}`)),
  )
}

export const recordNotations = () =>
  makeNotations({
    sheetReference,
    readings,
    quantityHours: hours,
    quantityWorkingTime: workingTime,
    quantityDistance: () => quantityOfMeasure('distance'),
    entry: entryPiece,
    quantityVolume: () => quantityOfMeasure('volume'),
    oilUsed,
    tightened,
    quantityTorque: () => quantityOfMeasure('torque'),
    sealDone,
    filterDone,
    usedOil,
  })

export type RecordNotationName = keyof ReturnType<typeof recordNotations>

const emptyList = () => []

/** The default of `detail`: whether any entry has more than its service and gearcase. */
const chooseDetail: MakeDefault = ({ holder: { entries } }) => {
  const hasServiceOnly = (entry: unknown) =>
    typeof entry === 'string'
      ? !entry.includes(',')
      : Object.entries(asObject(entry) ?? {}).every(
          ([key, value]) =>
            ['service', 'gearcase', 'instance'].includes(key) || (Array.isArray(value) && value.length === 0),
        )
  const hasNoDetails = Array.isArray(entries) ? entries.every(hasServiceOnly) : hasServiceOnly(entries)
  return hasNoDetails ? 'date and meters only' : 'full'
}

/** The default id: machine and day, since one visit a day is usual. */
const makeRecordId: MakeDefault = ({ holder: { machine, date } }) =>
  typeof machine === 'string' && typeof date === 'string' ? `${machine}-${date}` : undefined

const volume = { text: 'quantityVolume' } as const
const torque = { text: 'quantityTorque' } as const
const meters = {
  text: 'readings',
  children: { hours: { text: 'quantityHours' }, distance: { text: 'quantityDistance' } },
} as const
const tightenedParts = {
  read: readByPointer,
  texts: ['tightened'],
  ...each({ children: { torque } }),
} as const

/** The short notation of a service record, alone or inside a log. */
export const recordPlaces = {
  defaults: { detail: chooseDetail, id: makeRecordId },
  children: {
    sheet: { text: 'sheetReference' },
    readings: meters,
    workingTime: { text: 'quantityWorkingTime' },
    corrected: { children: { readings: meters } },
    entries: {
      textKey: '[]',
      ...each({
        text: 'entry',
        defaults: { opened: emptyList, tightened: emptyList, seals: emptyList },
        children: {
          drained: { ...volume, fullText: 'not judged' },
          refilled: volume,
          oil: { text: 'oilUsed' },
          sample: { textKey: 'bottle' },
          tightened: tightenedParts,
          seals: { read: readByPointer, texts: ['sealDone'] },
          filters: { read: readByPointer, texts: ['filterDone'] },
        },
      }),
    },
    photos: each({ textKey: 'file' }),
    signature: { textKey: 'name' },
    usedOilLog: each({ text: 'usedOil', children: { volume } }),
    shields: tightenedParts,
  },
} as const satisfies PlaceNode<RecordNotationName>

/** The short notation of a service record. */
export const recordNotationTable = /* @__PURE__ */ buildOnce(
  (): PlaceTable<RecordNotationName> => ({ places: recordPlaces, notations: recordNotations() }),
)
