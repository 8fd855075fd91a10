import type { Params, Reason } from './finding.js'

/** Writes reasons of one room: the compiler checks params by code. */
export type ReasonMaker<Codes> = <Code extends keyof Codes & string>(
  code: Code,
  params: Codes[Code],
) => Reason<Code>

/** A reason as plain data; each room's `codes.ts` gives it the room's own codes. */
export function makeReason<Code extends string>(code: Code, params: unknown): Reason<Code> {
  return { code, params: params as Params }
}
