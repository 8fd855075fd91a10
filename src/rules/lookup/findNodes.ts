import type { JsonPointer } from '../../base/index.js'

/** An object inside a document, where it stands, and the key that it stands under. */
export interface Node<T> {
  readonly path: JsonPointer
  readonly node: T
}

/**
 * Every object inside a document that a test wants, in document order, for rules that hold wherever a shape
 * turns up: a printed value is a printed value in a gearcase and in an override.
 */
export function findNodes<T extends object>(
  document: unknown,
  isWanted: (node: object, key: string) => node is T,
): readonly Node<T>[] {
  const found: Node<T>[] = []
  const open: { path: JsonPointer; key: string; value: unknown }[] = [{ path: '', key: '', value: document }]
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const { path, key, value } = next
    if (typeof value !== 'object' || value === null) continue
    if (isWanted(value, key)) found.push({ path, node: value })
    for (const [name, inner] of Object.entries(value).reverse())
      open.push({ path: `${path}/${escapeKey(name)}`, key: name, value: inner })
  }
  return found
}

function escapeKey(key: string): string {
  return key.replaceAll('~', '~0').replaceAll('/', '~1')
}
