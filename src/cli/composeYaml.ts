import { Composer, type CST, type Document, Lexer, type LineCounter, type ParsedNode, Parser } from 'yaml'

/** In characters; reading YAML takes many times as long as JSON. */
export const MAX_YAML_LENGTH = 2_000_000

/**
 * Marks are texts, signs, spaces and line ends. The YAML reader takes up to 2 µs and half a kilobyte for each: this many
 * keep within one second and 300 MB. A large spec sheet has about 10,000.
 */
export const MAX_YAML_MARKS = 400_000

export type ComposedYaml =
  | { readonly document: Document.Parsed<ParsedNode> }
  | { readonly limit: 'length' | 'marks' | 'depth' }

/**
 * Composes the nodes of a YAML or JSON text within limits of length, depth and marks. `onProblem` gets each
 * syntax error; it may throw to stop.
 */
export function composeYaml(text: string, lineCounter: LineCounter, onProblem: ReportProblem): ComposedYaml {
  if (text.length > MAX_YAML_LENGTH) return { limit: 'length' }
  if (isNestedTooDeep(text)) return { limit: 'depth' }
  const composer = new Composer({ uniqueKeys: false, version: '1.2', lineCounter, prettyErrors: false })
  // The reader would collect an Error with its stack for each of a million mistakes.
  Object.assign(composer, {
    onError: (place: ErrorPlace, _code: string, message: string, isWarning?: boolean) => {
      if (isWarning !== true) onProblem(findOffset(place), message)
    },
  })
  let document: Document.Parsed<ParsedNode> | undefined
  try {
    for (const next of composer.compose(readTokens(text, lineCounter, onProblem), true, text.length))
      if (document === undefined) document = next as Document.Parsed<ParsedNode>
      else {
        onProblem(next.range[0], 'more than one document in the text')
        break
      }
  } catch (error) {
    if (error instanceof TooManyMarks) return { limit: 'marks' }
    throw error
  }
  if (document === undefined) throw new Error('the YAML reader gave no document')
  const [error] = document.errors
  if (error !== undefined) onProblem(error.pos[0], error.message)
  return { document }
}

type ReportProblem = (offset: number, message: string) => void
/** A place as the YAML reader gives it: an offset, a range, or a token. */
type ErrorPlace = number | readonly number[] | { readonly offset: number }

function findOffset(place: ErrorPlace): number {
  return typeof place === 'number' ? place : 'offset' in place ? place.offset : (place[0] ?? 0)
}

class TooManyMarks extends Error {}

function* readTokens(text: string, lineCounter: LineCounter, onProblem: ReportProblem): Generator<CST.Token> {
  lineCounter.addNewLine(0)
  const parser = new Parser(lineCounter.addNewLine)
  let marks = 0
  for (const mark of new Lexer().lex(text)) {
    marks += 1
    if (marks > MAX_YAML_MARKS) throw new TooManyMarks()
    yield* withoutErrors(parser.next(mark), onProblem)
  }
  yield* withoutErrors(parser.end(), onProblem)
}

function* withoutErrors(tokens: Iterable<CST.Token>, onProblem: ReportProblem): Generator<CST.Token> {
  for (const token of tokens)
    if (token.type === 'error') onProblem(token.offset, token.message)
    else yield token
}

/** Documents have at most 32 levels; the YAML reader handles many more than 500. */
const MAX_LEVELS = 500

/**
 * Whether a text is nested too deep for the YAML reader, which is recursive. The levels are estimated without parsing, from
 * open brackets (also those in quotes) and the indentation of lines.
 */
function isNestedTooDeep(text: string): boolean {
  let depth = 0
  let indent = 0
  let isLineStart = true
  for (let index = 0; index < text.length; index++) {
    const code = text.charCodeAt(index)
    if (code === NEW_LINE) {
      isLineStart = true
      indent = 0
    } else if (isLineStart && INDENT_CHARACTERS.has(code)) {
      indent += 1
      if (indent > 2 * MAX_LEVELS) return true
    } else {
      isLineStart = false
      if (code === OPEN_LIST || code === OPEN_OBJECT) depth += 1
      else if (code === CLOSE_LIST || code === CLOSE_OBJECT) depth = Math.max(0, depth - 1)
      if (depth > MAX_LEVELS) return true
    }
  }
  return false
}

const NEW_LINE = 0x0a
const OPEN_LIST = 0x5b
const CLOSE_LIST = 0x5d
const OPEN_OBJECT = 0x7b
const CLOSE_OBJECT = 0x7d
/** Space, tab, `-`, `:` and `?`: characters before a value at the start of a line. */
const INDENT_CHARACTERS: ReadonlySet<number> = /* @__PURE__ */ new Set([0x20, 0x09, 0x2d, 0x3a, 0x3f])
