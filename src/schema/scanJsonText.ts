import { MAX_DEPTH, MAX_KEYS, MAX_VALUES } from '../base/index.js'
import type { ExpectedJson } from '../spec/index.js'

/** The errors in a JSON text. */
export interface JsonScan {
  /** The first syntax error. */
  readonly syntaxError?: { readonly offset: number; readonly needs: ExpectedJson }
  /** Repeated keys of an object. */
  readonly repeatedKeys: readonly { readonly tokens: readonly (string | number)[]; readonly key: string }[]
  /** The path that is nested too deep; the scan stops there. */
  readonly tooDeep?: { readonly tokens: readonly (string | number)[] }
  /** The limit that the number of values, or of keys of one object, exceeds; the scan stops there. */
  readonly tooLarge?: number
}

interface OpenContainer {
  /** Keys so far; absent for a list. */
  readonly keys?: Set<string>
  token: string | number
}

const NUMBER_PATTERN = /-?(0|[1-9][0-9]*)(\.[0-9]+)?([eE][+-]?[0-9]+)?/y

/**
 * Scans JSON text once, without recursion. Finds repeated keys, which JSON.parse silently drops, and the
 * position of a syntax error, which every engine reports differently.
 * Source: RFC 8259 (2017), sections 2 to 7.
 */
export function scanJsonText(text: string): JsonScan {
  const repeatedKeys: { tokens: readonly (string | number)[]; key: string }[] = []
  const openContainers: OpenContainer[] = []
  const tokens = (): (string | number)[] => openContainers.map((openContainer) => openContainer.token)
  let at = skipSpace(text, 0)
  let values = 0
  let expected: 'value' | 'value or ]' | 'key' | 'key or }' | 'after value' = 'value'
  const syntaxError = (offset: number, needs: ExpectedJson): JsonScan => ({
    syntaxError: { offset, needs },
    repeatedKeys,
  })

  for (;;) {
    const openContainer = openContainers.at(-1)
    const character = text[at]
    if (expected === 'after value') {
      if (openContainer === undefined) return at < text.length ? syntaxError(at, 'end') : { repeatedKeys }
      const closingChar = openContainer.keys === undefined ? ']' : '}'
      if (character === closingChar) {
        openContainers.pop()
      } else if (character === ',') {
        if (typeof openContainer.token === 'number') openContainer.token += 1
        expected = openContainer.keys === undefined ? 'value' : 'key'
      } else return syntaxError(at, closingChar === ']' ? 'comma-or-bracket' : 'comma-or-brace')
      at = skipSpace(text, at + 1)
    } else if (
      (expected === 'value or ]' && character === ']') ||
      (expected === 'key or }' && character === '}')
    ) {
      openContainers.pop()
      expected = 'after value'
      at = skipSpace(text, at + 1)
    } else if (expected === 'key' || expected === 'key or }') {
      if (character !== '"' || openContainer?.keys === undefined) return syntaxError(at, 'key')
      const end = findEndOfString(text, at)
      if (typeof end !== 'number') return { ...end, repeatedKeys }
      const key = readKey(text.slice(at, end))
      openContainer.token = key
      if (openContainer.keys.has(key)) repeatedKeys.push({ tokens: tokens(), key })
      openContainer.keys.add(key)
      if (openContainer.keys.size > MAX_KEYS) return { repeatedKeys, tooLarge: MAX_KEYS }
      at = skipSpace(text, end)
      if (text[at] !== ':') return syntaxError(at, 'colon')
      at = skipSpace(text, at + 1)
      expected = 'value'
    } else if (++values > MAX_VALUES) return { repeatedKeys, tooLarge: MAX_VALUES }
    else if (character === '{' || character === '[') {
      if (openContainers.length >= MAX_DEPTH) return { repeatedKeys, tooDeep: { tokens: tokens() } }
      openContainers.push(character === '{' ? { keys: new Set(), token: '' } : { token: 0 })
      expected = character === '{' ? 'key or }' : 'value or ]'
      at = skipSpace(text, at + 1)
    } else {
      const end = character === '"' ? findEndOfString(text, at) : findEndOfWord(text, at)
      if (typeof end !== 'number') return { ...end, repeatedKeys }
      expected = 'after value'
      at = skipSpace(text, end)
    }
  }
}

function skipSpace(text: string, from: number): number {
  let at = from
  while (text[at] === ' ' || text[at] === '\n' || text[at] === '\r' || text[at] === '\t') at += 1
  return at
}

type ScanError = Required<Pick<JsonScan, 'syntaxError'>>

function findEndOfWord(text: string, from: number): number | ScanError {
  for (const word of ['true', 'false', 'null']) if (text.startsWith(word, from)) return from + word.length
  NUMBER_PATTERN.lastIndex = from
  return NUMBER_PATTERN.test(text)
    ? NUMBER_PATTERN.lastIndex
    : { syntaxError: { offset: from, needs: 'value' } }
}

function findEndOfString(text: string, from: number): number | ScanError {
  let at = from + 1
  for (; at < text.length; at++) {
    const code = text.charCodeAt(at)
    if (code === 0x22) return at + 1
    if (code < 0x20) return { syntaxError: { offset: at, needs: 'no-control-character' } }
    if (code !== 0x5c) continue
    const escaped = /^(["\\/bfnrt]|u[0-9a-fA-F]{4})/.exec(text.slice(at + 1, at + 6))
    if (escaped === null) return { syntaxError: { offset: at, needs: 'escape' } }
    at += escaped[0].length
  }
  return { syntaxError: { offset: text.length, needs: 'closing-quote' } }
}

function readKey(quotedKey: string): string {
  return quotedKey.includes('\\') ? String(JSON.parse(quotedKey)) : quotedKey.slice(1, -1)
}
