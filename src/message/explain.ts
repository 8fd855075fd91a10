import type { Reason } from '../base/index.js'
import type { Messages } from './catalogue.js'
import { renderMessage, requireCatalogue } from './renderMessage.js'

const isReason = (value: unknown): value is Reason =>
  typeof value === 'object' &&
  value !== null &&
  typeof (value as Partial<Reason>).code === 'string' &&
  typeof (value as Partial<Reason>).params === 'object' &&
  (value as Partial<Reason>).params !== null

/**
 * Writes the reasons of a result as lines of text. It finds reasons and findings at any depth, and returns
 * each text once, in order.
 *
 * @param result - any result of this library: plain JSON
 * @param catalogue - the language
 * @returns one line for each reason; an empty list for a result without reasons
 * @throws TypeError if `result` is not an object or array, or `catalogue` is not a catalogue
 *
 * @example
 * ```ts
 * // Why is there no answer?
 * import { explain } from 'drivetrain-service/v1'
 * import { en } from 'drivetrain-service/v1/message/en'
 * explain({ verdict: 'no', reasons: [{ code: 'calendar/not-a-date', params: { text: 'soon' } }] }, en)
 * // => ['“soon” is not a calendar date. Write year, month and day as in 2031-01-12.']
 * ```
 */
export function explain(result: unknown, catalogue: Messages): string[] {
  if (typeof result !== 'object' || result === null) {
    throw new TypeError(`result must be an object, not ${result === null ? 'null' : typeof result}`)
  }
  requireCatalogue(catalogue)
  const lines = new Set<string>()
  const seen = new Set<object>()
  const pending: unknown[] = [result]
  while (pending.length > 0) {
    const value = pending.pop()
    if (typeof value !== 'object' || value === null || seen.has(value)) continue
    seen.add(value)
    if (isReason(value)) lines.add(renderMessage(value, catalogue))
    // Push one by one: a long list would exceed the number of arguments of a call.
    else for (const child of Object.values(value).reverse()) pending.push(child)
  }
  return [...lines]
}
