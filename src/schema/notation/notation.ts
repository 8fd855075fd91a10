import { buildOnce } from '../shapes/makeShape.js'
import type { Piece } from './piece.js'

/** What people write, and what is meant. */
export type Slip = readonly [written: RegExp, meant: string]

/** A notation: what its texts are made of, and what none of them is. */
export interface Notation {
  readonly name: string
  readonly piece: () => Piece
  /** What no text matches, whatever else the pattern says. */
  readonly forbiddenPattern: string
  /** Slips that only texts of its documents have. */
  readonly slips: readonly Slip[]
}

/** Notations by their names, each made at its first use. */
export function makeNotations<Name extends string>(
  pieces: { readonly [NotationName in Name]: () => Piece },
  slips: readonly Slip[] = [],
): { readonly [NotationName in Name]: Notation } {
  const notations = Object.entries<() => Piece>(pieces).map(([name, make]) => {
    // `none` is for seals alone, and a place is free text.
    const forbiddenPattern =
      name === 'seal'
        ? FORBIDDEN_PATTERN
        : FORBIDDEN_PATTERN + NONE_PATTERN + (name === 'place' ? NOT_STATED_VARIANTS : '')
    return [name, { name, piece: buildOnce(make), forbiddenPattern, slips }]
  })
  return Object.fromEntries(notations)
}

/** Characters of a text in short notation; what is longer is written in full. */
export const MAX_NOTATION_LENGTH = 300

/** No text has control characters or line ends, and none begins as a value that is not known. */
const FORBIDDEN_PATTERN =
  '[\u0000-\u001f\u007f]|\u2028|\u2029|^(-|–|—|\\?|n/a|N/A|tbd|TBD|nil|unknown|Not [Ss]tated|NOT STATED)( \\[|$)'
const NONE_PATTERN = '|^[Nn]one( \\[|$)'
const NOT_STATED_VARIANTS = '|^not stated([^ ]| [^\\[])'
