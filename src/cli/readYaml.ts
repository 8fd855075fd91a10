import { isMap, isScalar, isSeq, LineCounter, parseDocument, visit } from 'yaml'
import { type Finding, joinPointer, MAX_DEPTH, type Result } from '../base/index.js'
import { isNestedTooDeep } from './isNestedTooDeep.js'

/** Characters; YAML is written by hand, and reading it takes many times as long as JSON. */
const LONGEST_YAML = 2_000_000

/**
 * Reads one YAML text into plain data. A figure must be quoted in YAML as in JSON: `"10.0"`, since the bare word is
 * a number and loses its printed digits (the shape then says so). A repeated key is a finding, as in JSON.
 */
export function readYaml(text: string, name: string): Result<unknown> {
  const document = { kind: 'text', name } as const
  const lineCounter = new LineCounter()
  const refuse = (offset: number, problem: string): Result<unknown> => {
    const { line, col } = lineCounter.linePos(offset)
    const params = { line, column: col, problem }
    return {
      ok: false,
      findings: [{ code: 'spec/not-yaml', severity: 'error', document, path: '', params }],
    }
  }
  if (text.length > LONGEST_YAML) {
    const params = { found: '', length: text.length, limit: LONGEST_YAML }
    return {
      ok: false,
      findings: [{ code: 'spec/too-long', severity: 'error', document, path: '', params }],
    }
  }
  if (isNestedTooDeep(text)) {
    const params = { limit: MAX_DEPTH }
    return {
      ok: false,
      findings: [{ code: 'spec/too-deep', severity: 'error', document, path: '', params }],
    }
  }
  // At `silent` a second document in the file would be dropped without a word.
  const read = parseDocument(text, {
    uniqueKeys: false,
    logLevel: 'error',
    version: '1.2',
    lineCounter,
    prettyErrors: false,
  })
  const [problem] = read.errors
  if (problem !== undefined) return refuse(problem.pos[0], problem.message)
  const findings: Finding[] = []
  try {
    const alias = findAlias(read)
    if (alias !== undefined)
      return refuse(alias, 'anchors and aliases are not read here: write the value out')
    findRepeatedKeys(read.contents, [], (path, key) =>
      findings.push({
        code: 'spec/duplicate-key',
        severity: 'error',
        document,
        path: joinPointer(path),
        params: { key },
      }),
    )
    return { ok: true, value: read.toJS({ maxAliasCount: 0 }), findings }
  } catch (error) {
    return refuse(0, error instanceof Error ? error.message : String(error))
  }
}

/** Where the first alias stands, as an offset into the text. */
function findAlias(read: ReturnType<typeof parseDocument>): number | undefined {
  let offset: number | undefined
  visit(read, {
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
    for (const [place, item] of node.items.entries()) findRepeatedKeys(item, [...path, String(place)], report)
}
