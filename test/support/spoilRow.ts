/** Keys of a row that say where it comes from or what it is about. */
const ABOUT = ['source', 'file', 'place', 'note', 'as', 'asks', 'signal', 'unit', 'wrong']

/** A published row with its last value changed by a tenth, a day of the next year, or a letter: no longer what was published. */
export function spoilRow(row: unknown): unknown {
  if (typeof row !== 'object' || row === null) return spoilValue(row)
  const keys = Object.keys(row).filter((key) => !ABOUT.includes(key) && isValue(Reflect.get(row, key)))
  const last = keys.findLast((key) => !isText(Reflect.get(row, key))) ?? keys.at(-1)
  if (last === undefined) return row
  const copy = structuredClone(row)
  Reflect.set(copy, last, spoilRow(Reflect.get(row, last)))
  return copy
}

const isValue = (value: unknown): boolean => value !== undefined && value !== null
const isText = (value: unknown): boolean => typeof value === 'string' && !/^-?[0-9]/.test(value)

function spoilValue(value: unknown): unknown {
  if (typeof value === 'number') return value === 0 ? 1 : value * 1.1
  if (typeof value === 'boolean') return !value
  if (typeof value !== 'string') return value
  if (/^-?[0-9]+(\.[0-9]+)?$/.test(value)) {
    const decimals = value.split('.')[1]?.length ?? 0
    return (Number(value) * 1.1 + 10 ** -decimals).toFixed(decimals)
  }
  if (/^-?[0-9.]+e-?[0-9]+$/.test(value)) return String(Number(value) * 1.1)
  return /^[0-9]{4}-/.test(value) ? `${Number(value.slice(0, 4)) + 1}${value.slice(4, 8)}01` : `${value}X`
}
