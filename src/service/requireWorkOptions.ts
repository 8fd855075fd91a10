import { quoteValue } from '../base/index.js'

/** Throws if the options for judging wrenches or for raising the machine are wrong. */
export function requireWorkOptions({
  iso6789,
  tolerancePercent,
  raiseOn,
}: {
  readonly iso6789: string
  readonly tolerancePercent?: number
  readonly raiseOn?: string
}): void {
  if (iso6789 !== '2017' && iso6789 !== '2003')
    throw new RangeError(`options.iso6789 must be '2017' or '2003', got ${quoteValue(iso6789)}`)
  if (raiseOn !== undefined && raiseOn !== 'stands' && raiseOn !== 'ramps')
    throw new RangeError(`options.raiseOn must be 'stands' or 'ramps', got ${quoteValue(raiseOn)}`)
  if (tolerancePercent === undefined) return
  if (typeof tolerancePercent !== 'number') throw new TypeError('options.tolerancePercent must be a number')
  if (!(tolerancePercent > 0 && tolerancePercent < 100))
    throw new RangeError(`options.tolerancePercent must be above 0 and below 100, got ${tolerancePercent}`)
}
