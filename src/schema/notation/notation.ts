import { buildOnce } from '../shapes/makeShape.js'
import type { Piece } from './piece.js'

/** A common spelling, and the right one. */
export type CommonSlip = readonly [written: RegExp, meant: string]

/** A notation: the pieces of its texts, and the texts that it excludes. */
export interface Notation {
  readonly name: string
  readonly piece: () => Piece
  /** Texts that match this are rejected, whatever the pieces accept. */
  readonly forbiddenPattern: string
  readonly forbidden: () => RegExp
  /** Slips that occur only in texts of its documents. */
  readonly slips: readonly CommonSlip[]
}

/** Notations by name, each made at its first use. */
export function makeNotations<Name extends string>(
  pieces: { readonly [NotationName in Name]: () => Piece },
  slips: readonly CommonSlip[] = [],
): { readonly [NotationName in Name]: Notation } {
  const notations = Object.entries<() => Piece>(pieces).map(([name, make]) => {
    // `none` is only for seals, and a place is free text.
    const forbiddenPattern =
      name === 'seal'
        ? FORBIDDEN_PATTERN
        : FORBIDDEN_PATTERN + NONE_PATTERN + (name === 'place' ? NOT_STATED_VARIANTS : '')
    const forbidden = buildOnce(() => new RegExp(forbiddenPattern, 'u'))
    return [name, { name, piece: buildOnce(make), forbiddenPattern, forbidden, slips }]
  })
  return Object.fromEntries(notations)
}

/** The maximum length of a string in short notation; longer values are written in full. */
export const MAX_NOTATION_LENGTH = 300

/** A text has no control characters or line ends, and does not start like an unknown value. */
const FORBIDDEN_PATTERN =
  '[\u0000-\u001f\u007f]|\u2028|\u2029|^(-|–|—|\\?|n/a|N/A|tbd|TBD|nil|unknown|Not [Ss]tated|NOT STATED)( \\[|$)'
const NONE_PATTERN = '|^[Nn]one( \\[|$)'
const NOT_STATED_VARIANTS = '|^not stated([^ ]| [^\\[])'
