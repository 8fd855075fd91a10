import type { Reason } from '../base/index.js'
import type { TorqueCodes } from './codes.js'

/** A reason of this room; the compiler holds code and params together. Internal. */
export function torqueReason<Code extends keyof TorqueCodes>(
  code: Code,
  params: TorqueCodes[Code],
): Reason<Code> {
  return { code, params }
}
