import type { Fill, Id } from '../../spec/index.js'

/** The opening that the fill method names. */
export function findFillOpening({ method }: Fill): Id | undefined {
  return method.kind === 'not stated' ? undefined : method.opening
}
