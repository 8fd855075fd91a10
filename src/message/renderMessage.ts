import type { Param, Params } from '../base/index.js'
import type { Messages, Say } from './catalogue.js'
import { cleanText } from './cleanText.js'
import { makeSay, showPlainly } from './makeSay.js'

type AnyText = (params: Params, say: Say) => string

const MAX_DEPTH = 32

/**
 * Throws TypeError if the value is not a catalogue. Its texts are not checked: a faulty text falls back to a
 * plain line.
 */
export function requireCatalogue(catalogue: Messages): void {
  const texts: unknown = catalogue?.texts
  if (typeof texts !== 'object' || texts === null)
    throw new TypeError('catalogue must be a language of the library, such as `en` of /v1/message/en')
}

/** Cleans foreign strings at any depth; a value that is not JSON becomes the name of its type. */
function cleanParam(value: unknown, parents: readonly object[]): Param {
  if (typeof value === 'string') return cleanText(value)
  if (typeof value === 'number' || typeof value === 'boolean' || value === null) return value
  if (typeof value !== 'object') return `(${typeof value})`
  if (parents.length > MAX_DEPTH || parents.includes(value)) return '…'
  const innerParents = [...parents, value]
  if (Array.isArray(value)) return value.map((item) => cleanParam(item, innerParents))
  const entries = Object.entries(value).filter(([, item]) => item !== undefined)
  return Object.fromEntries(entries.map(([key, item]) => [cleanText(key), cleanParam(item, innerParents)]))
}

/** Writes code and params unchanged, for an unknown code or params that do not fit it. */
function renderPlainly(code: string, params: Params): string {
  const paramTexts = Object.entries(params).map(([name, value]) => `${name}: ${showPlainly(value)}`)
  return paramTexts.length === 0 ? cleanText(code) : `${cleanText(code)} (${paramTexts.join(', ')})`
}

/**
 * Writes a finding or a reason as a sentence: the mistake or reason, and what to do. For all reasons of a
 * result use {@link explain}.
 *
 * @param message - a finding or a reason: its `code` chooses the text, its `params` fill it
 * @param catalogue - the language; import it from `/v1/message/en` and the like
 * @returns one line of text, without markup or line breaks, whatever the params contain; for an unknown code, the code
 *   and its params
 * @throws TypeError if `catalogue` is not a catalogue, or `message.code` is not a string
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
  catalogue: Messages,
): string {
  requireCatalogue(catalogue)
  if (typeof message?.code !== 'string') throw new TypeError('message.code must be a string')
  return renderCode(catalogue, message.code, cleanParam(message.params ?? {}, []) as Params, 0)
}

function renderCode(catalogue: Messages, code: string, params: Params, depth: number): string {
  if (depth > MAX_DEPTH || !Object.hasOwn(catalogue.texts, code)) return renderPlainly(code, params)
  const text = (catalogue.texts as unknown as Readonly<Record<string, AnyText>>)[code]
  const say = makeSay(catalogue, (innerCode, innerParams) =>
    renderCode(catalogue, innerCode, innerParams, depth + 1),
  )
  try {
    const written = text?.(params, say)
    return typeof written === 'string' ? written.replace(/[\r\n\t]+/g, ' ') : renderPlainly(code, params)
  } catch {
    // The params do not fit the code, for example in a finding read from a file.
    return renderPlainly(code, params)
  }
}
