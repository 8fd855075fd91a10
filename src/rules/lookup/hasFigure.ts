import type { PrintedValue } from '../../spec/index.js'

/** Whether a printed value has a figure; limits that were not parsed may lack both. */
export function hasFigure(printed: PrintedValue): boolean {
  return printed.kind !== 'limits' || printed.min !== undefined || printed.max !== undefined
}
