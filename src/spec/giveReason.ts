import type { Reason } from '../base/index.js'
import type { SpecCodes } from './codes.js'

/** A reason of this room, its params checked against the room's codes. */
export function giveReason<Code extends keyof SpecCodes>(code: Code, params: SpecCodes[Code]): Reason<Code> {
  return { code, params: params as Reason['params'] }
}
