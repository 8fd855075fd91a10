import { isDeepStrictEqual } from 'node:util'

export type Json = string | number | boolean | null | readonly Json[] | JsonObject
export interface JsonObject {
  readonly [key: string]: Json
}

/**
 * One change of a JSON value: a removed place, a place with its new value, or a range of a list that is replaced
 * (start, number of removed items, new items). JSON Patch would need one operation for each item.
 */
export type Change = readonly [string] | readonly [string, Json] | readonly [string, number, number, Json[]]

export const isObject = (value: Json | undefined): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

export const isSame = (left: Json | undefined, right: Json | undefined): boolean =>
  isDeepStrictEqual(left, right)

export const toJson = (value: unknown): Json => JSON.parse(JSON.stringify(value ?? null))

export const join = (path: string, key: string | number): string =>
  `${path}/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`

const split = (path: string): string[] =>
  path
    .split('/')
    .slice(1)
    .map((token) => token.replaceAll('~1', '/').replaceAll('~0', '~'))

/** The number of equal items at the start of two lists, and at the end of the rest. */
export function commonEnds(left: readonly Json[], right: readonly Json[]): readonly [number, number] {
  const sharedLength = Math.min(left.length, right.length)
  let front = 0
  while (front < sharedLength && isSame(left[front], right[front])) front += 1
  let back = 0
  while (back < sharedLength - front && isSame(left.at(-1 - back), right.at(-1 - back))) back += 1
  return [front, back]
}

/** The changes that turn `before` into `after`. */
export function findChanges(before: Json, after: Json, path = ''): Change[] {
  if (isSame(before, after)) return []
  if (Array.isArray(before) && Array.isArray(after)) {
    if (before.length === after.length)
      return before.flatMap((item, place) => findChanges(item, after[place], join(path, place)))
    const [front, back] = commonEnds(before, after)
    return [[path, front, before.length - front - back, after.slice(front, after.length - back)]]
  }
  if (!isObject(before) || !isObject(after)) return [[path, after]]
  const removedKeys = Object.keys(before).filter((key) => !Object.hasOwn(after, key))
  return [
    ...removedKeys.map((key): Change => [join(path, key)]),
    ...Object.entries(after).flatMap(([key, value]): Change[] =>
      Object.hasOwn(before, key)
        ? findChanges(before[key] as Json, value, join(path, key))
        : [[join(path, key), value]],
    ),
  ]
}

/** The result of the changes to `before`, which is not changed itself. */
export function applyChanges(before: Json, changes: readonly Change[]): Json {
  const wrapper = { root: structuredClone(before) }
  for (const change of changes) {
    const tokens = ['root', ...split(change[0])]
    const last = tokens.pop() as string
    const holder = tokens.reduce((node: never, token) => node[token] as never, wrapper as never) as Record<
      string,
      Json
    >
    if (change.length === 1) delete holder[last]
    else if (change.length === 2) holder[last] = structuredClone(change[1])
    else (holder[last] as Json[]).splice(change[1], change[2], ...structuredClone(change[3]))
  }
  return wrapper.root
}
