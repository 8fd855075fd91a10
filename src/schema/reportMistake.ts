import type { Cure, DocumentReference, Finding, JsonPointer } from '../base/index.js'
import type { SpecCodes } from '../spec/index.js'

/** Params of a code, where undefined stands for a key that is left out. */
type WithOptionalKeys<Given> = {
  readonly [Key in keyof Given]: Given[Key] | (object extends Pick<Given, Key> ? undefined : never)
}
export type MistakeParams<Code extends keyof SpecCodes> = WithOptionalKeys<SpecCodes[Code]>

/** Makes the finding of one mistake in the document that is read; params are checked against the room's codes. */
export type ReportMistake = <Code extends keyof SpecCodes>(
  path: JsonPointer,
  code: Code,
  params: MistakeParams<Code>,
  cure?: Cure | undefined,
) => Finding<SpecCodes>

export function reportMistakesOf(document: DocumentReference): ReportMistake {
  return (path, code, params, cure) => {
    const given = Object.entries(params).filter(([, value]) => value !== undefined)
    // The compiler does not follow one code of many through a generic.
    return {
      code,
      severity: 'error',
      document,
      path,
      params: Object.fromEntries(given),
      ...(cure && { cures: [cure] }),
    } as Finding<SpecCodes>
  }
}
