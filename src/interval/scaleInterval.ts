import type { Reason } from '../base/index.js'
import type { IntervalDistance, IntervalStated, Resolved } from '../spec/index.js'
import { scaleLimits } from './chooseLimits.js'
import { readLimits } from './readLimits.js'

/**
 * An interval times a severe-use factor, each printed distance for itself; undefined if it is not stated, or if a
 * period would not be whole months and days. It is rounded like the limits of {@link computeDue}.
 */
export function scaleInterval(
  resolved: Resolved<{ readonly kind: string }>,
  factor: string,
): IntervalStated | undefined {
  if (resolved.kind !== 'stated' || resolved.value.kind !== 'interval') return undefined
  const { hours, distance, period } = resolved.value as IntervalStated
  const missing: Reason[] = []
  const scale = (limit: Omit<IntervalStated, 'kind'>) =>
    scaleLimits(readLimits({ kind: 'interval', ...limit }, 'repeat'), factor, missing)
  const scaleDistance = ({ value, unit }: IntervalDistance) => ({
    value: String(scale({ distance: { value, unit } }).distance?.printed?.value),
    unit,
  })
  const limit = hours === undefined ? undefined : scale({ hours }).hours?.printed
  const quantity = period === undefined ? undefined : scale({ period }).period?.asQuantity
  if (missing.length > 0) return undefined
  return {
    kind: 'interval',
    ...(limit && { hours: String(limit.value) }),
    ...(distance && {
      distance: {
        ...scaleDistance(distance),
        ...(distance.printed && { printed: distance.printed.map(scaleDistance) }),
      },
    }),
    ...(quantity && 'period' in quantity && { period: quantity.period }),
  }
}
