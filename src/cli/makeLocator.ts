import { isMap, isScalar, isSeq, LineCounter, type Node, type Pair, type YAMLMap } from 'yaml'
import { type Finding, type JsonPointer, splitPointer } from '../base/index.js'
import type { SpecCodes } from '../spec/index.js'
import { composeYaml } from './composeYaml.js'

export interface TextPosition {
  /** From 1. */
  readonly line: number
  /** From 1. */
  readonly column: number
  /** The position after the scalar, or after the key or bracket of a larger value. */
  readonly end?: { readonly line: number; readonly column: number }
  /** The value, if it is a string. */
  readonly text?: string
}

/**
 * Finds the line and column of a pointer in a JSON or YAML text: the key of a pair (the last of duplicates,
 * since that one is read), the list item, or else the nearest parent. Undefined if the text cannot be read.
 */
export function makeLocator(text: string): (path: JsonPointer) => TextPosition | undefined {
  let root: { readonly node: Node | null; readonly lines: LineCounter } | undefined
  const pairs: PairIndex = new WeakMap()
  return (path) => {
    root ??= readNodes(text)
    const { key, node } = findNode(root.node, splitPointer(path) ?? [], pairs)
    const first = (key ?? node)?.range
    if (!first) return undefined
    const { line, col } = root.lines.linePos(first[0])
    const last = isScalar(node) ? node.range : key?.range
    const end = root.lines.linePos(Math.max(last?.[1] ?? 0, first[0] + 1))
    const value = isScalar(node) && typeof node.value === 'string' ? node.value : undefined
    return {
      line,
      column: col,
      end: { line: end.line, column: end.col },
      ...(value !== undefined && { text: value }),
    }
  }
}

function readNodes(text: string): { readonly node: Node | null; readonly lines: LineCounter } {
  const lines = new LineCounter()
  const composed = composeYaml(text, lines, () => undefined)
  // Beyond the limits there are no nodes, and findings have no line.
  return { node: 'document' in composed ? composed.document.contents : null, lines }
}

/** The pairs of each map by key: a map may have a mistake in each of its pairs. */
type PairIndex = WeakMap<YAMLMap, ReadonlyMap<string, Pair>>

/** The node of a pointer, or of its nearest parent, and the key before it. */
export function findNode(
  root: Node | null,
  tokens: readonly string[],
  pairs: PairIndex = new WeakMap(),
): { readonly key: Node | undefined; readonly node: Node | null } {
  let node = root
  let key: Node | undefined
  for (const token of tokens) {
    if (isMap(node)) {
      const pair = (pairs.get(node) ?? indexPairs(node, pairs)).get(token)
      if (pair === undefined) break
      key = pair.key as Node
      node = pair.value as Node | null
    } else if (isSeq(node)) {
      const item: unknown = node.items[Number(token)]
      if (item === undefined) break
      key = undefined
      node = item as Node
    } else break
  }
  return { key, node }
}

function indexPairs(map: YAMLMap, pairs: PairIndex): ReadonlyMap<string, Pair> {
  const index = new Map(
    map.items.flatMap((pair) => (isScalar(pair.key) ? [[String(pair.key.value), pair]] : [])),
  )
  pairs.set(map, index)
  return index
}

/** A finding with its message and its position, if known. */
export interface LocatedFinding extends Finding {
  readonly message: string
  readonly position?: { readonly line: number; readonly column: number }
  readonly end?: TextPosition['end']
  /** Whether it is in the baseline. */
  readonly accepted?: true
  /** The text in short notation with the mistake. */
  readonly text?: string
}

/** The range of the mistake in a text in short notation. */
export function findTextRange({ code, params, range }: Finding): readonly [number, number] | undefined {
  return code === 'spec/bad-notation' ? (params as SpecCodes[typeof code]).range : range
}
