/** An object that makes each property at its first use: a rule needs few of the lists. */
export function makeLazy<T extends object>(makers: { readonly [Key in keyof T]: () => T[Key] }): T {
  const lazyObject = {} as T
  for (const key of Object.keys(makers) as (keyof T & string)[])
    Object.defineProperty(lazyObject, key, {
      enumerable: true,
      configurable: true,
      get() {
        const value = makers[key]()
        Object.defineProperty(lazyObject, key, { value, enumerable: true })
        return value
      },
    })
  return lazyObject
}
