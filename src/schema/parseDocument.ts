import type { Result } from '../base/index.js'
import type { DocumentName, Documents, ParseOptions, SpecCodes } from '../spec/index.js'
import { readDocument } from './readDocument.js'
import { chooseShapes } from './shapes/documentShapes.js'

/** The document of a kind; of `any` kind it is one of the six, and its `kind` says which. */
export type DocumentOf<Kind extends DocumentName | 'any'> = Documents[Kind extends DocumentName
  ? Kind
  : DocumentName]

/**
 * Reads data from elsewhere as a document of one kind, or of the kind that it names. For JSON text use
 * {@link parseDocumentText}, which also reports repeated keys. A function of one kind, such as {@link parseSpecSheet},
 * makes a smaller bundle.
 *
 * Equation: the value is a fresh plain copy if nothing is wrong; else every mistake is a finding, one each.
 * @param kind One of the six kinds, or `any`.
 * @param data Anything at all; it is neither changed nor called.
 * @param options `name`: the caller's name for the document, repeated in its findings.
 * @returns The document, or all findings with code, severity, document and pointer. Codes: the reading codes of `spec/`,
 * listed in the page on documents.
 * @throws TypeError when `options` is not an object, has an unknown key or `options.name` is not a string; RangeError when
 * `kind` is none of these.
 *
 * Source: house rule: the published JSON Schemas say the same.
 * @example
 * ```ts
 * import { parseDocument } from 'drivetrain-service/v1/spec'
 * // Which kind did the writer mean?
 * const [first] = parseDocument('any', { kind: 'spec sheet', version: '1.0' }).findings
 * if (first?.code === 'spec/wrong-kind') console.log(first.params.didYouMean) // => 'spec-sheet'
 * ```
 */
export function parseDocument<const Kind extends DocumentName | 'any'>(
  kind: Kind,
  data: unknown,
  options: ParseOptions = {},
): Result<DocumentOf<Kind>, SpecCodes> {
  return readDocument(data, chooseShapes(kind), options) as Result<DocumentOf<Kind>, SpecCodes>
}
