import type { PrintedValue } from '../../spec/index.js'

/** Whether a printed value has any figure: limits that no parser has seen may have neither end. */
export function hasFigure(printed: PrintedValue): boolean {
  return printed.kind !== 'limits' || printed.min !== undefined || printed.max !== undefined
}
