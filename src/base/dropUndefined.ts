type OptionalKeys<T> = { [K in keyof T]: undefined extends T[K] ? K : never }[keyof T]

/** The type without its undefined fields. */
type Defined<T> = Omit<T, OptionalKeys<T>> & { readonly [K in OptionalKeys<T>]?: Exclude<T[K], undefined> }

/** Omits undefined fields: an unknown value is absent from a document or a result. */
export function dropUndefined<const T extends object>(fields: T): Defined<T> {
  const definedEntries = Object.entries(fields).filter(([, value]) => value !== undefined)
  return Object.fromEntries(definedEntries) as Defined<T>
}
