import type { Result } from '../base/index.js'
import type { SpecCodes } from './codes.js'
import type { WrittenPlaces } from './findWritten.js'
import type { MachineLog } from './machineLog.js'
import type { ProcedureDocument } from './procedureDocument.js'
import type { ServiceRecord } from './serviceRecord.js'
import type { SpecSheet } from './specSheet.js'
import type { Stock } from './stock.js'
import type { Toolbox } from './toolbox.js'

/** The six kinds of document. */
export interface Documents {
  readonly 'spec-sheet': SpecSheet
  readonly 'machine-log': MachineLog
  readonly toolbox: Toolbox
  readonly stock: Stock
  readonly procedure: ProcedureDocument
  readonly 'service-record': ServiceRecord
}

/** The `kind` of a document. */
export type DocumentName = keyof Documents

/** A document of any kind. */
export type AnyDocument = Documents[DocumentName]

/** The kinds, in the order shown to users. */
export const DOCUMENT_NAMES: readonly DocumentName[] = [
  'spec-sheet',
  'machine-log',
  'toolbox',
  'stock',
  'procedure',
  'service-record',
]

/** The readable versions. */
export const READABLE_VERSIONS: readonly string[] = ['1.0']

/** Options of the parse functions. */
export interface ParseOptions {
  /** The document's name in findings, such as a file name. */
  readonly name?: string
}

/**
 * A parsed document. `places` is present if it uses short notation: where each part of the full form was
 * written.
 */
export type Parsed<T> = Result<T, SpecCodes> & { readonly places?: WrittenPlaces }
