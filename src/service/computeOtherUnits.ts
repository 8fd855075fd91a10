import { type Measure, measureOf, secondUnit, type Unit } from '../quantity/index.js'
import type { Leaf, PrintedValue, Resolved, StatedValue } from '../spec/index.js'

/** The units in which a reader may work, by measure; what the manual does not print is computed from its first figure. */
const WANTED: { readonly [M in Measure]?: readonly Unit[] } = {
  torque: ['N.m', 'lbf.ft'],
  volume: ['mL', 'qt_us'],
  temperature: ['degC', 'degF'],
  mass: ['kg', 'lb'],
}

/** Units that say the same to a reader, so that a second of them is not wanted. */
const SAME_SYSTEM: { readonly [U in Unit]?: Unit } = {
  L: 'mL',
  cm3: 'mL',
  fl_oz_us: 'qt_us',
  pt_us: 'qt_us',
  gal_us: 'qt_us',
  'lbf.in': 'lbf.ft',
}

/**
 * Computes a leaf's first printed figure in the units that the manual leaves out, limits inward, so that every reader
 * finds a unit to work in. Nothing is computed for what is not stated or cannot be told.
 */
export function computeOtherUnits(resolved: Resolved<Leaf>): readonly PrintedValue[] {
  if (resolved.kind !== 'stated') return []
  const leaf: Leaf = resolved.value
  const value: StatedValue | undefined =
    leaf.kind === 'torque'
      ? leaf.torque
      : leaf.kind === 'nominal' || leaf.kind === 'nominal with tolerance' || leaf.kind === 'limits'
        ? leaf
        : undefined
  if (value === undefined) return []
  const printed = [value, ...(value.printed ?? [])].map(({ unit }) => SAME_SYSTEM[unit] ?? unit)
  const wanted = WANTED[measureOf(value.unit)] ?? []
  return wanted.filter((unit) => !printed.includes(unit)).flatMap((unit) => secondUnit(value, unit) ?? [])
}
