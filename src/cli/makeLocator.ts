import { isMap, isScalar, isSeq, LineCounter, type Node, parseDocument } from 'yaml'
import { type Finding, type JsonPointer, splitPointer } from '../base/index.js'
import type { SpecCodes } from '../spec/index.js'
import { isNestedTooDeep } from './readYaml.js'

export interface TextPosition {
  /** From 1. */
  readonly line: number
  /** From 1. */
  readonly column: number
  /** The value, if it is a string. */
  readonly text?: string
}

/** In characters. Longer texts would take too long to read. */
const MAX_LOCATED_LENGTH = 2_000_000

/**
 * Finds the line and column of a pointer in a JSON or YAML text: the key of a pair (the last of duplicates,
 * since that one is read), the list item, or else the nearest parent. Undefined if the text cannot be read.
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
  // Without nodes, findings have no line.
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

/** A finding with its message and its position, if known. */
export interface LocatedFinding extends Finding {
  readonly message: string
  readonly position?: Omit<TextPosition, 'text'>
  /** The text in short notation with the mistake. */
  readonly text?: string
}

/** The range of the mistake in a text in short notation. */
export function findTextRange({ code, params, range }: Finding): readonly [number, number] | undefined {
  return code === 'spec/bad-notation' ? (params as SpecCodes[typeof code]).range : range
}
