import {
  formatNumber,
  formatQuantity,
  type NumberDigits,
  type NumberMarks,
  type PrintedBand,
  type PrintedQuantity,
  type Quantity,
  type Unit,
} from '../quantity/index.js'

/** The maximum decimals of a computed quantity, where three are more than can be measured. */
const DECIMALS: { readonly [U in Unit]?: number } = {
  mL: 1,
  cm3: 1,
  kg: 1,
  g: 1,
  lb: 1,
  h: 1,
  km: 1,
  mi: 1,
  s: 0,
  d: 0,
  min: 1,
  degC: 1,
  degF: 1,
  K: 1,
  'N.m': 2,
  'lbf.ft': 2,
  'lbf.in': 1,
  'kgf.cm': 1,
}

/**
 * A quantity for one line of text: a printed figure or band with its own digits, a computed number with as
 * many decimals as its unit deserves.
 */
export function showQuantity(value: unknown, marks: NumberMarks): string | undefined {
  if (typeof value !== 'object' || value === null) return undefined
  try {
    const digits = digitsOf((value as { unit?: unknown }).unit)
    return formatQuantity(value as Quantity | PrintedQuantity | PrintedBand, marks, digits)
  } catch {
    return undefined
  }
}

/** The number of a quantity alone, with as many decimals as its unit bears; `undefined` for what is no finite number. */
export function showAmount({ value, unit }: Quantity, marks: NumberMarks): string | undefined {
  return Number.isFinite(value) ? formatNumber(value, marks, digitsOf(unit)) : undefined
}

function digitsOf(unit: unknown): NumberDigits {
  const known = typeof unit === 'string' && Object.hasOwn(DECIMALS, unit)
  return { atMost: known ? (DECIMALS[unit as Unit] ?? 3) : 3 }
}

/** A computed number with the language's marks; `undefined` for what is no finite number. */
export function showNumber(value: unknown, marks: NumberMarks, atMost: number): string | undefined {
  return typeof value === 'number' && Number.isFinite(value)
    ? formatNumber(value, marks, { atMost })
    : undefined
}
