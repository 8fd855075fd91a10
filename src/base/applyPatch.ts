import { MAX_DEPTH, requireTree } from './documentLimits.js'
import type { JsonPointer } from './finding.js'
import { isSameJson } from './isSameJson.js'
import { readPointer, splitPointer } from './pointers.js'
import { quoteValue, refuse } from './refuse.js'
import { requireShape, type Shape } from './requireShape.js'

/** One operation of RFC 6902, except `copy`, which no fix needs. */
export type PatchOperation =
  | { readonly op: 'add' | 'replace' | 'test'; readonly path: JsonPointer; readonly value: unknown }
  | { readonly op: 'remove'; readonly path: JsonPointer }
  | { readonly op: 'move'; readonly from: JsonPointer; readonly path: JsonPointer }

/**
 * Applies JSON Patch operations (RFC 6902, 2013, section 4) in order, such as the fixes of a finding. The
 * document is not changed; the result shares the parts that no operation changes. Throws if one fails.
 */
export function applyPatch(document: unknown, operations: readonly PatchOperation[]): unknown {
  if (!Array.isArray(operations)) throw refuse('operations', operations, 'a list of patch operations')
  let result = document
  for (const [index, operation] of operations.entries()) result = applyOperation(result, operation, index)
  return result
}

function applyOperation(document: unknown, operation: PatchOperation, index: number): unknown {
  const shape: Shape = { path: 'string', ...(operation?.op === 'move' ? { from: 'string' } : {}) }
  requireShape(`operations[${index}]`, operation, shape, 'use operations of RFC 6902')
  const makePatchError = (problem: string): RangeError =>
    new RangeError(`operations[${index}] (${operation.op}): ${problem}`)
  const requireTokens = (pointer: JsonPointer): readonly string[] => {
    const tokens = splitPointer(pointer)
    if (tokens === undefined) throw makePatchError(`${JSON.stringify(pointer)} is not a JSON Pointer`)
    if (tokens.length > MAX_DEPTH)
      throw makePatchError(`a pointer has at most ${MAX_DEPTH} levels, got ${tokens.length}`)
    return tokens
  }
  const requireValueAt = (pointer: JsonPointer): unknown => {
    const existingValue = readPointer(document, pointer)
    if (existingValue === undefined) throw makePatchError(`no value at ${JSON.stringify(pointer)}`)
    return existingValue
  }
  switch (operation.op) {
    case 'add':
      return changeAt(
        document,
        requireTokens(operation.path),
        { kind: 'insert', value: operation.value },
        makePatchError,
      )
    case 'replace':
      requireTokens(operation.path)
      requireValueAt(operation.path)
      return changeAt(
        document,
        requireTokens(operation.path),
        { kind: 'set', value: operation.value },
        makePatchError,
      )
    case 'remove':
      requireTokens(operation.path)
      requireValueAt(operation.path)
      return changeAt(document, requireTokens(operation.path), { kind: 'delete' }, makePatchError)
    case 'move': {
      const fromTokens = requireTokens(operation.from)
      const value = requireValueAt(operation.from)
      if (operation.path === operation.from) return document
      if (operation.path.startsWith(`${operation.from}/`))
        throw makePatchError(`${JSON.stringify(operation.from)} cannot move into itself`)
      const remainingDocument = changeAt(document, fromTokens, { kind: 'delete' }, makePatchError)
      return changeAt(
        remainingDocument,
        requireTokens(operation.path),
        { kind: 'insert', value },
        makePatchError,
      )
    }
    case 'test':
      requireTree(`operations[${index}].value`, operation.value)
      if (!isSameJson(requireValueAt(operation.path), operation.value))
        throw makePatchError(`a different value at ${JSON.stringify(operation.path)}`)
      return document
    default:
      throw new TypeError(
        `operations[${index}]: 'op' must be add, remove, replace, move or test, got ${quoteValue((operation as { op?: unknown }).op)}`,
      )
  }
}

type ValueChange =
  | { readonly kind: 'insert'; readonly value: unknown }
  | { readonly kind: 'set'; readonly value: unknown }
  | { readonly kind: 'delete' }

function changeAt(
  value: unknown,
  tokens: readonly string[],
  change: ValueChange,
  makePatchError: (problem: string) => RangeError,
): unknown {
  const [token, ...innerTokens] = tokens
  if (token === undefined) {
    if (change.kind === 'delete') throw makePatchError('the whole document cannot be removed')
    return change.value
  }
  if (Array.isArray(value)) return changeListItem(value, token, innerTokens, change, makePatchError)
  if (typeof value !== 'object' || value === null)
    throw makePatchError(`no object or list holds ${JSON.stringify(token)}`)
  const object = value as Readonly<Record<string, unknown>>
  if (innerTokens.length > 0) {
    if (!Object.hasOwn(object, token)) throw makePatchError(`no key ${JSON.stringify(token)}`)
    return { ...object, [token]: changeAt(object[token], innerTokens, change, makePatchError) }
  }
  if (change.kind !== 'delete') return { ...object, [token]: change.value }
  const { [token]: _removed, ...remainingFields } = object
  return remainingFields
}

function changeListItem(
  list: readonly unknown[],
  token: string,
  innerTokens: readonly string[],
  change: ValueChange,
  makePatchError: (problem: string) => RangeError,
): readonly unknown[] {
  const isInsertion = innerTokens.length === 0 && change.kind === 'insert'
  const index =
    token === '-' && isInsertion ? list.length : /^(0|[1-9][0-9]*)$/.test(token) ? Number(token) : -1
  const lastIndex = isInsertion ? list.length : list.length - 1
  if (index < 0 || index > lastIndex) throw makePatchError(`no item ${JSON.stringify(token)} in the list`)
  if (isInsertion) return list.toSpliced(index, 0, change.value)
  if (innerTokens.length > 0)
    return list.with(index, changeAt(list[index], innerTokens, change, makePatchError))
  return change.kind === 'delete' ? list.toSpliced(index, 1) : list.with(index, change.value)
}
