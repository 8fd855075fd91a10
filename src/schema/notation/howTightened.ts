import { TIGHTENED_WITHOUT_FIGURE } from '../../spec/index.js'
import { always, field, oneOf, type Piece, sequence, term, wordOf } from './piece.js'
import { quantityOf } from './quantityNotations.js'
import { FIGURE, ID } from './valuePieces.js'

/** `22.5 N·m with small-click`, `1.5 turns`, `by hand`. */
export const howTightened = (): Piece =>
  oneOf(
    sequence(
      always({ kind: 'torque set' }),
      field('torque', quantityOf('torque')),
      term(` with (?<tool>${ID})`, 'id'),
    ),
    term(`(?<turns>${FIGURE}) turns?`, 'tightening', ({ turns }) => ({
      kind: 'turns',
      turns: Number(turns),
    })),
    wordOf('kind', TIGHTENED_WITHOUT_FIGURE, 'tightening'),
  )
