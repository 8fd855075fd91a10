import type { PrintedValue } from '../../spec/index.js'

/**
 * Whether a printed value holds any figure at all: limits may be empty, which a rule of its own complains of.
 */
export function hasFigure(printed: PrintedValue): boolean {
  return printed.kind !== 'limits' || printed.min !== undefined || printed.max !== undefined
}
