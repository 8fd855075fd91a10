import type { Result } from '../base/index.js'
import type { MachineLog, ParseOptions } from '../spec/index.js'
import { readDocument } from './readDocument.js'

/**
 * Reads data from elsewhere as a machine log: one machine's history. For JSON text use {@link parseMachineLogText}, which also sees
 * repeated keys; where the kind is not known beforehand, {@link parseDocument}.
 *
 * Equation: the value is a fresh plain copy if nothing is wrong; else every mistake is a finding, one each.
 * @param input Anything at all; it is neither changed nor called.
 * @param options `name`: the caller's name for the document, repeated in its findings.
 * @returns The machine log, or all findings with code, severity, document and pointer. Codes: the reading codes of `spec/`,
 * listed in the page on documents.
 * @throws TypeError when `options` is no object or `options.name` no string.
 *
 * Source: house rule: the published JSON Schema `machine-log` says the same.
 * @example
 * ```ts
 * import { parseMachineLog } from 'drivetrain-service/v1/spec'
 * // What is wrong with an empty object?
 * console.log(parseMachineLog({}).findings[0].code) // => 'spec/missing-key'
 * ```
 */
export function parseMachineLog(input: unknown, options: ParseOptions = {}): Result<MachineLog> {
  return readDocument(input, ['machine-log'], options) as Result<MachineLog>
}
