import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import { DRIVE_KINDS } from '../../spec/index.js'
import { buildOnce } from '../shapes/makeShape.js'
import { makeNotations } from './notation.js'
import { afterComma, field, keyedWord, listOf, optional, type Piece, sequence, term } from './piece.js'
import { each, type MakeDefault, nameFromDocumentId, nameFromId, type PlaceTable } from './placeTable.js'
import { day, quantityOfMeasure } from './quantityNotations.js'
import { FIGURE_PATTERN, makePositivePattern, measured, RANGE_PATTERN, WORDS_PATTERN } from './valuePieces.js'

/** `40–200 lbf·in by 1`: the marks of a wrench and the step between them. */
const scale = (): Piece =>
  measured(
    `(?<lowest>${FIGURE_PATTERN})${RANGE_PATTERN}(?<highest>${makePositivePattern(9)})`,
    UNITS_BY_MEASURE.torque,
    'scale',
    ({ unit, lowest, highest, graduation }) => ({
      unit,
      lowest: Number(lowest),
      highest: Number(highest),
      graduation: Number(graduation),
    }),
    ` by (?<graduation>${makePositivePattern(9)})`,
  )

/**
 * `700 mL by 10`, `50–1000 mL by 10`: the highest mark and the step; the lowest mark, if it is not the first
 * step.
 */
const vessel = (): Piece =>
  measured(
    `((?<lowest>${FIGURE_PATTERN})${RANGE_PATTERN})?(?<size>${FIGURE_PATTERN})`,
    UNITS_BY_MEASURE.volume,
    'vessel',
    ({ lowest, size, step, unit }) => {
      const makeMark = (figure: string | undefined) => ({ value: Number(figure), unit })
      return {
        size: makeMark(size),
        graduation: makeMark(step),
        ...(lowest !== undefined && { lowestMark: makeMark(lowest) }),
      }
    },
    ` by (?<step>${FIGURE_PATTERN})`,
  )

const iso6789 = { kind: 'ISO 6789' }

/** `ISO 6789`, `4 % of reading`, `3 % of full scale`; at most 50. */
const accuracy = (): Piece =>
  term(
    '(?:ISO 6789|(?<percent>[1-9](?:\\.[0-9]{1,6})?|[1-4][0-9](?:\\.[0-9]{1,6})?|50|0\\.[0-9]{0,5}[1-9]) % (?<kind>of reading|of full scale))',
    'accuracy',
    ({ percent, kind }) => (kind === undefined ? { ...iso6789 } : { kind, percent: Number(percent) }),
  )

/**
 * `40–200 lbf·in by 1, click, 1/4 in`, then accuracy, `lever 240 mm` and `calibrated 2023-02-11, 310 cycles
 * since`.
 */
const wrench = (): Piece =>
  sequence(
    { accuracy: iso6789 },
    field('scales', listOf(scale(), ' and ')),
    ', ',
    keyedWord('type', ['click', 'dial', 'beam', 'electronic'], 'type of wrench'),
    term(`, (?<drive>${WORDS_PATTERN})`, 'square drive'),
    afterComma(field('accuracy', accuracy())),
    optional(', lever ', field('leverLength', quantityOfMeasure('length'))),
    optional(
      ', calibrated ',
      field(
        'calibration',
        sequence(
          day('date'),
          optional(
            term(', (?<cycles>0|[1-9][0-9]{0,8}) cycles since', undefined, ({ cycles }) => ({
              cyclesSince: Number(cycles),
            })),
          ),
        ),
      ),
    ),
  )

/** `internal hex 8 mm, 3/8 in`: the fastener that it fits, and the square drive of a socket or bit. */
const socket = (): Piece =>
  sequence(
    keyedWord('fits', DRIVE_KINDS, 'drive'),
    optional(term(` (?<size>${WORDS_PATTERN})`)),
    optional(term(`, (?<drive>${WORDS_PATTERN})`)),
  )

/** `2 x 1000 kg`: the number of stands or ramps, and the rated load of one. */
const stands = (): Piece =>
  sequence(
    term('(?<count>[1-9][0-9]{0,3}) x ', 'count', ({ count }) => ({ count: Number(count) })),
    field('rating', quantityOfMeasure('mass')),
  )

const toolboxNotations = () =>
  makeNotations({
    wrench,
    scale,
    accuracy,
    socket,
    vessel,
    stands,
    quantityTorque: () => quantityOfMeasure('torque'),
    quantityVolume: () => quantityOfMeasure('volume'),
    quantityLength: () => quantityOfMeasure('length'),
    quantityMass: () => quantityOfMeasure('mass'),
  })

export type ToolboxNotationName = keyof ReturnType<typeof toolboxNotations>

/** `internal hex 8 mm`: the id adds nothing to it. */
const socketName: MakeDefault = ({ holder: { fits, size } }) =>
  typeof fits === 'string' ? [fits, size].filter((word) => typeof word === 'string').join(' ') : undefined

const nameOnly = { defaults: { name: /* @__PURE__ */ nameFromId() } }
const torque = { text: 'quantityTorque' } as const
const volume = { text: 'quantityVolume' } as const
const length = { text: 'quantityLength' } as const
const mass = { text: 'quantityMass' } as const
const stand = { text: 'stands', ...nameOnly, children: { rating: mass } } as const

/** The short notation of a toolbox. The default accuracy of a wrench is ISO 6789. */
export const toolboxNotationTable = /* @__PURE__ */ buildOnce(
  (): PlaceTable<ToolboxNotationName> => ({
    notations: toolboxNotations(),
    places: {
      defaults: {
        name: nameFromDocumentId,
        wrenches: {},
        sockets: {},
        vessels: {},
        pans: {},
        fillers: {},
        stands: {},
      },
      children: {
        wrenches: each({
          text: 'wrench',
          defaults: { name: nameFromId('wrench'), accuracy: iso6789 },
          children: {
            scales: { textKey: '[]', ...each({ text: 'scale' }) },
            accuracy: { text: 'accuracy' },
            declaredRange: { children: { min: torque, max: torque } },
            leverLength: length,
          },
        }),
        adaptors: each({ ...nameOnly, children: { extension: length } }),
        sockets: each({ text: 'socket', defaults: { name: socketName } }),
        vessels: each({
          text: 'vessel',
          ...nameOnly,
          children: { size: volume, graduation: volume, lowestMark: volume },
        }),
        pans: each({ textKey: 'size', ...nameOnly, children: { size: volume } }),
        fillers: each({
          ...nameOnly,
          children: {
            funnel: { children: { diameter: length, depth: length } },
            hose: { children: { bore: length, length, drop: length } },
          },
        }),
        stands: each(stand),
        ramps: each(stand),
        jacks: each({ textKey: 'rating', ...nameOnly, children: { rating: mass } }),
      },
    },
  }),
)
