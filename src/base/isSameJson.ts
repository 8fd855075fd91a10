/** Whether two JSON values are equal; the order of keys does not matter. */
export function isSameJson(first: unknown, second: unknown): boolean {
  if (first === second) return true
  if (typeof first !== 'object' || typeof second !== 'object' || first === null || second === null)
    return false
  if (Array.isArray(first) !== Array.isArray(second)) return false
  const firstKeys = Object.keys(first)
  if (firstKeys.length !== Object.keys(second).length) return false
  const firstObject = first as Readonly<Record<string, unknown>>
  const secondObject = second as Readonly<Record<string, unknown>>
  return firstKeys.every(
    (key) => Object.hasOwn(second, key) && isSameJson(firstObject[key], secondObject[key]),
  )
}
