import { isMap, isScalar, isSeq, LineCounter, type Node, parseDocument } from 'yaml'
import { type JsonPointer, splitPointer } from '../base/index.js'
import { isNestedTooDeep } from './readYaml.js'

export interface TextPosition {
  /** From 1. */
  readonly line: number
  /** From 1. */
  readonly column: number
  /** The value there, if it is a text. */
  readonly text?: string
}

/** In characters. In longer texts, finding the line takes too long. */
const MAX_LOCATED_LENGTH = 2_000_000

/**
 * Finds the line and column of a pointer in a JSON or YAML text: the key of a pair (the last of duplicates, which is the
 * one that is read) or the item of a list, else the nearest part above it. Undefined if the text cannot be read.
 */
export function makeLocator(text: string): (path: JsonPointer) => TextPosition | undefined {
  let root: { readonly node: Node | null; readonly lines: LineCounter } | undefined
  return (path) => {
    if (text.length > MAX_LOCATED_LENGTH) return undefined
    root ??= readNodes(text)
    const { offset, node } = findNode(root.node, splitPointer(path) ?? [])
    if (offset === undefined) return undefined
    const { line, col } = root.lines.linePos(offset)
    const value = isScalar(node) && typeof node.value === 'string' ? node.value : undefined
    return { line, column: col, ...(value !== undefined && { text: value }) }
  }
}

function readNodes(text: string): { readonly node: Node | null; readonly lines: LineCounter } {
  const lines = new LineCounter()
  // Without nodes, the finding has no line.
  if (isNestedTooDeep(text)) return { node: null, lines }
  const node = parseDocument(text, { lineCounter: lines, uniqueKeys: false, logLevel: 'silent' }).contents
  return { node: node as Node | null, lines }
}

function findNode(
  root: Node | null,
  tokens: readonly string[],
): { readonly offset?: number | undefined; readonly node: unknown } {
  let current: unknown = root
  let offset = root?.range?.[0]
  for (const token of tokens) {
    if (isMap(current)) {
      const pair = current.items.findLast(({ key }) => isScalar(key) && String(key.value) === token)
      if (pair === undefined) break
      offset = (pair.key as Node).range?.[0] ?? offset
      current = pair.value
    } else if (isSeq(current)) {
      const item: unknown = current.items[Number(token)]
      if (item === undefined) break
      offset = (item as Node).range?.[0] ?? offset
      current = item
    } else break
  }
  return { offset, node: current }
}
