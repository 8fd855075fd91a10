/** An own property of a record by id: `constructor` finds nothing that the document does not have. */
export function lookUp<T>(record: Readonly<Record<string, T>> | undefined, id: string): T | undefined {
  return record !== undefined && Object.hasOwn(record, id) ? record[id] : undefined
}
