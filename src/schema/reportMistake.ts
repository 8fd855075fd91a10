import {
  type Cure,
  type DocumentReference,
  dropUndefined,
  type Finding,
  type JsonPointer,
} from '../base/index.js'
import type { SpecCodes } from '../spec/index.js'

/** Params of a code, where undefined means a key that is left out. */
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
    // The compiler does not follow one code of many through a generic.
    return {
      code,
      severity: 'error',
      document,
      path,
      params: dropUndefined(params),
      ...(cure && { cures: [cure] }),
    } as Finding<SpecCodes>
  }
}
