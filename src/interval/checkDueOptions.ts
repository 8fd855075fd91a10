import type { DueOptions } from './dueQuestion.js'
import { requireObject } from './requireObject.js'

/** Throws where an option is missing or out of its range, naming it; there are no defaults to fall back on. */
export function checkDueOptions(options: DueOptions): void {
  requireObject(options, 'options')
  const { soon, staleAfter, severity } = options
  requireObject(soon, 'options.soon')
  requireObject(staleAfter, 'options.staleAfter')
  checkRange('staleAfter.days', 9_007_199_254_740_991, staleAfter.days ?? null)
  if (severity !== 'normal' && severity !== 'severe')
    throw new RangeError(`options.severity is ${severity}; it must be normal or severe`)
  const { hours, days, fraction, distance } = soon
  checkRange('soon.hours', 1e9, hours)
  checkRange('soon.days', 1e7, days)
  checkRange('soon.fraction', 1, fraction)
  if (distance === undefined) return
  if (distance?.unit !== 'km' && distance?.unit !== 'mi')
    throw new RangeError('options.soon.distance must be in km or mi')
  checkRange('soon.distance.value', 9e6, distance.value ?? null)
}

/** What is left out, undefined, is in range. */
function checkRange(name: string, most: number, value: number | null = 0): void {
  if (typeof value === 'number' && value >= 0 && value <= most) return
  const Misuse = typeof value === 'number' ? RangeError : TypeError
  throw new Misuse(`options.${name} is ${value}; it must be a number from 0 to ${most}`)
}
