import { allNotations, type NotationName } from '../../../../src/schema/notation/allPlaces.js'
import type { Reading } from '../../../../src/schema/notation/piece.js'
import {
  type NotationReading,
  patternOf as patternOfNotation,
  readNotation as readInNotation,
} from '../../../../src/schema/notation/readNotation.js'

export type { NotationName }
export const NOTATIONS = allNotations()
export const NOTATION_NAMES = Object.keys(NOTATIONS) as readonly NotationName[]

export const readNotation = (name: NotationName, text: string, cite?: Reading['cite']): NotationReading =>
  readInNotation(NOTATIONS[name], text, cite)
export const patternOf = (name: NotationName): string => patternOfNotation(NOTATIONS[name])
export const outsideOf = (name: NotationName): string => NOTATIONS[name].outside
