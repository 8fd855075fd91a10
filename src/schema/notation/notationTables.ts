import type { DocumentName } from '../../spec/index.js'
import { type LogNotationName, logNotationTable } from './logNotationTable.js'
import type { PlaceTable } from './placeTable.js'
import { type RecordNotationName, recordNotationTable } from './recordNotationTable.js'
import type { SheetNotationName } from './sheetNotations.js'
import { sheetNotationTable } from './sheetNotationTable.js'
import { type StockNotationName, stockNotationTable } from './stockNotationTable.js'
import { type ToolboxNotationName, toolboxNotationTable } from './toolboxNotationTable.js'

/** The place tables of the kinds of document with short notation. */
export const PLACE_TABLES: { readonly [Kind in DocumentName]?: () => PlaceTable } = {
  'spec-sheet': sheetNotationTable,
  'machine-log': logNotationTable,
  toolbox: toolboxNotationTable,
  stock: stockNotationTable,
  'service-record': recordNotationTable,
}

export type NotationName =
  | SheetNotationName
  | RecordNotationName
  | LogNotationName
  | ToolboxNotationName
  | StockNotationName
