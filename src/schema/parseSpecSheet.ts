import type { Result } from '../base/index.js'
import type { ParseOptions, SpecSheet } from '../spec/index.js'
import { readDocument } from './readDocument.js'

/**
 * Reads data from elsewhere as a spec sheet: what the manual says about one machine model. For JSON text use {@link parseSpecSheetText}, which also sees
 * repeated keys; where the kind is not known beforehand, {@link parseDocument}.
 *
 * Equation: the value is a fresh plain copy if nothing is wrong; else every mistake is a finding, one each.
 * @param input Anything at all; it is neither changed nor called.
 * @param options `name`: the caller's name for the document, repeated in its findings.
 * @returns The spec sheet, or all findings with code, severity, document and pointer. Codes: the reading codes of `spec/`,
 * listed in the page on documents.
 * @throws TypeError when `options` is no object or `options.name` no string.
 *
 * Source: house rule: the published JSON Schema `spec-sheet` says the same.
 * @example
 * ```ts
 * import { parseSpecSheet } from 'drivetrain-service/v1/spec'
 * // What is wrong with an empty object?
 * console.log(parseSpecSheet({}).findings[0].code) // => 'spec/missing-key'
 * ```
 */
export function parseSpecSheet(input: unknown, options: ParseOptions = {}): Result<SpecSheet> {
  return readDocument(input, ['spec-sheet'], options) as Result<SpecSheet>
}
