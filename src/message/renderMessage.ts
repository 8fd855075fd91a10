import type { Param, Params } from '../base/index.js'
import type { Catalogue, Say } from './catalogue.js'
import { cleanText } from './cleanText.js'
import { makeSay, sayPlainly } from './makeSay.js'

type LooseText = (params: Params, say: Say) => string

const MAX_DEPTH = 32

/** Throws TypeError for anything but a catalogue. Its texts are not checked: a bad one gives a plain line. */
export function requireCatalogue(catalogue: Catalogue): void {
  const texts: unknown = catalogue?.texts
  if (typeof texts !== 'object' || texts === null)
    throw new TypeError('catalogue must be a language of the library, such as `en` of /v1/message/en')
}

/** Cleans foreign strings, at any depth, before a text uses them; what is not JSON is named, not read. */
function cleanParam(value: unknown, above: readonly object[]): Param {
  if (typeof value === 'string') return cleanText(value)
  if (typeof value === 'number' || typeof value === 'boolean' || value === null) return value
  if (typeof value !== 'object') return `(${typeof value})`
  if (above.length > MAX_DEPTH || above.includes(value)) return '…'
  const within = [...above, value]
  if (Array.isArray(value)) return value.map((item) => cleanParam(item, within))
  const kept = Object.entries(value).filter(([, item]) => item !== undefined)
  return Object.fromEntries(kept.map(([key, item]) => [cleanText(key), cleanParam(item, within)]))
}

/** Code and params as they are, for an unknown code or params that do not belong to it. */
function renderPlainly(code: string, params: Params): string {
  const named = Object.entries(params).map(([name, value]) => `${name}: ${sayPlainly(value)}`)
  return named.length === 0 ? cleanText(code) : `${cleanText(code)} (${named.join(', ')})`
}

/**
 * The sentence for a finding or a reason: what is wrong, or why, and what to do. For all reasons of a result at once use
 * {@link explain}.
 *
 * @param message - a finding or a reason: its `code` chooses the text, its `params` fill it
 * @param catalogue - the language; import it from `/v1/message/en` and the like
 * @returns one line of text, without markup or line breaks, whatever the params hold; an unknown code is
 *   printed as itself with its params
 * @throws TypeError when `catalogue` is none, or `message.code` is not a string
 *
 * @example
 * ```ts
 * // What does this finding say?
 * import { renderMessage } from 'drivetrain-service/v1'
 * import { en } from 'drivetrain-service/v1/message/en'
 * renderMessage({ code: 'calendar/not-a-date', params: { text: '2031-02-30' } }, en)
 * // => '“2031-02-30” is not a calendar date. Write year, month and day as in 2031-01-12.'
 * ```
 */
export function renderMessage(
  message: { readonly code: string; readonly params: object },
  catalogue: Catalogue,
): string {
  requireCatalogue(catalogue)
  if (typeof message?.code !== 'string') throw new TypeError('message.code must be a string')
  return renderCode(catalogue, message.code, cleanParam(message.params ?? {}, []) as Params, 0)
}

function renderCode(catalogue: Catalogue, code: string, params: Params, depth: number): string {
  if (depth > MAX_DEPTH || !Object.hasOwn(catalogue.texts, code)) return renderPlainly(code, params)
  const text = (catalogue.texts as unknown as Readonly<Record<string, LooseText>>)[code]
  const say = makeSay(catalogue, (within, its) => renderCode(catalogue, within, its, depth + 1))
  try {
    const written = text?.(params, say)
    return typeof written === 'string' ? written.replace(/[\r\n\t]+/g, ' ') : renderPlainly(code, params)
  } catch {
    // Params that do not belong to the code, as in a finding read from a file.
    return renderPlainly(code, params)
  }
}
