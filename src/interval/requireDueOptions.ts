import { refuse } from '../base/index.js'
import type { DueOptions } from './dueQuestion.js'
import { requireObject } from './requireObject.js'

/** Throws where an option is missing or out of its range, naming it; there are no defaults to fall back on. */
export function checkDueOptions(options: DueOptions): void {
  requireObject('options', options)
  const { soon, staleAfter, severity } = options
  requireObject('options.soon', soon)
  requireObject('options.staleAfter', staleAfter)
  checkRange('staleAfter.days', 9_007_199_254_740_991, staleAfter.days)
  if (severity !== 'normal' && severity !== 'severe')
    throw refuse('options.severity', severity, 'normal or severe', 'string')
  // What is left out is in range.
  const { hours = 0, days = 0, fraction = 0, distance } = soon
  checkRange('soon.hours', 1e9, hours)
  checkRange('soon.days', 1e7, days)
  checkRange('soon.fraction', 1, fraction)
  if (distance === undefined) return
  const unit = distance?.unit
  if (unit !== 'km' && unit !== 'mi') throw refuse('options.soon.distance.unit', unit, 'km or mi', 'string')
  checkRange('soon.distance.value', 9e6, distance.value)
}

function checkRange(name: string, most: number, value: number): void {
  if (!(typeof value === 'number' && value >= 0 && value <= most))
    throw refuse(`options.${name}`, value, `a number from 0 to ${most}`, 'number')
}
