import type { Cure, DocumentReference, FindingOf, JsonPointer } from '../base/index.js'
import type { SpecCodes } from '../spec/index.js'

/** One mistake found while a document is read, its params checked against the room's codes. */
export function reportMistake<Code extends keyof SpecCodes>(
  document: DocumentReference,
  path: JsonPointer,
  code: Code,
  params: SpecCodes[Code],
  cures: readonly Cure[] = [],
): FindingOf<Code> {
  return {
    code,
    severity: 'error',
    document,
    path,
    params: params as FindingOf['params'],
    ...(cures.length === 0 ? {} : { cures }),
  }
}
