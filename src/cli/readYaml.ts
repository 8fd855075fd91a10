import { isAlias, isCollection, isMap, isScalar, isSeq, LineCounter, type ParsedNode, Scalar } from 'yaml'
import type { Finding, JsonPointer, Params, Result } from '../base/index.js'
import { joinPointer, MAX_DEPTH } from '../base/index.js'
import type { SpecCodes } from '../spec/index.js'
import { composeYaml, MAX_YAML_LENGTH, MAX_YAML_MARKS } from './composeYaml.js'

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
  let problem: YamlProblem | undefined
  try {
    const composed = composeYaml(text, lineCounter, (offset, message) => {
      // The YAML reader catches what is thrown at one node, and reports it again at each node around it.
      problem ??= new YamlProblem(offset, message)
      throw problem
    })
    if ('document' in composed) {
      const findings = checkNodes(composed.document.contents, document)
      return { ok: true, value: composed.document.toJS({ maxAliasCount: 0 }), findings }
    }
    if (composed.limit === 'length')
      return refuse('spec/too-long', { found: '', length: text.length, limit: MAX_YAML_LENGTH })
    return composed.limit === 'depth'
      ? refuse('spec/too-deep', { limit: MAX_DEPTH })
      : refuse('spec/yaml-too-large', { limit: MAX_YAML_MARKS })
  } catch (error) {
    const { line, col } = lineCounter.linePos(error instanceof YamlProblem ? error.offset : 0)
    const message = error instanceof Error ? error.message : String(error)
    return refuse('spec/not-yaml', { line, column: col, problem: message })
  }
}

class YamlProblem extends Error {
  readonly offset: number
  constructor(offset: number, message: string) {
    super(message)
    this.offset = offset
  }
}

type YamlCode = Extract<keyof SpecCodes, `spec/yaml-${string}`>

/**
 * Finds repeated keys, and YAML that does not mean what it seems to mean: a comma that ends a text in braces, a
 * `#` that starts a comment inside a text, and a key that is true or false. These are warnings: the data is
 * read as YAML defines it. An alias, or a list or map as a key, is no JSON and throws.
 */
function checkNodes(root: ParsedNode | null, document: Finding['document']): readonly Finding[] {
  const repeatedKeys: Finding[] = []
  const slips: Finding[] = []
  // The current path: one list for all levels, because few nodes need a pointer.
  const tokens: (string | number)[] = []
  const makeFinding = (code: string, severity: Finding['severity'], path: JsonPointer, params: Params) =>
    ({ code, severity, document, path, params }) as const
  const warn = <Code extends YamlCode>(code: Code, params: SpecCodes[Code]) =>
    slips.push(makeFinding(code, 'warning', joinPointer(tokens), params))

  const checkNode = (node: unknown): void => {
    if (isAlias(node))
      throw new YamlProblem(node.range?.[0] ?? 0, 'anchors and aliases are not allowed: write out the value')
    if (isScalar(node)) checkComment(node)
    else if (isSeq(node))
      for (const [index, item] of node.items.entries()) {
        tokens.push(index)
        checkNode(item)
        tokens.pop()
      }
    else if (isMap(node)) {
      const seen = new Set<string>()
      for (const { key, value } of node.items) {
        if (isCollection(key) || isAlias(key))
          throw new YamlProblem(key.range?.[0] ?? 0, 'a key must be a text, not a list, map or alias')
        const keyValue = isScalar(key) ? key.value : key
        const name = String(keyValue)
        tokens.push(name)
        if (seen.has(name))
          repeatedKeys.push(makeFinding('spec/duplicate-key', 'error', joinPointer(tokens), { key: name }))
        seen.add(name)
        if (typeof keyValue === 'boolean') warn('spec/yaml-key-is-boolean', { key: name })
        if (node.flow && value === null && typeof keyValue === 'string')
          warn('spec/yaml-comma-in-braces', { text: name })
        checkNode(value)
        tokens.pop()
      }
    }
  }
  const checkComment = ({ type, comment, value, range }: Scalar): void => {
    if (typeof comment === 'string' && /^[^\s#]/.test(comment) && type === Scalar.PLAIN && range)
      warn('spec/yaml-comment-in-text', { text: String(value), comment })
  }
  checkNode(root)
  return [...repeatedKeys, ...slips]
}
