import type { Pair, ParsedNode } from 'yaml'
import { isMap, isScalar, isSeq, LineCounter, parseDocument, Scalar, visit } from 'yaml'
import type { Finding, JsonPointer, Params, Result } from '../base/index.js'
import { joinPointer, MAX_DEPTH } from '../base/index.js'
import type { SpecCodes } from '../spec/index.js'

/** In characters; parsing YAML takes many times as long as JSON. */
const MAX_YAML_LENGTH = 2_000_000

/**
 * Reads one YAML text into plain data. A repeated key is a finding, as in JSON. A figure must be quoted
 * (`"10.0"`): as a number it would lose its printed digits; the shape reports that.
 */
export function readYaml(text: string, name: string): Result<unknown> {
  const document = { kind: 'text', name } as const
  const lineCounter = new LineCounter()
  const refuse = (code: string, params: Params): Result<unknown> => ({
    ok: false,
    findings: [{ code, severity: 'error', document, path: '', params }],
  })
  const refuseAt = (offset: number, problem: string): Result<unknown> => {
    const { line, col } = lineCounter.linePos(offset)
    return refuse('spec/not-yaml', { line, column: col, problem })
  }
  if (text.length > MAX_YAML_LENGTH)
    return refuse('spec/too-long', { found: '', length: text.length, limit: MAX_YAML_LENGTH })
  if (isNestedTooDeep(text)) return refuse('spec/too-deep', { limit: MAX_DEPTH })
  // At level `silent`, a second document in the file would be ignored.
  const parsed = parseDocument(text, {
    uniqueKeys: false,
    logLevel: 'error',
    version: '1.2',
    lineCounter,
    prettyErrors: false,
  })
  const [problem] = parsed.errors
  if (problem !== undefined) return refuseAt(problem.pos[0], problem.message)
  const findings: Finding[] = []
  try {
    const alias = findAlias(parsed)
    if (alias !== undefined)
      return refuseAt(alias, 'anchors and aliases are not allowed: write out the value')
    findRepeatedKeys(parsed.contents, [], (path, key) =>
      findings.push({
        code: 'spec/duplicate-key',
        severity: 'error',
        document,
        path: joinPointer(path),
        params: { key },
      }),
    )
    findings.push(...findYamlSlips(parsed.contents, document))
    return { ok: true, value: parsed.toJS({ maxAliasCount: 0 }), findings }
  } catch (error) {
    return refuseAt(0, error instanceof Error ? error.message : String(error))
  }
}

/** The offset of the first alias in the text. */
function findAlias(parsed: ReturnType<typeof parseDocument>): number | undefined {
  let offset: number | undefined
  visit(parsed, {
    Alias: (_key, { range }) => {
      offset = range?.[0] ?? 0
      return visit.BREAK
    },
  })
  return offset
}

function findRepeatedKeys(
  node: unknown,
  path: readonly string[],
  report: (path: readonly string[], key: string) => void,
): void {
  if (isMap(node)) {
    const seen = new Set<string>()
    for (const { key, value } of node.items) {
      const name = isScalar(key) ? String(key.value) : String(key)
      if (seen.has(name)) report([...path, name], name)
      seen.add(name)
      findRepeatedKeys(value, [...path, name], report)
    }
  } else if (isSeq(node))
    for (const [index, item] of node.items.entries()) findRepeatedKeys(item, [...path, String(index)], report)
}

/** Documents have at most 32 levels; the YAML reader handles many more than 500. */
const MAX_LEVELS = 500

/**
 * Whether a text is nested too deep for the YAML reader, which is recursive. The levels are estimated without parsing, from
 * open brackets (also those in quotes) and the indentation of lines.
 */
export function isNestedTooDeep(text: string): boolean {
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

type YamlCode = Extract<keyof SpecCodes, `spec/yaml-${string}`>

/**
 * Finds YAML that does not mean what it seems to mean: a comma that ends a text in braces, a `#` that starts
 * a comment inside a text, and a key that is true or false. Only warnings: the data is read as YAML defines
 * it.
 */
function findYamlSlips(root: ParsedNode | null, document: Finding['document']): readonly Finding[] {
  const findings: Finding[] = []
  const report = <Code extends YamlCode>(code: Code, path: JsonPointer, params: SpecCodes[Code]) =>
    findings.push({ code, severity: 'warning', document, path, params })
  visit(root, {
    Pair: (_index, { key, value }: Pair, ancestors) => {
      const keyValue = isScalar(key) ? key.value : undefined
      const path = makePointer([...ancestors, { key, value }])
      const parent = ancestors.at(-1)
      if (typeof keyValue === 'boolean') report('spec/yaml-key-is-boolean', path, { key: String(keyValue) })
      if (isMap(parent) && parent.flow && value === null && typeof keyValue === 'string')
        report('spec/yaml-comma-in-braces', path, { text: keyValue })
    },
    Scalar: (place, { type, comment, value, range }, ancestors) => {
      const hasNoSpaceAfterHash = typeof comment === 'string' && /^[^\s#]/.test(comment)
      if (place !== 'key' && hasNoSpaceAfterHash && type === Scalar.PLAIN && range)
        report('spec/yaml-comment-in-text', makePointer(ancestors), { text: String(value), comment })
    },
  })
  return findings
}

/** The pointer to the last pair or list entry in a chain of nodes. */
function makePointer(ancestors: readonly unknown[]): JsonPointer {
  const tokens: (string | number)[] = []
  for (const [index, node] of ancestors.entries()) {
    if (typeof node !== 'object' || node === null) continue
    if ('key' in node) tokens.push(isScalar(node.key) ? String(node.key.value) : String(node.key))
    else if ('items' in node && Array.isArray(node.items)) {
      const child = ancestors[index + 1]
      const itemIndex = node.items.indexOf(child as never)
      if (itemIndex >= 0 && !isMap(node)) tokens.push(itemIndex)
    }
  }
  return joinPointer(tokens)
}
