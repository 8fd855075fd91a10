import type {
  MachineLog,
  Parsed,
  ParseOptions,
  ProcedureDocument,
  ServiceRecord,
  SpecSheet,
  Stock,
  Toolbox,
} from '../spec/index.js'
import { expandShort } from './notation/expandShort.js'
import { logNotationTable } from './notation/logNotationTable.js'
import { recordNotationTable } from './notation/recordNotationTable.js'
import { sheetNotationTable } from './notation/sheetNotationTable.js'
import { stockNotationTable } from './notation/stockNotationTable.js'
import { toolboxNotationTable } from './notation/toolboxNotationTable.js'
import { readDocument, type ShortForms } from './readDocument.js'
import { machineLogShape } from './shapes/machineLogShape.js'
import { procedureShape } from './shapes/procedureShape.js'
import { serviceRecordShape } from './shapes/serviceRecordShape.js'
import { specSheetShape } from './shapes/specSheetShape.js'
import { stockShape } from './shapes/stockShape.js'
import { toolboxShape } from './shapes/toolboxShape.js'

/**
 * Parses foreign data as a spec sheet. For JSON text, use {@link parseDocumentText}, which also reports
 * repeated keys.
 *
 * Method: if there is no mistake, the value is a plain copy; else each mistake is one finding.
 * @param data Any value. It is not changed, and none of its functions is called.
 * @param options `name`: the document's name in findings, such as a file name.
 * @returns The sheet, or all findings with code, severity, document and pointer. Codes: the reading codes of `spec/`,
 * listed in `docs/documents.md`.
 * @throws TypeError if `options` is not an object or has an unknown key, or `options.name` is not a string.
 *
 * Source: house rule, as in the published JSON Schema `spec-sheet`.
 * @example
 * ```ts
 * import { parseSpecSheet } from 'drivetrain-service/v1/spec'
 * // What is wrong with an empty object?
 * console.log(parseSpecSheet({}).findings[0]?.code) // => 'spec/missing-key'
 * ```
 */
export function parseSpecSheet(data: unknown, options: ParseOptions = {}): Parsed<SpecSheet> {
  return readDocument(
    data,
    { 'spec-sheet': specSheetShape },
    options,
    makeShortForms({ 'spec-sheet': sheetNotationTable }),
  )
}

/**
 * Parses foreign data as a machine log. For JSON text, use {@link parseDocumentText}, which also reports
 * repeated keys.
 *
 * Method: if there is no mistake, the value is a plain copy; else each mistake is one finding.
 * @param data Any value. It is not changed, and none of its functions is called.
 * @param options `name`: the document's name in findings, such as a file name.
 * @returns The log, or all findings with code, severity, document and pointer. Codes: the reading codes of `spec/`,
 * listed in `docs/documents.md`.
 * @throws TypeError if `options` is not an object or has an unknown key, or `options.name` is not a string.
 *
 * Source: house rule, as in the published JSON Schema `machine-log`.
 * @example
 * ```ts
 * import { parseMachineLog } from 'drivetrain-service/v1/spec'
 * // What is wrong with an empty object?
 * console.log(parseMachineLog({}).findings[0]?.code) // => 'spec/missing-key'
 * ```
 */
export function parseMachineLog(data: unknown, options: ParseOptions = {}): Parsed<MachineLog> {
  return readDocument(
    data,
    { 'machine-log': machineLogShape },
    options,
    makeShortForms({ 'machine-log': logNotationTable }),
  )
}

/**
 * Parses foreign data as a toolbox. For JSON text, use {@link parseDocumentText}, which also reports repeated
 * keys.
 *
 * Method: if there is no mistake, the value is a plain copy; else each mistake is one finding.
 * @param data Any value. It is not changed, and none of its functions is called.
 * @param options `name`: the document's name in findings, such as a file name.
 * @returns The toolbox, or all findings with code, severity, document and pointer. Codes: the reading codes of `spec/`,
 * listed in `docs/documents.md`.
 * @throws TypeError if `options` is not an object or has an unknown key, or `options.name` is not a string.
 *
 * Source: house rule, as in the published JSON Schema `toolbox`.
 * @example
 * ```ts
 * import { parseToolbox } from 'drivetrain-service/v1/spec'
 * // What is wrong with an empty object?
 * console.log(parseToolbox({}).findings[0]?.code) // => 'spec/missing-key'
 * ```
 */
