import type { Cure, DocumentReference, Finding, FindingOf, JsonPointer } from '../base/index.js'
import type { SpecCodes } from '../spec/index.js'

/** One mistake found while a document is read, its params checked against the room's codes. */
export function reportMistake<Code extends keyof SpecCodes>(
  document: DocumentReference,
  path: JsonPointer,
  code: Code,
  params: SpecCodes[Code],
  cures: readonly Cure[] = [],
): Finding<SpecCodes> {
  const finding: FindingOf<Code, SpecCodes[Code]> = {
    code,
    severity: 'error',
    document,
    path,
    params,
    ...(cures.length === 0 ? {} : { cures }),
  }
  // The compiler does not follow one code of many through a generic.
  return finding as Finding<SpecCodes>
}
