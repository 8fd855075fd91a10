/** Where the cursor is in a YAML or JSON text, also in one that cannot be read yet because it is being typed. */
export interface CursorPlace {
  /** The keys and list positions around the word at the cursor. For a value, its key is the last. */
  readonly path: readonly string[]
  /** Whether a key or a value is written here. */
  readonly at: 'key' | 'value'
  /** The word from its start to the cursor, without an opening quote. */
  readonly word: string
  /** The column of the key or the value in its line. */
  readonly column: number
  /** Whether it is inside braces or brackets, where a comma ends a word. */
  readonly isFlow: boolean
}

/** A key with its path, and the place of its characters. */
export interface KeyMark {
  readonly path: readonly string[]
  readonly from: number
  readonly to: number
}

/** A key or a list item that is open in a text by its indentation. */
interface Level {
  readonly kind: 'key' | 'item'
  readonly column: number
  readonly token: string
}

/** Braces or brackets that are open, with the key or the position in them. */
interface Bracket {
  readonly isMap: boolean
  readonly token: string | undefined
}

interface Scan {
  readonly keys: readonly KeyMark[]
  readonly place: CursorPlace
}

const SPACES = /[ \t]*/y
const DASH = /-(?=\s|$)/y
const KEY =
  /("(?:[^"\\\n]|\\.)*"|'[^'\n]*'|(?:[^\s#&*!|>'"%@`{}[\],?:-]|[?:-](?=\S))[^\n#:]*?)[ \t]*:(?=\s|$)/y
/** A text over several lines follows. */
const BLOCK_TEXT = /^[|>][+-]?\d?[+-]?\s*(?:#.*)?$/
const FLOW_TOKEN =
  /\s+|#[^\n]*|"(?:[^"\\]|\\.)*"?|'[^']*'?|[{}[\],]|:(?=[\s"'{}[\],]|$)|(?:[^\s{}[\],:]|:(?=[^\s"'{}[\],]))(?:[^\n{}[\],:]|:(?=[^\s"'{}[\],]))*/y

/** The keys of a text, in order. */
export const listKeys = (text: string): readonly KeyMark[] => scan(text).keys

/** The place of the cursor at an offset from 0 to the length of the text. */
export const pathAtCursor = (text: string, offset: number): CursorPlace => scan(text.slice(0, offset)).place

/** Reads a text to its end, where the cursor is. */
function scan(text: string): Scan {
  const keys: KeyMark[] = []
  let levels: readonly Level[] = []
  /** The column of the key of a text over several lines. */
  let blockColumn: number | undefined
  let place: CursorPlace = { path: [], at: 'key', word: '', column: 0, isFlow: false }
  let lineStart = 0
  while (lineStart <= text.length) {
    const newline = text.indexOf('\n', lineStart)
    const lineEnd = newline === -1 ? text.length : newline
    const isLast = newline === -1
    let at = match(SPACES, text, lineStart)
    let column = at - lineStart
    const isBlank = at === lineEnd || text[at] === '#'
    if (blockColumn !== undefined && (isBlank || column > blockColumn)) {
      if (isLast) place = { path: tokensOf(levels), at: 'value', word: '', column, isFlow: false }
      lineStart = lineEnd + 1
      continue
    }
    blockColumn = undefined
    if (isBlank && !isLast) {
      lineStart = lineEnd + 1
      continue
    }
    for (let next = match(DASH, text, at); next > at && at < lineEnd; next = match(DASH, text, at)) {
      levels = addItem(levels, column)
      at = match(SPACES, text, next)
      column = at - lineStart
    }
    KEY.lastIndex = at
    const [whole, quoted = ''] = (at < lineEnd && KEY.exec(text)) || []
    if (whole !== undefined) {
      levels = [...closeLevels(levels, column), { kind: 'key', column, token: unquote(quoted) }]
      keys.push({ path: tokensOf(levels), from: at, to: at + quoted.length })
      at = match(SPACES, text, at + whole.length)
    } else levels = closeLevels(levels, column)
    if (text[at] === '{' || text[at] === '[') {
      const flow = scanFlow(text, at, tokensOf(levels), keys)
      if (flow.place !== undefined) return { keys, place: { ...flow.place, column } }
      const next = text.indexOf('\n', flow.at)
      lineStart = next === -1 ? text.length + 1 : next + 1
      if (next === -1) place = { path: tokensOf(levels), at: 'value', word: '', column, isFlow: false }
      continue
    }
    if (isLast) {
      const word = text.slice(at).replace(/^["']/, '')
      // After a dash a word may become a key; several words are a text.
      const isText = levels.at(-1)?.kind === 'item' && /\s|^\d/.test(word)
      place = {
        path: tokensOf(levels),
        at: whole !== undefined || isText ? 'value' : 'key',
        word,
        column,
        isFlow: false,
      }
    } else if (whole !== undefined && BLOCK_TEXT.test(text.slice(at, lineEnd))) blockColumn = column
    lineStart = lineEnd + 1
  }
  return { keys, place }
}

const tokensOf = (levels: readonly Level[]): readonly string[] => levels.map(({ token }) => token)

function match(pattern: RegExp, text: string, at: number): number {
  pattern.lastIndex = at
  return pattern.test(text) ? pattern.lastIndex : at
}

const unquote = (text: string): string => (/^(["']).*\1$/.test(text) ? text.slice(1, -1) : text)

/** The levels around a key, or a word that may become one, at a column. */
const closeLevels = (levels: readonly Level[], column: number): readonly Level[] =>
  levels.filter((level) => level.column < column)

/** The levels with the next item of the list at a column; a list may begin at the column of its key. */
function addItem(levels: readonly Level[], column: number): readonly Level[] {
  const before = levels.find((level) => level.kind === 'item' && level.column === column)
  const kept = levels.filter(
    (level) => level.column < column || (level.kind === 'key' && level.column === column),
  )
  const token = before === undefined ? '0' : String(Number(before.token) + 1)
  return [...kept, { kind: 'item', column, token }]
}

/** Reads braces or brackets to their end, or to the end of the text: then the cursor is in them. */
function scanFlow(
  text: string,
  start: number,
  path: readonly string[],
  keys: KeyMark[],
): { readonly at: number; readonly place?: Omit<CursorPlace, 'column'> } {
  const brackets: Bracket[] = []
  const pathOf = (): readonly string[] => [
    ...path,
    ...brackets.flatMap(({ token }) => (token === undefined ? [] : [token])),
  ]
  let word: { readonly text: string; readonly from: number; readonly to: number } | undefined
  let at = start
  while (at < text.length) {
    const from = at
    at = Math.max(match(FLOW_TOKEN, text, at), at + 1)
    const token = text.slice(from, at)
    const last = brackets.at(-1)
    if (token === '{' || token === '[')
      brackets.push({ isMap: token === '{', token: token === '{' ? undefined : '0' })
    else if (token === '}' || token === ']') {
      brackets.pop()
      if (brackets.length === 0) return { at }
    } else if (token === ',' && last !== undefined)
      brackets[brackets.length - 1] = {
        ...last,
        token: last.isMap ? undefined : String(Number(last.token) + 1),
      }
    else if (token === ':' && last?.isMap && word !== undefined) {
      brackets[brackets.length - 1] = { ...last, token: unquote(word.text.trim()) }
      keys.push({ path: pathOf(), from: word.from, to: word.from + word.text.trimEnd().length })
    } else if (!/^[\s#]/.test(token)) {
      word = { text: token, from, to: at }
      continue
    } else continue
    word = undefined
  }
  const last = brackets.at(-1)
  const isKey = last?.isMap === true && last.token === undefined
  const typed =
    word === undefined || /\n/.test(text.slice(word.to)) ? '' : text.slice(word.from).replace(/^["']/, '')
  return { at, place: { path: pathOf(), at: isKey ? 'key' : 'value', word: typed, isFlow: true } }
}
