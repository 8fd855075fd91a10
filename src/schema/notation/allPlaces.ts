import type { DocumentName } from '../../spec/index.js'
import type { Notation } from './notation.js'
import type { PlaceTable } from './placeTable.js'
import { type RecordNotation, recordPlaces } from './recordPlaces.js'
import type { SheetNotation } from './sheetNotations.js'
import { sheetPlaces } from './sheetPlaces.js'

/** The places of every kind of document that has a short form. */
export const ALL_PLACES: { readonly [Kind in DocumentName]?: () => PlaceTable } = {
  'spec-sheet': sheetPlaces,
  'service-record': recordPlaces,
}

export type NotationName = SheetNotation | RecordNotation

/** The notations of all documents by their names. */
export const allNotations = (): { readonly [Name in NotationName]: Notation } =>
  Object.assign({}, ...Object.values(ALL_PLACES).map((placesOf) => placesOf().notations))