export function parseToolbox(data: unknown, options: ParseOptions = {}): Parsed<Toolbox> {
  return readDocument(
    data,
    { toolbox: toolboxShape },
    options,
    makeShortForms({ toolbox: toolboxNotationTable }),
  )
}

/**
 * Parses foreign data as a stock document. For JSON text, use {@link parseDocumentText}, which also reports
 * repeated keys.
 *
 * Method: if there is no mistake, the value is a plain copy; else each mistake is one finding.
 * @param data Any value. It is not changed, and none of its functions is called.
 * @param options `name`: the document's name in findings, such as a file name.
 * @returns The stock, or all findings with code, severity, document and pointer. Codes: the reading codes of `spec/`,
 * listed in `docs/documents.md`.
 * @throws TypeError if `options` is not an object or has an unknown key, or `options.name` is not a string.
 *
 * Source: house rule, as in the published JSON Schema `stock`.
 * @example
 * ```ts
 * import { parseStock } from 'drivetrain-service/v1/spec'
 * // What is wrong with an empty object?
 * console.log(parseStock({}).findings[0]?.code) // => 'spec/missing-key'
 * ```
 */
export function parseStock(data: unknown, options: ParseOptions = {}): Parsed<Stock> {
  return readDocument(data, { stock: stockShape }, options, makeShortForms({ stock: stockNotationTable }))
}

/**
 * Parses foreign data as a procedure. For JSON text, use {@link parseDocumentText}, which also reports
 * repeated keys.
 *
 * Method: if there is no mistake, the value is a plain copy; else each mistake is one finding.
 * @param data Any value. It is not changed, and none of its functions is called.
 * @param options `name`: the document's name in findings, such as a file name.
 * @returns The procedure, or all findings with code, severity, document and pointer. Codes: the reading codes of `spec/`,
 * listed in `docs/documents.md`.
 * @throws TypeError if `options` is not an object or has an unknown key, or `options.name` is not a string.
 *
 * Source: house rule, as in the published JSON Schema `procedure`.
 * @example
 * ```ts
 * import { parseProcedure } from 'drivetrain-service/v1/spec'
 * // What is wrong with an empty object?
 * console.log(parseProcedure({}).findings[0]?.code) // => 'spec/missing-key'
 * ```
 */
export function parseProcedure(data: unknown, options: ParseOptions = {}): Parsed<ProcedureDocument> {
  return readDocument(data, { procedure: procedureShape }, options)
}

/**
 * Parses foreign data as a service record. For JSON text, use {@link parseDocumentText}, which also reports
 * repeated keys.
 *
 * Method: if there is no mistake, the value is a plain copy; else each mistake is one finding.
 * @param data Any value. It is not changed, and none of its functions is called.
 * @param options `name`: the document's name in findings, such as a file name.
 * @returns The record, or all findings with code, severity, document and pointer. Codes: the reading codes of `spec/`,
 * listed in `docs/documents.md`.
 * @throws TypeError if `options` is not an object or has an unknown key, or `options.name` is not a string.
 *
 * Source: house rule, as in the published JSON Schema `service-record`.
 * @example
 * ```ts
 * import { parseServiceRecord } from 'drivetrain-service/v1/spec'
 * // What is wrong with an empty object?
 * console.log(parseServiceRecord({}).findings[0]?.code) // => 'spec/missing-key'
 * ```
 */
export function parseServiceRecord(data: unknown, options: ParseOptions = {}): Parsed<ServiceRecord> {
  return readDocument(
    data,
    { 'service-record': serviceRecordShape },
    options,
    makeShortForms({ 'service-record': recordNotationTable }),
  )
}

const makeShortForms = (places: ShortForms['places']): ShortForms => ({ expand: expandShort, places })
