import { refuse, requireKnownKeys } from '../base/index.js'
import type { DueOptions } from './intervalFacts.js'

const OPTIONS: readonly string[] = ['soon', 'staleAfter', 'severity']
const SOON = ['hours', 'distance', 'days', 'fraction']
const DAYS = ['days']

/** Throws where an option is missing, unknown or out of its range, naming it; there are no defaults. */
export function requireDueOptions(options: DueOptions, known = OPTIONS): void {
  requireKnownKeys('options', options, known)
  const { soon, staleAfter, severity } = options
  requireKnownKeys('options.soon', soon, SOON)
  requireKnownKeys('options.staleAfter', staleAfter, DAYS)
  requireRange('staleAfter.days', 9_007_199_254_740_991, staleAfter.days)
  if (severity !== 'normal' && severity !== 'severe')
    throw refuse('options.severity', severity, 'normal or severe', 'string')
  // An omitted option is in range.
  const { hours = 0, days = 0, fraction = 0, distance } = soon
  requireRange('soon.hours', 1e9, hours)
  requireRange('soon.days', 1e7, days)
  requireRange('soon.fraction', 1, fraction)
  if (distance === undefined) return
  const unit = distance?.unit
  if (unit !== 'km' && unit !== 'mi') throw refuse('options.soon.distance.unit', unit, 'km or mi', 'string')
  requireRange('soon.distance.value', 9e6, distance.value)
}

function requireRange(name: string, maximum: number, value: number): void {
  if (!(typeof value === 'number' && value >= 0 && value <= maximum))
    throw refuse(`options.${name}`, value, `a number from 0 to ${maximum}`, 'number')
}
