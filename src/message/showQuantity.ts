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

/** Units of calculated quantities by their maximum number of decimals: none, one or two. Other units have three. */
const UNITS_BY_DECIMALS: readonly (readonly Unit[])[] = [
  ['s', 'd'],
  ['mL', 'cm3', 'kg', 'g', 'lb', 'h', 'km', 'mi', 'min', 'degC', 'degF', 'K', 'lbf.in', 'kgf.cm'],
  ['N.m', 'lbf.ft'],
]

/**
 * A quantity as text: a printed figure or band keeps its digits; a calculated number gets the decimals for
 * its unit.
 */
export function showQuantity(value: unknown, marks: NumberMarks): string | undefined {
  if (typeof value !== 'object' || value === null) return undefined
  try {
    const digits = chooseDigits((value as { unit?: unknown }).unit)
    return formatQuantity(value as Quantity | PrintedQuantity | PrintedBand, marks, digits)
  } catch {
    return undefined
  }
}

/**
 * The number of a quantity with the decimals for its unit, without the unit; `undefined` if it is not finite.
 */
export function showAmount({ value, unit }: Quantity, marks: NumberMarks): string | undefined {
  return Number.isFinite(value) ? formatNumber(value, marks, chooseDigits(unit)) : undefined
}

function chooseDigits(unit: unknown): NumberDigits {
  const decimals = UNITS_BY_DECIMALS.findIndex((units) => units.some((candidate) => candidate === unit))
  return { atMost: decimals === -1 ? 3 : decimals }
}

/** A calculated number with the language's marks; `undefined` if it is not a finite number. */
export function showNumber(value: unknown, marks: NumberMarks, atMost: number): string | undefined {
  return typeof value === 'number' && Number.isFinite(value)
    ? formatNumber(value, marks, { atMost })
    : undefined
}
