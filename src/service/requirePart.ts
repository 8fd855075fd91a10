/** Throws, naming the argument, where one that a programmer hands over lacks a part that this room's own results have. */
export function requirePart(
  value: unknown,
  argument: string,
  parts: 'object' | 'list',
  ...names: readonly string[]
): void {
  if (typeof value !== 'object' || value === null) throw new TypeError(`${argument} must be an object`)
  for (const name of names) {
    const part: unknown = Object.hasOwn(value, name)
      ? (value as Readonly<Record<string, unknown>>)[name]
      : undefined
    const fits = parts === 'list' ? Array.isArray(part) : typeof part === 'object' && part !== null
    if (!fits) throw new TypeError(`${argument}.${name} must be ${parts === 'list' ? 'a list' : 'an object'}`)
  }
}
