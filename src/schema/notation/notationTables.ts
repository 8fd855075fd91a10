import type { DocumentName } from '../../spec/index.js'
import { type LogNotation, logNotationTable } from './logNotationTable.js'
import type { PlaceTable } from './placeTable.js'
import { type RecordNotation, recordNotationTable } from './recordNotationTable.js'
import type { SheetNotation } from './sheetNotations.js'
import { sheetNotationTable } from './sheetNotationTable.js'
import { type StockNotation, stockNotationTable } from './stockNotationTable.js'
import { type ToolboxNotation, toolboxNotationTable } from './toolboxNotationTable.js'

/** The place tables of the kinds of document with short notation. */
export const PLACE_TABLES: { readonly [Kind in DocumentName]?: () => PlaceTable } = {
  'spec-sheet': sheetNotationTable,
  'machine-log': logNotationTable,
  toolbox: toolboxNotationTable,
  stock: stockNotationTable,
  'service-record': recordNotationTable,
}

export type NotationName = SheetNotation | RecordNotation | LogNotation | ToolboxNotation | StockNotation
