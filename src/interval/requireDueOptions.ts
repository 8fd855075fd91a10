import { refuse, requireKnownKeys } from '../base/index.js'
import type { DueOptions } from './intervalFacts.js'

const OPTION_KEYS: readonly string[] = ['soon', 'staleAfter', 'severity']

/** Throws, naming the option, if one is missing, unknown or out of range; there are no defaults. */
export function requireDueOptions(options: DueOptions, known = OPTION_KEYS): void {
  requireKnownKeys('options', options, known)
  const { soon, staleAfter, severity } = options
  requireKnownKeys('options.soon', soon, ['hours', 'distance', 'days', 'fraction'])
  requireKnownKeys('options.staleAfter', staleAfter, ['days'])
  requireRange('staleAfter.days', 2 ** 53 - 1, staleAfter.days)
  if (severity !== 'normal' && severity !== 'severe')
    throw refuse('options.severity', severity, 'normal or severe', 'string')
  // An omitted option counts as in range.
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
