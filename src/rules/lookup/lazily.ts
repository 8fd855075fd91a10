/** An object whose properties are each made once, at their first use: a rule needs few of the lists. */
export function lazily<T extends object>(makers: { readonly [Key in keyof T]: () => T[Key] }): T {
  const made = {} as T
  for (const key of Object.keys(makers) as (keyof T & string)[])
    Object.defineProperty(made, key, {
      enumerable: true,
      configurable: true,
      get() {
        const value = makers[key]()
        Object.defineProperty(made, key, { value, enumerable: true })
        return value
      },
    })
  return made
}
