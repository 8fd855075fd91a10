import { type Measure, UNITS_BY_MEASURE } from '../../quantity/index.js'
import { buildOnce } from '../shapes/makeShape.js'
import { drive, interval, oils, place, seal, severeUse, tightening, window } from './leafNotations.js'
import {
  access,
  axle,
  bolts,
  condition,
  documentSource,
  emptying,
  fasteners,
  fill,
  filterHold,
  level,
  method,
  oilSpace,
  support,
  uses,
  variant,
} from './partNotations.js'
import type { Piece } from './piece.js'
import { amount, amountOf, sourceText, value } from './valuePieces.js'

const ofMeasure = (measure: Measure) => () => value(amountOf(measure, UNITS_BY_MEASURE[measure]))

/** Every notation by its name, each made at its first use. */
const makeNotations = () =>
  ({
    volume: ofMeasure('volume'),
    length: ofMeasure('length'),
    temperature: ofMeasure('temperature'),
    mass: ofMeasure('mass'),
    minutes: () => value(amount('duration', ['min'])),
    tightening,
    oils,
    seal,
    interval,
    window,
    place,
    severeUse,
    access,
    oilSpace,
    fill,
    method,
    level,
    uses,
    emptying,
    filterHold,
    drive,
    fasteners,
    bolts,
    condition,
    variant,
    support,
    axle,
    documentSource,
    source: sourceText,
  }) satisfies { readonly [name: string]: () => Piece }

export type NotationName = keyof ReturnType<typeof makeNotations>
export const NOTATION_NAMES = /* @__PURE__ */ Object.keys(
  /* @__PURE__ */ makeNotations(),
) as readonly NotationName[]

const made = /* @__PURE__ */ buildOnce(() => new Map<NotationName, Piece>())

export function notationOf(name: NotationName): Piece {
  const known = made().get(name)
  if (known !== undefined) return known
  const piece = makeNotations()[name]()
  made().set(name, piece)
  return piece
}

/** Characters of a text in short notation; what is longer is written in full. */
export const MAX_NOTATION_LENGTH = 300

/** No text has control characters or line ends, and none begins as a value that is not known. */
const OUTSIDE =
  '[\u0000-\u001f\u007f]|\u2028|\u2029|^(-|–|—|\\?|n/a|N/A|tbd|TBD|nil|unknown|Not [Ss]tated|NOT STATED)( \\[|$)'
const NONE = '|^[Nn]one( \\[|$)'
const NEARLY_NOT_STATED = '|^not stated([^ ]| [^\\[])'

/** What no text of a notation matches, whatever else its pattern says. `none` is for seals alone, and a place is free text. */
export const outsideOf = (name: NotationName): string =>
  name === 'seal' ? OUTSIDE : OUTSIDE + NONE + (name === 'place' ? NEARLY_NOT_STATED : '')
