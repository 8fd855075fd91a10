import type { DocumentReference, FindingOf, JsonPointer, Severity } from '../base/index.js'
import type { ServiceCodes } from './codes.js'

/** A finding of this room, its params checked against its code. */
export function serviceFinding<Code extends keyof ServiceCodes & string>(
  code: Code,
  severity: Severity,
  document: DocumentReference,
  path: JsonPointer,
  params: ServiceCodes[Code],
): FindingOf<Code> {
  return { code, severity, document, path, params: params as unknown as FindingOf['params'] }
}
