import type { Filter } from './filter.js'

/** Whether an oil change needs a new filter; if the manual does not say, a strainer is cleaned and a filter renewed. */
export function isFilterRenewed({ kind, change }: Filter): boolean {
  return change === 'every change' || (change === 'not stated' && kind !== 'strainer')
}
