import type { MachineLog } from './machineLog.js'
import type { ProcedureDocument } from './procedureDocument.js'
import type { ServiceRecord } from './serviceRecord.js'
import type { SpecSheet } from './specSheet.js'
import type { Stock } from './stock.js'
import type { Toolbox } from './toolbox.js'

/** The six documents by their kind. */
export interface Documents {
  readonly 'spec-sheet': SpecSheet
  readonly 'machine-log': MachineLog
  readonly toolbox: Toolbox
  readonly stock: Stock
  readonly procedure: ProcedureDocument
  readonly 'service-record': ServiceRecord
}

/** The kind that a document names in its first line. */
export type DocumentName = keyof Documents

/** Any of the six; see `kind`. */
export type AnyDocument = Documents[DocumentName]

/** The kinds that can be read, in the order in which they are listed to people. */
export const DOCUMENT_NAMES: readonly DocumentName[] = [
  'spec-sheet',
  'machine-log',
  'toolbox',
  'stock',
  'procedure',
  'service-record',
]

/** The versions that can be read. */
export const READABLE_VERSIONS: readonly string[] = ['1.0']

/** How a document is called in its findings. */
export interface ParseOptions {
  /** The caller's own name for the document, such as a file name. */
  readonly name?: string
}
