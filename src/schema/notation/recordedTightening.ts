import { TIGHTENED_WITHOUT_FIGURE } from '../../spec/index.js'
import { field, fixedValue, keyedWord, oneOf, type Piece, sequence, term } from './piece.js'
import { quantityOfMeasure } from './quantityNotations.js'
import { FIGURE_PATTERN, ID } from './valuePieces.js'

/** `22.5 N·m with small-click`, `1.5 turns`, `by hand`. */
export const recordedTightening = (): Piece =>
  oneOf(
    sequence(
      fixedValue({ kind: 'torque set' }),
      field('torque', quantityOfMeasure('torque')),
      term(` with (?<tool>${ID})`, 'id'),
    ),
    term(`(?<turns>${FIGURE_PATTERN}) turns?`, 'tightening', ({ turns }) => ({
      kind: 'turns',
      turns: Number(turns),
    })),
    keyedWord('kind', TIGHTENED_WITHOUT_FIGURE, 'tightening'),
  )
