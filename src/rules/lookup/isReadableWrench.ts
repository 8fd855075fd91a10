import type { TorqueWrench } from '../../spec/index.js'
import { isReadableScale } from './isReadableScale.js'

/** Beyond it the torque room refuses a figure as misuse, in whatever unit it is. */
const MOST = 1e9

/**
 * Whether a wrench's entry makes sense enough to be judged; the toolbox's own rules say what is wrong with
 * it.
 */
export function isReadableWrench({ scales, accuracy, declaredRange }: TorqueWrench): boolean {
  const isWithinReach = (value: number) => value > 0 && value <= MOST
  const isBelieved = accuracy.kind === 'ISO 6789' || accuracy.percent < 100
  return (
    isBelieved &&
    scales.every(isReadableScale) &&
    isWithinReach(declaredRange?.max.value ?? 1) &&
    (declaredRange?.min.value ?? 0) <= MOST
  )
}
