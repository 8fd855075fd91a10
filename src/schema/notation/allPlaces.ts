import type { DocumentName } from '../../spec/index.js'
import { type LogNotation, logPlaces } from './logPlaces.js'
import type { PlaceTable } from './placeTable.js'
import { type RecordNotation, recordPlaces } from './recordPlaces.js'
import type { SheetNotation } from './sheetNotations.js'
import { sheetPlaces } from './sheetPlaces.js'
import { type StockNotation, stockPlaces } from './stockPlaces.js'
import { type ToolboxNotation, toolboxPlaces } from './toolboxPlaces.js'

/** The place tables of the kinds of document with short notation. */
export const PLACE_TABLES: { readonly [Kind in DocumentName]?: () => PlaceTable } = {
  'spec-sheet': sheetPlaces,
  'machine-log': logPlaces,
  toolbox: toolboxPlaces,
  stock: stockPlaces,
  'service-record': recordPlaces,
}

export type NotationName = SheetNotation | RecordNotation | LogNotation | ToolboxNotation | StockNotation
