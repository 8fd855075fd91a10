import { MAX_DEPTH } from './documentLimits.js'
import type { JsonPointer } from './finding.js'
import { isSameJson } from './isSameJson.js'
import { quoteValue } from './quoteValue.js'
import { readPointer } from './readPointer.js'
import { refuse } from './refuse.js'
import { requireShape, type Shape } from './requireShape.js'
import { requireTree } from './requireTree.js'
import { splitPointer } from './splitPointer.js'

/** One operation of RFC 6902, except `copy`, which no cure needs. */
export type PatchOperation =
  | { readonly op: 'add' | 'replace' | 'test'; readonly path: JsonPointer; readonly value: unknown }
  | { readonly op: 'remove'; readonly path: JsonPointer }
  | { readonly op: 'move'; readonly from: JsonPointer; readonly path: JsonPointer }

/**
 * Applies cures or other JSON Patch operations, to try what a finding proposes. The given document is not changed;
 * parts that no operation touches are shared with the result. To read one place, use {@link readPointer}.
 *
 * Method: the operations run in order, each on the result of the one before. If one fails, the call throws.
 * @param document Plain JSON data.
 * @param operations Operations in order.
 * @returns The new document.
 * @throws RangeError if an operation points at nothing or its `test` fails; TypeError if it is not an operation of this list, or if
 * a value to `test` is nested deeper than 32 levels.
 *
 * Source: RFC 6902 (2013), section 4 (all except `copy`).
 * @example
 * ```ts
 * import { applyPatch } from 'drivetrain-service/v1/spec'
 * // What does the list look like with the wipe before the fitting?
 * applyPatch(['fit', 'wipe'], [{ op: 'move', from: '/1', path: '/0' }]) // => ['wipe', 'fit']
 * ```
 */
export function applyPatch(document: unknown, operations: readonly PatchOperation[]): unknown {
  if (!Array.isArray(operations)) throw refuse('operations', operations, 'a list of patch operations')
  let result = document
  for (const [place, operation] of operations.entries()) result = applyOne(result, operation, place)
  return result
}

function applyOne(document: unknown, operation: PatchOperation, place: number): unknown {
  const shape: Shape = { path: 'string', ...(operation?.op === 'move' ? { from: 'string' } : {}) }
  requireShape(`operations[${place}]`, operation, shape, 'operations are those of RFC 6902')
  const fail = (why: string): RangeError => new RangeError(`operations[${place}] (${operation.op}): ${why}`)
  const tokensOf = (pointer: JsonPointer): readonly string[] => {
    const tokens = splitPointer(pointer)
    if (tokens === undefined) throw fail(`${JSON.stringify(pointer)} is not a JSON Pointer`)
    if (tokens.length > MAX_DEPTH)
      throw fail(`a pointer has at most ${MAX_DEPTH} levels, got ${tokens.length}`)
    return tokens
  }
  const mustExist = (pointer: JsonPointer): unknown => {
    const found = readPointer(document, pointer)
    if (found === undefined) throw fail(`no value at ${JSON.stringify(pointer)}`)
    return found
  }
  switch (operation.op) {
    case 'add':
      return changeAt(document, tokensOf(operation.path), { kind: 'insert', value: operation.value }, fail)
    case 'replace':
      tokensOf(operation.path)
      mustExist(operation.path)
      return changeAt(document, tokensOf(operation.path), { kind: 'set', value: operation.value }, fail)
    case 'remove':
      tokensOf(operation.path)
      mustExist(operation.path)
      return changeAt(document, tokensOf(operation.path), { kind: 'delete' }, fail)
    case 'move': {
      const from = tokensOf(operation.from)
      const value = mustExist(operation.from)
      if (operation.path === operation.from) return document
      if (operation.path.startsWith(`${operation.from}/`))
        throw fail(`${JSON.stringify(operation.from)} cannot move into itself`)
      const remainingDocument = changeAt(document, from, { kind: 'delete' }, fail)
      return changeAt(remainingDocument, tokensOf(operation.path), { kind: 'insert', value }, fail)
    }
    case 'test':
      requireTree(`operations[${place}].value`, operation.value)
      if (!isSameJson(mustExist(operation.path), operation.value))
        throw fail(`a different value at ${JSON.stringify(operation.path)}`)
      return document
    default:
      throw new TypeError(
        `operations[${place}]: 'op' must be add, remove, replace, move or test, got ${quoteValue((operation as { op?: unknown }).op)}`,
      )
  }
}

type Change =
  | { readonly kind: 'insert'; readonly value: unknown }
  | { readonly kind: 'set'; readonly value: unknown }
  | { readonly kind: 'delete' }

function changeAt(
  value: unknown,
  tokens: readonly string[],
  change: Change,
  fail: (why: string) => RangeError,
): unknown {
  const [token, ...innerTokens] = tokens
  if (token === undefined) {
    if (change.kind === 'delete') throw fail('the whole document cannot be removed')
    return change.value
  }
  if (Array.isArray(value)) return changeList(value, token, innerTokens, change, fail)
  if (typeof value !== 'object' || value === null)
    throw fail(`no object or list holds ${JSON.stringify(token)}`)
  const record = value as Readonly<Record<string, unknown>>
  if (innerTokens.length > 0) {
    if (!Object.hasOwn(record, token)) throw fail(`no key ${JSON.stringify(token)}`)
    return { ...record, [token]: changeAt(record[token], innerTokens, change, fail) }
  }
  if (change.kind !== 'delete') return { ...record, [token]: change.value }
  const { [token]: _removed, ...others } = record
  return others
}

function changeList(
  list: readonly unknown[],
  token: string,
  innerTokens: readonly string[],
  change: Change,
  fail: (why: string) => RangeError,
): readonly unknown[] {
  const inserts = innerTokens.length === 0 && change.kind === 'insert'
  const place = token === '-' && inserts ? list.length : /^(0|[1-9][0-9]*)$/.test(token) ? Number(token) : -1
  const lastPlace = inserts ? list.length : list.length - 1
  if (place < 0 || place > lastPlace) throw fail(`no item ${JSON.stringify(token)} in the list`)
  if (inserts) return list.toSpliced(place, 0, change.value)
  if (innerTokens.length > 0) return list.with(place, changeAt(list[place], innerTokens, change, fail))
  return change.kind === 'delete' ? list.toSpliced(place, 1) : list.with(place, change.value)
}
