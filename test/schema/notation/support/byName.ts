import { buildPattern as patternOfNotation } from '../../../../src/schema/notation/buildPattern.js'
import type { Notation } from '../../../../src/schema/notation/notation.js'
import { type NotationName, PLACE_TABLES } from '../../../../src/schema/notation/notationTables.js'
import type { Reading } from '../../../../src/schema/notation/piece.js'
import {
  type NotationReading,
  readNotation as readInNotation,
} from '../../../../src/schema/notation/readNotation.js'

export type { NotationName }
export const NOTATIONS: { readonly [Name in NotationName]: Notation } = Object.assign(
  {},
  ...Object.values(PLACE_TABLES).map((placesOf) => placesOf().notations),
)
export const NOTATION_NAMES = Object.keys(NOTATIONS) as readonly NotationName[]

export const readNotation = (name: NotationName, text: string, cite?: Reading['cite']): NotationReading =>
  readInNotation(NOTATIONS[name], text, cite)
export const patternOf = (name: NotationName): string => patternOfNotation(NOTATIONS[name])
export const outsideOf = (name: NotationName): string => NOTATIONS[name].forbiddenPattern
