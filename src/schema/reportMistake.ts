import type { DocumentReference, Finding, Fix, JsonPointer } from '../base/index.js'
import { dropUndefined } from '../base/index.js'
import type { SpecCodes } from '../spec/index.js'

/** Params of a code; undefined means that the key is omitted. */
type UndefinedIfOptional<CodeParams> = {
  readonly [Key in keyof CodeParams]:
    | CodeParams[Key]
    | (object extends Pick<CodeParams, Key> ? undefined : never)
}
export type MistakeParams<Code extends keyof SpecCodes> = UndefinedIfOptional<SpecCodes[Code]>

/** Makes the finding for a mistake in the document. */
export type ReportMistake = <Code extends keyof SpecCodes>(
  path: JsonPointer,
  code: Code,
  params: MistakeParams<Code>,
  fix?: Fix | undefined,
) => Finding<SpecCodes>

export function createMistakeReporter(document: DocumentReference): ReportMistake {
  return (path, code, params, fix) => {
    // The compiler cannot match a generic code with its params.
    return {
      code,
      severity: 'error',
      document,
      path,
      params: dropUndefined(params),
      ...(fix && { cures: [fix] }),
    } as Finding<SpecCodes>
  }
}
