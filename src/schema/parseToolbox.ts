import type { Result } from '../base/index.js'
import type { ParseOptions, Toolbox } from '../spec/index.js'
import { readDocument } from './readDocument.js'

/**
 * Reads data from elsewhere as a toolbox: what the workshop has to work with. For JSON text use {@link parseToolboxText}, which also sees
 * repeated keys; where the kind is not known beforehand, {@link parseDocument}.
 *
 * Equation: the value is a fresh plain copy if nothing is wrong; else every mistake is a finding, one each.
 * @param input Anything at all; it is neither changed nor called.
 * @param options `name`: the caller's name for the document, repeated in its findings.
 * @returns The toolbox, or all findings with code, severity, document and pointer. Codes: the reading codes of `spec/`,
 * listed in the page on documents.
 * @throws TypeError when `options` is no object or `options.name` no string.
 *
 * Source: house rule: the published JSON Schema `toolbox` says the same.
 * @example
 * ```ts
 * import { parseToolbox } from 'drivetrain-service/v1/spec'
 * // What is wrong with an empty object?
 * console.log(parseToolbox({}).findings[0].code) // => 'spec/missing-key'
 * ```
 */
export function parseToolbox(input: unknown, options: ParseOptions = {}): Result<Toolbox> {
  return readDocument(input, ['toolbox'], options) as Result<Toolbox>
}
