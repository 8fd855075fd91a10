type OptionalKeys<T> = { [K in keyof T]: undefined extends T[K] ? K : never }[keyof T]

/** The fields but those that are undefined. */
type Defined<T> = Omit<T, OptionalKeys<T>> & { readonly [K in OptionalKeys<T>]?: Exclude<T[K], undefined> }

/** Leaves out fields that are undefined: what is not known is absent in a document or a result. */
export function dropUndefined<const T extends object>(fields: T): Defined<T> {
  const known = Object.entries(fields).filter(([, value]) => value !== undefined)
  return Object.fromEntries(known) as Defined<T>
}
