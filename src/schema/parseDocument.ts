import type { DocumentName, Documents, Parsed, ParseOptions } from '../spec/index.js'
import { expandShort } from './notation/expandShort.js'
import { PLACE_TABLES } from './notation/notationTables.js'
import { readDocument } from './readDocument.js'
import { chooseShapes } from './shapes/documentShapes.js'

/** The document of a kind; for `any`, one of the six. */
export type DocumentOf<Kind extends DocumentName | 'any'> = Documents[Kind extends DocumentName
  ? Kind
  : DocumentName]

/**
 * Parses foreign data as a document of the given kind, or of the kind that it names. For JSON text, use
 * {@link parseDocumentText}, which also reports repeated keys. For a smaller bundle, use the function for one
 * kind, such as {@link parseSpecSheet}.
 *
 * Method: if there is no mistake, the value is a plain copy; else each mistake is one finding.
 * @param kind One of the six kinds, or `any`.
 * @param data Any value. It is not changed, and none of its functions is called.
 * @param options `name`: the document's name in findings, such as a file name.
 * @returns The document, or all findings with code, severity, document and pointer. Codes: the reading codes of `spec/`,
 * listed in `docs/documents.md`.
 * @throws TypeError if `options` is not an object or has an unknown key, or `options.name` is not a string; RangeError for
 * another `kind`.
 *
 * Source: house rule, as in the published JSON Schemas.
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
): Parsed<DocumentOf<Kind>> {
  return readDocument(data, chooseShapes(kind), options, {
    expand: expandShort,
    places: PLACE_TABLES,
  }) as Parsed<DocumentOf<Kind>>
}
