import type {
  DocumentReference,
  Finding,
  FindingOf,
  JsonPointer,
  Params,
  Reason,
  Severity,
} from './finding.js'

/** Makes findings of one module; the compiler checks the params of each code. */
export type FindingMaker<Codes extends object> = <Code extends keyof Codes & string>(
  code: Code,
  severity: Severity,
  document: DocumentReference,
  path: JsonPointer,
  params: Codes[Code],
  details?: Pick<FindingOf, 'related' | 'cures'>,
) => Finding<Pick<Codes, Code>>

/** A finding as plain data. Each module's `codes.ts` narrows it to the codes of that module. */
export function makeFinding(
  code: string,
  severity: Severity,
  document: DocumentReference,
  path: JsonPointer,
  params: unknown,
  details: Pick<FindingOf, 'related' | 'cures'> = {},
): Finding {
  return { code, severity, document, path, params: params as Params, ...details }
}

/** Makes reasons of one module; the compiler checks the params of each code. */
export type ReasonMaker<Codes> = <Code extends keyof Codes & string>(
  code: Code,
  params: Codes[Code],
) => Reason<Code>

/** A reason as plain data. Each module's `codes.ts` narrows it to the codes of that module. */
export function makeReason<Code extends string>(code: Code, params: unknown): Reason<Code> {
  return { code, params: params as Params }
}
