import type { Result } from '../base/index.js'
import type { ParseOptions, ServiceRecord } from '../spec/index.js'
import { readDocument } from './readDocument.js'

/**
 * Reads data from elsewhere as a service record: what was done at one visit. For JSON text use {@link parseServiceRecordText}, which also sees
 * repeated keys; where the kind is not known beforehand, {@link parseDocument}.
 *
 * Equation: the value is a fresh plain copy if nothing is wrong; else every mistake is a finding, one each.
 * @param input Anything at all; it is neither changed nor called.
 * @param options `name`: the caller's name for the document, repeated in its findings.
 * @returns The service record, or all findings with code, severity, document and pointer. Codes: the reading codes of `spec/`,
 * listed in the page on documents.
 * @throws TypeError when `options` is no object or `options.name` no string.
 *
 * Source: house rule: the published JSON Schema `service-record` says the same.
 * @example
 * ```ts
 * import { parseServiceRecord } from 'drivetrain-service/v1/spec'
 * // What is wrong with an empty object?
 * console.log(parseServiceRecord({}).findings[0].code) // => 'spec/missing-key'
 * ```
 */
export function parseServiceRecord(input: unknown, options: ParseOptions = {}): Result<ServiceRecord> {
  return readDocument(input, ['service-record'], options) as Result<ServiceRecord>
}
