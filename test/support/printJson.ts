/**
 * The longest line of a generated file. A reader of a schema sees one property per line, and the package is 8 kB
 * smaller.
 */
const WIDTH = 300

/** JSON with one value per line; objects and lists that fit on one line stay on it. */
export const printJson = (value: unknown): string => `${print(value, '')}\n`

function print(value: unknown, indent: string): string {
  const line = JSON.stringify(value)
  if (typeof value !== 'object' || value === null || indent.length + line.length <= WIDTH) return line
  const inner = `${indent} `
  const isList = Array.isArray(value)
  const rows = Object.entries(value).map(([key, entry]) => {
    const start = isList ? '' : `${JSON.stringify(key)}: `
    return `${inner}${start}${print(entry, inner)}`
  })
  const [open, close] = isList ? '[]' : '{}'
  return `${open}\n${rows.join(',\n')}\n${indent}${close}`
}
