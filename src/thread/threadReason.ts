import type { Reason } from '../base/index.js'
import type { ThreadCodes } from './codes.js'

/** A reason of this room; the compiler holds code and params together. */
export function threadReason<Code extends keyof ThreadCodes>(
  code: Code,
  params: ThreadCodes[Code],
): Reason<Code> {
  return { code, params }
}
