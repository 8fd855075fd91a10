import { isMap, isScalar, type Pair, type ParsedNode, Scalar, visit } from 'yaml'
import type { Finding, JsonPointer } from '../base/index.js'
import { joinPointer } from '../base/index.js'
import type { SpecCodes } from '../spec/index.js'

type YamlCode = Extract<keyof SpecCodes, `spec/yaml-${string}`>

/**
 * Finds YAML that means something else than it seems: a comma that ends a text in braces, a `#` that starts a
 * comment inside a text, and a key that is true or false. Only warnings: the data is read as YAML defines it.
 */
export function findYamlSlips(root: ParsedNode | null, document: Finding['document']): readonly Finding[] {
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
