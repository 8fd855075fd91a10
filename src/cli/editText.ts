import { isMap, isScalar, type Node, parse, parseDocument, Scalar } from 'yaml'
import { applyPatch, type Fix, isSameJson, joinPointer, splitPointer } from '../base/index.js'
import { findNode } from './makeLocator.js'

/**
 * Applies fixes to a JSON or YAML text: only the characters of the changed keys and values change, so that
 * comments, order and layout stay. Undefined if a fix needs more than that, such as a new part.
 */
export function editText(text: string, fixes: readonly Fix[], isJson: boolean): string | undefined {
  try {
    let edited: string | undefined = text
    for (const fix of fixes) edited = edited === undefined ? undefined : applyFix(edited, fix, isJson)
    // The new text must mean what the fixes say, and nothing else.
    const isRight = edited !== undefined && isSameJson(parse(edited), applyPatch(parse(text), fixes))
    return isRight ? edited : undefined
  } catch {
    return undefined
  }
}

function applyFix(text: string, fix: Fix, isJson: boolean): string | undefined {
  const root = parseDocument(text, { logLevel: 'error' }).contents as Node | null
  if (fix.op === 'replace') {
    const { node } = findNode(root, splitPointer(fix.path) ?? [])
    return replaceValue(text, node, fix.value, isJson)
  }
  if (fix.op !== 'move') return undefined
  const from = splitPointer(fix.from) ?? []
  const to = splitPointer(fix.path) ?? []
  const isRenamed = joinPointer(from.slice(0, -1)) === joinPointer(to.slice(0, -1))
  const { key } = findNode(root, from)
  return isRenamed && isScalar(key) ? replaceScalar(text, key, to.at(-1) ?? '', isJson) : undefined
}

/** Replaces a scalar, or each scalar of a map by the one of the same key. */
function replaceValue(text: string, node: Node | null, value: unknown, isJson: boolean): string | undefined {
  if (isScalar(node)) return replaceScalar(text, node, value, isJson)
  if (!isMap(node) || typeof value !== 'object' || value === null) return undefined
  let edited: string | undefined = text
  // From the end, so that earlier offsets stay valid.
  for (const { key, value: child } of node.items.toReversed())
    if (edited !== undefined)
      edited = replaceValue(
        edited,
        child as Node | null,
        (value as Record<string, unknown>)[String(key)],
        isJson,
      )
  return edited
}

function replaceScalar(text: string, node: Scalar, value: unknown, isJson: boolean): string | undefined {
  const isSimple = ['string', 'number', 'boolean'].includes(typeof value)
  if (!node.range || !isSimple || node.type === Scalar.BLOCK_LITERAL || node.type === Scalar.BLOCK_FOLDED)
    return undefined
  const [from, to] = node.range
  return text.slice(0, from) + writeScalar(node, value, isJson) + text.slice(to)
}

/** Writes a value with the quotes of the old one, if YAML then reads the same value. */
function writeScalar({ type }: Scalar, value: unknown, isJson: boolean): string {
  const json = JSON.stringify(value)
  if (typeof value !== 'string' || isJson || type === Scalar.QUOTE_DOUBLE) return json
  if (type === Scalar.QUOTE_SINGLE) return `'${value.replaceAll("'", "''")}'`
  return /^[\p{L}\p{N}/](?:[\p{L}\p{N} ./°·–×+%-]*[\p{L}\p{N}%])?$/u.test(value) && parse(value) === value
    ? value
    : json
}
