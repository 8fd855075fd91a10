import { shown } from '../base/index.js'
import { isDate } from '../calendar/index.js'
import type { Circumstances } from './rule.js'

/** Throws for circumstances that no caller can mean. */
export function requireCircumstances(circumstances: Circumstances): void {
  if (typeof circumstances !== 'object' || circumstances === null)
    throw new TypeError('circumstances: an object is wanted')
  const { today } = circumstances
  if (today !== undefined && !isDate(today))
    throw new RangeError(`circumstances.today: a date YYYY-MM-DD is wanted, not ${shown(today)}`)
}
