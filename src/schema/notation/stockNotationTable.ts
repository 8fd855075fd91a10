import { buildOnce } from '../shapes/makeShape.js'
import { CATEGORY_PATTERN, findSaeSystem, purchasableSeal, SAE_GRADE_PATTERN } from './leafNotations.js'
import { makeNotations } from './notation.js'
import { field, optional, type Piece, sequence, term } from './piece.js'
import { each, nameFromDocumentId, nameFromId, type PlaceTable } from './placeTable.js'
import { quantity, quantityOfMeasure } from './quantityNotations.js'
import { FIGURE_PATTERN } from './valuePieces.js'

/** A pour point may be negative. */
const CELSIUS_PATTERN = `(?<value>${FIGURE_PATTERN}|-(?:[1-9][0-9]?|1[0-9]{2})(?:\\.[0-9]{1,6})?|-0\\.[0-9]{0,5}[1-9])`

/** `80W-90 GL-5`, `SAE 75W-90 GL-4 GL-5`, `ISO VG 220`: the text of the label is also the name. */
function label(): Piece {
  const categories = `(?<categories>(?: ${CATEGORY_PATTERN})*)`
  const { pattern, read } = term(
    `(?:(?:SAE )?(?<sae>${SAE_GRADE_PATTERN})|ISO (?<iso>VG [0-9]{1,4}))${categories}`,
    'label',
    ({ sae, iso, categories: listed = '' }) => ({
      grade: iso ?? sae,
      system: sae === undefined ? 'ISO VG' : findSaeSystem(undefined, sae),
      ...(listed !== '' && { categories: listed.trim().split(' ') }),
    }),
  )
  return {
    pattern,
    read: (reading) => {
      const { at } = reading
      const found = read(reading) as object | undefined
      return found && { name: reading.text.slice(at, reading.at), ...found }
    },
  }
}

/** `9.5 EUR`. */
const price = (): Piece =>
  term(`(?<value>${FIGURE_PATTERN}) (?<currency>[A-Z]{3})`, 'price', ({ value, currency }) => ({
    value: Number(value),
    currency,
  }))
const withPrice = (): Piece => optional(', ', field('price', price()))
const count = (): Piece =>
  term('(?<count>0|[1-9][0-9]{0,3}) x ', 'count', (found) => ({ count: Number(found['count']) }))

/** `5 US qt of 80W-90 GL-5`, `2 x 1 L of ISO VG 220, opened 300 mL, 9.5 EUR`. The default number is one. */
const container = (): Piece =>
  sequence(
    { count: 1 },
    optional(count()),
    field('size', quantityOfMeasure('volume')),
    ' of ',
    field('oil', label()),
    optional(', opened ', field('opened', quantityOfMeasure('volume'))),
    withPrice(),
  )

/** A seal, as in a sheet but without sources. */
const seal = (): Piece => purchasableSeal()

/** `3 x flat copper crush washer 14 x 18 x 1.5 mm, part HB-1418`. */
const seals = (): Piece => sequence(count(), field('seal', seal()), withPrice())

const stockNotations = () =>
  makeNotations({
    container,
    label,
    seals,
    sealInStock: seal,
    price,
    quantityVolume: () => quantityOfMeasure('volume'),
    quantityViscosity: () => quantityOfMeasure('kinematicViscosity'),
    quantityDensity: () => quantityOfMeasure('density'),
    quantityCelsius: () => quantity(['degC'], 'temperature', CELSIUS_PATTERN),
  })

export type StockNotationName = keyof ReturnType<typeof stockNotations>

const nameOnly = { name: /* @__PURE__ */ nameFromId() }
const volume = { text: 'quantityVolume' } as const
const viscosity = { text: 'quantityViscosity' } as const

/** The short notation of a stock. */
export const stockNotationTable = /* @__PURE__ */ buildOnce(
  (): PlaceTable<StockNotationName> => ({
    notations: stockNotations(),
    places: {
      defaults: { name: nameFromDocumentId, containers: {}, seals: {} },
      children: {
        containers: each({
          text: 'container',
          defaults: nameOnly,
          children: {
            oil: {
              text: 'label',
              children: {
                kv40: viscosity,
                kv100: viscosity,
                density15: { text: 'quantityDensity' },
                pourPoint: { text: 'quantityCelsius' },
              },
            },
            size: volume,
            opened: volume,
            price: { text: 'price' },
          },
        }),
        seals: each({
          text: 'seals',
          defaults: nameOnly,
          children: { seal: { text: 'sealInStock' }, price: { text: 'price' } },
        }),
      },
    },
  }),
)
