import { type Measure, UNITS_BY_MEASURE, type Unit } from '../../quantity/index.js'
import { type NotationPart, TIGHTENED_WITHOUT_FIGURE } from '../../spec/index.js'
import { field, keyedWord, oneOf, type Piece, sequence, someOf, term } from './piece.js'
import {
  DATE_PATTERN,
  FIGURE_PATTERN,
  FRACTION_PATTERN,
  fractionToDecimal,
  ID,
  measured,
} from './valuePieces.js'

// Measured quantities of logs, toolboxes, stocks and records: a JSON number with its unit. A figure in short
// notation has at most 15 digits, so it equals the number exactly.

export const quantity = (
  units: readonly Unit[],
  expected: NotationPart,
  figure = `((?<fraction>${FRACTION_PATTERN})|(?<value>${FIGURE_PATTERN}))`,
): Piece =>
  measured(figure, units, expected, ({ fraction, value, unit }) => ({
    value: Number(fraction === undefined ? value : fractionToDecimal(fraction)),
    unit,
  }))
export const quantityOfMeasure = (measure: Measure): Piece => quantity(UNITS_BY_MEASURE[measure], measure)
/** `85 min`, `1.5 h`: the duration of work. */
export const workingTime = (): Piece => quantity(['min', 'h'], 'duration')
export const hours = (): Piece => quantity(['h'], 'hours')

/** A date under this key. */
export const day = (key: string): Piece => term(`(?<${key}>${DATE_PATTERN})`, 'date')

/** `512.6 h, 4410 km`: meter readings, at least one. */
export const readings = (units = UNITS_BY_MEASURE.distance): Piece =>
  someOf([field('hours', hours()), field('distance', quantity(units, 'distance'))], ', ')

/** `22.5 N·m with small-click`, `1.5 turns`, `by hand`. */
export const recordedTightening = (): Piece =>
  oneOf(
    sequence(
      { kind: 'torque set' },
      field('torque', quantityOfMeasure('torque')),
      term(` with (?<tool>${ID})`, 'id'),
    ),
    term(`(?<turns>${FIGURE_PATTERN}) turns?`, 'tightening', ({ turns }) => ({
      kind: 'turns',
      turns: Number(turns),
    })),
    keyedWord('kind', TIGHTENED_WITHOUT_FIGURE, 'tightening'),
  )
