import { MACHINE_EVENT_KINDS } from '../../spec/index.js'
import { buildOnce } from '../shapes/makeShape.js'
import { makeNotations } from './notation.js'
import { field, keyedWord, listOf, optional, type Piece, sequence, term } from './piece.js'
import type { CollectedObject, Holder, MakeDefault, PlaceTable } from './placeTable.js'
import { each, nameFromDocumentId } from './placeTable.js'
import { day, quantityOfMeasure, readings } from './quantityNotations.js'
import { readList } from './readList.js'
import { recordNotations, recordPlaces } from './recordNotationTable.js'
import { FREE_WORDS_PATTERN, ID } from './valuePieces.js'

/** `512.6 h, 4410 km on 2023-10-06`: the meter readings of a day. */
const readingsOnDay = (unit: 'km' | 'mi') => (): Piece => sequence(readings([unit]), ' on ', day('date'))

/** `submersion of front, rear on 2023-05-02`; without gearcases, it affects the whole machine. */
const event = (): Piece =>
  sequence(
    keyedWord('kind', MACHINE_EVENT_KINDS, 'event'),
    optional(
      ' of ',
      field(
        'gearcases',
        listOf(
          term(`(?<id>${ID})`, 'id', ({ id }) => id),
          ', ',
        ),
      ),
    ),
    ' on ',
    day('date'),
  )

/** `50 mL in hub left on 2023-05-02, gear oil 80W-90`. */
const topUp = (): Piece =>
  sequence(
    field('volume', quantityOfMeasure('volume')),
    term(` in (?<gearcase>${ID})(?: (?<instance>${ID}))? on `, 'id'),
    day('date'),
    term(`, (?<oil>${FREE_WORDS_PATTERN})`, 'name'),
  )

/** `2022-11-01 to 2023-03-31`. */
const pause = (): Piece => sequence(day('from'), ' to ', day('to'))

const logNotations = () => ({
  ...recordNotations(),
  ...makeNotations({
    readingsInKm: readingsOnDay('km'),
    readingsInMi: readingsOnDay('mi'),
    event,
    topUp,
    pause,
  }),
})

export type LogNotationName = keyof ReturnType<typeof logNotations>

/** Converts the readings of each day into the meters of a log. */
function collectMeters(days: readonly Holder[]): CollectedObject {
  const value: Record<string, { readonly unit: unknown; readonly readings: object[] }> = {}
  const places = days.flatMap((dayReadings, of) =>
    ['hours', 'distance'].flatMap((meter) => {
      const quantity = dayReadings[meter] as { readonly value: number; readonly unit: string } | undefined
      if (quantity === undefined) return []
      value[meter] ??= { unit: quantity.unit, readings: [] }
      const { readings } = value[meter]
      readings.push({ date: dayReadings['date'], value: quantity.value })
      return [{ full: `/${meter}/readings/${readings.length - 1}`, of, part: `/${meter}` }]
    }),
  )
  return { value, places }
}

/** Copies a key of the log into its records. */
const copyFromLog =
  (key: string): MakeDefault =>
  ({ root }) =>
    root[key] ?? undefined

/** `service-2022-11-20`. */
const recordId: MakeDefault = ({ holder: { date } }) =>
  typeof date === 'string' && /^[\d-]+$/.test(date) ? `service-${date}` : undefined

/**
 * The short notation of a machine log. Its records use the short notation of records, without the facts that the log
 * states.
 */
export const logNotationTable = /* @__PURE__ */ buildOnce(
  (): PlaceTable<LogNotationName> => ({
    notations: logNotations(),
    places: {
      defaults: { name: nameFromDocumentId, identity: {}, meters: {}, records: () => [] },
      children: {
        sheet: { text: 'sheetReference' },
        meters: { read: readList, texts: ['readingsInKm', 'readingsInMi'], collect: collectMeters },
        events: each({ text: 'event' }),
        topUps: each({ text: 'topUp', children: { volume: { text: 'quantityVolume' } } }),
        pauses: each({ text: 'pause' }),
        records: each({
          ...recordPlaces,
          defaults: {
            ...recordPlaces.defaults,
            kind: 'service-record',
            version: copyFromLog('version'),
            id: recordId,
            machine: copyFromLog('id'),
          },
          // After the log's own `sheet` is read.
          laterDefaults: { sheet: copyFromLog('sheet') },
        }),
      },
    },
  }),
)
