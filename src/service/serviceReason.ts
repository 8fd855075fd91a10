import type { Reason } from '../base/index.js'
import type { ServiceCodes } from './codes.js'

/** A reason of this room, its params checked against its code. */
export function serviceReason<Code extends keyof ServiceCodes & string>(
  code: Code,
  params: ServiceCodes[Code],
): Reason<Code> {
  return { code, params: params as Reason['params'] }
}
