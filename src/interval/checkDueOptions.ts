import type { DueOptions } from './dueQuestion.js'
import { COUNTS_PER_UNIT } from './meterCount.js'

/** Throws where an option is missing or out of its range, naming it; there are no defaults to fall back on. */
export function checkDueOptions(options: DueOptions): void {
  if (typeof options !== 'object' || options === null) throw new TypeError('options must be an object')
  const { soon, staleAfter, severity } = options
  if (typeof soon !== 'object' || soon === null)
    throw new TypeError('options.soon is required; {} where nothing counts as soon')
  if (typeof staleAfter !== 'object' || staleAfter === null)
    throw new TypeError('options.staleAfter is required')
  checkRange(staleAfter.days, 'staleAfter.days', Number.MAX_SAFE_INTEGER)
  if (severity !== 'normal' && severity !== 'severe')
    throw new RangeError(`options.severity is ${String(severity)}; it must be normal or severe`)
  if (soon.hours !== undefined) checkRange(soon.hours, 'soon.hours', 1e9)
  if (soon.days !== undefined) checkRange(soon.days, 'soon.days', 1e7)
  if (soon.fraction !== undefined) checkRange(soon.fraction, 'soon.fraction', 1)
  if (soon.distance !== undefined) {
    if (soon.distance?.unit !== 'km' && soon.distance?.unit !== 'mi')
      throw new RangeError(
        `options.soon.distance must be in ${Object.keys(COUNTS_PER_UNIT).slice(1).join(' or ')}`,
      )
    checkRange(soon.distance.value, 'soon.distance.value', 9e6)
  }
}

function checkRange(value: unknown, name: string, most: number): void {
  if (typeof value !== 'number') throw new TypeError(`options.${name} must be a number, not ${typeof value}`)
  if (!(value >= 0 && value <= most))
    throw new RangeError(`options.${name} is ${value}; it must be from 0 to ${most}`)
}
