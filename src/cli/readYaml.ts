import { isMap, isScalar, isSeq, parseDocument, visit } from 'yaml'
import type { Finding, Result } from '../finding.js'
import { MAX_DEPTH } from '../spec/documentLimits.js'
import { joinPointer } from '../spec/index.js'
import { isNestedTooDeep } from './isNestedTooDeep.js'

/** Characters; YAML is written by hand, and reading it takes many times as long as JSON. */
const LONGEST_YAML = 2_000_000

/**
 * Reads one YAML text into plain data. A figure must be quoted in YAML as in JSON: `"10.0"`, since the bare word is
 * a number and loses its printed digits (the shape then says so). A repeated key is a finding, as in JSON.
 */
export function readYaml(text: string, name: string): Result<unknown> {
  const document = { kind: 'text', name } as const
  const refuse = (problem: string): Result<unknown> => ({
    ok: false,
    findings: [{ code: 'spec/not-yaml', severity: 'error', document, path: '', params: { problem } }],
  })
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
  const read = parseDocument(text, { uniqueKeys: false, logLevel: 'error', version: '1.2' })
  const [problem] = read.errors
  if (problem !== undefined) return refuse(firstLine(problem.message))
  const findings: Finding[] = []
  try {
    if (hasAlias(read)) return refuse('anchors and aliases are not read here: write the value out')
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
    return refuse(error instanceof Error ? firstLine(error.message) : String(error))
  }
}

function hasAlias(read: ReturnType<typeof parseDocument>): boolean {
  let aliased = false
  visit(read, {
    Alias: () => {
      aliased = true
      return visit.BREAK
    },
  })
  return aliased
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

function firstLine(message: string): string {
  return message.split('\n', 1)[0] ?? message
}
