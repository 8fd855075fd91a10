import { isMap, isScalar, type Pair, type ParsedNode, Scalar, visit } from 'yaml'
import type { Finding, JsonPointer } from '../base/index.js'
import { joinPointer } from '../base/index.js'
import type { SpecCodes } from '../spec/index.js'

type YamlCode = Extract<keyof SpecCodes, `spec/yaml-${string}`>

/**
 * Texts that YAML does not read as they look: a comma that ends a text in braces, a `#` that begins a comment in a text, and
 * a key that is true or false. Warnings only: the data is what YAML says.
 */
export function findYamlSlips(root: ParsedNode | null, document: Finding['document']): readonly Finding[] {
  const findings: Finding[] = []
  const report = <Code extends YamlCode>(code: Code, path: JsonPointer, params: SpecCodes[Code]) =>
    findings.push({ code, severity: 'warning', document, path, params })
  visit(root, {
    Pair: (_place, { key, value }: Pair, above) => {
      const name = isScalar(key) ? key.value : undefined
      const path = pathOf([...above, { key, value }])
      const holder = above.at(-1)
      if (typeof name === 'boolean') report('spec/yaml-key-is-boolean', path, { key: String(name) })
      if (isMap(holder) && holder.flow && value === null && typeof name === 'string')
        report('spec/yaml-comma-in-braces', path, { text: name })
    },
    Scalar: (place, { type, comment, value, range }, above) => {
      const isGlued = typeof comment === 'string' && /^[^\s#]/.test(comment)
      if (place !== 'key' && isGlued && type === Scalar.PLAIN && range)
        report('spec/yaml-comment-in-text', pathOf(above), { text: String(value), comment })
    },
  })
  return findings
}

/** The pointer of the last pair or list entry of a way down. */
function pathOf(way: readonly unknown[]): JsonPointer {
  const tokens: (string | number)[] = []
  for (const [place, node] of way.entries()) {
    if (typeof node !== 'object' || node === null) continue
    if ('key' in node) tokens.push(isScalar(node.key) ? String(node.key.value) : String(node.key))
    else if ('items' in node && Array.isArray(node.items)) {
      const next = way[place + 1]
      const at = node.items.indexOf(next as never)
      if (at >= 0 && !isMap(node)) tokens.push(at)
    }
  }
  return joinPointer(tokens)
}
