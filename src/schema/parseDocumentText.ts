import type { Result } from '../base/index.js'
import { type AnyDocument, DOCUMENT_NAMES, type ParseOptions } from '../spec/index.js'
import { readDocumentText } from './readDocumentText.js'

/**
 * Reads a JSON text as whichever of the six documents its `kind` says. For data already parsed use
 * {@link parseDocument}.
 *
 * Equation: the text is scanned once for repeated keys and for where it breaks off, then read as data.
 * @param text A JSON text; a byte order mark before it is passed over.
 * @param options `name`: the caller's name for the document, repeated in its findings.
 * @returns The document, or all findings; also `spec/not-json` and `spec/duplicate-key`.
 * @throws TypeError when `text` is no string, `options` no object or `options.name` no string.
 *
 * Source: RFC 8259 (2017); repeated keys are refused by house rule, since a reader drops all but one in silence.
 * @example
 * ```ts
 * import { parseDocumentText } from 'drivetrain-service/v1/spec'
 * // Where does this text break off?
 * console.log(parseDocumentText('{"kind": "stock",}').findings[0].params.column) // => 18
 * ```
 */
export function parseDocumentText(text: string, options: ParseOptions = {}): Result<AnyDocument> {
  return readDocumentText(text, DOCUMENT_NAMES, options)
}
