import { buildOnce } from '../shapes/makeShape.js'
import type { Piece } from './piece.js'

/** What people write, and what is meant. */
export type Slip = readonly [written: RegExp, meant: string]

/** A notation: what its texts are made of, and what none of them is. */
export interface Notation {
  readonly name: string
  readonly piece: () => Piece
  /** What no text matches, whatever else the pattern says. */
  readonly outside: string
  /** Slips that only texts of its documents have. */
  readonly slips: readonly Slip[]
}

/** Notations by their names, each made at its first use. */
export function makeNotations<Name extends string>(
  pieces: { readonly [Each in Name]: () => Piece },
  slips: readonly Slip[] = [],
): { readonly [Each in Name]: Notation } {
  const made = Object.entries<() => Piece>(pieces).map(([name, make]) => {
    // `none` is for seals alone, and a place is free text.
    const outside = name === 'seal' ? OUTSIDE : OUTSIDE + NONE + (name === 'place' ? NEARLY_NOT_STATED : '')
    return [name, { name, piece: buildOnce(make), outside, slips }]
  })
  return Object.fromEntries(made)
}

/** Characters of a text in short notation; what is longer is written in full. */
export const MAX_NOTATION_LENGTH = 300

/** No text has control characters or line ends, and none begins as a value that is not known. */
const OUTSIDE =
  '[\u0000-\u001f\u007f]|\u2028|\u2029|^(-|–|—|\\?|n/a|N/A|tbd|TBD|nil|unknown|Not [Ss]tated|NOT STATED)( \\[|$)'
const NONE = '|^[Nn]one( \\[|$)'
const NEARLY_NOT_STATED = '|^not stated([^ ]| [^\\[])'
