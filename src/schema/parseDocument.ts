import type { Result } from '../base/index.js'
import { type AnyDocument, DOCUMENT_NAMES, type ParseOptions } from '../spec/index.js'
import { readDocument } from './readDocument.js'

/**
 * Reads data from elsewhere as whichever of the six documents its `kind` says. Where the kind is known, use the
 * function of that kind, such as {@link parseSpecSheet}: it also says so when another kind was handed in.
 *
 * Equation: `kind` picks the shape; the value is a fresh plain copy if nothing is wrong, else every mistake is a finding.
 * @param input Anything at all; it is neither changed nor called.
 * @param options `name`: the caller's name for the document, repeated in its findings.
 * @returns The document, or all findings with code, severity, document and pointer.
 * @throws TypeError when `options` is no object or `options.name` no string.
 *
 * Source: house rule: the published JSON Schemas say the same.
 * @example
 * ```ts
 * import { parseDocument } from 'drivetrain-service/v1/spec'
 * // Which kind did the writer mean?
 * console.log(parseDocument({ kind: 'spec sheet', version: '1.0' }).findings[0].params.didYouMean) // => 'spec-sheet'
 * ```
 */
export function parseDocument(input: unknown, options: ParseOptions = {}): Result<AnyDocument> {
  return readDocument(input, DOCUMENT_NAMES, options)
}
