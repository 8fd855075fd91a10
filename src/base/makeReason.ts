import type { Params, Reason } from './finding.js'

/** Makes reasons of one room; the compiler checks the params of each code. */
export type ReasonMaker<Codes> = <Code extends keyof Codes & string>(
  code: Code,
  params: Codes[Code],
) => Reason<Code>

/** A reason as plain data. Each room's `codes.ts` narrows it to the codes of that room. */
export function makeReason<Code extends string>(code: Code, params: unknown): Reason<Code> {
  return { code, params: params as Params }
}
