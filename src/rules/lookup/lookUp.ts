/** A property of a record by id; inherited ones, such as `constructor`, are not found. */
export function lookUp<T>(record: Readonly<Record<string, T>> | undefined, id: string): T | undefined {
  return record !== undefined && Object.hasOwn(record, id) ? record[id] : undefined
}
