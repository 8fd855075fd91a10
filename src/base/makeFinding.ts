import type { DocumentReference, Finding, FindingOf, JsonPointer, Params, Severity } from './finding.js'

/** Writes findings of one room: the compiler checks params by code. */
export type FindingMaker<Codes extends object> = <Code extends keyof Codes & string>(
  code: Code,
  severity: Severity,
  document: DocumentReference,
  path: JsonPointer,
  params: Codes[Code],
  more?: Pick<FindingOf, 'related' | 'cures'>,
) => Finding<Pick<Codes, Code>>

/** A finding as plain data; each room's `codes.ts` gives it the room's own codes. */
export function makeFinding(
  code: string,
  severity: Severity,
  document: DocumentReference,
  path: JsonPointer,
  params: unknown,
  more: Pick<FindingOf, 'related' | 'cures'> = {},
): Finding {
  return { code, severity, document, path, params: params as Params, ...more }
}
