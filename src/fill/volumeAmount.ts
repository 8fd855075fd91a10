import {
  type Exact,
  exactlyIn,
  exactOfText,
  nearestDouble,
  type PrintedQuantity,
  type Quantity,
  type Unit,
  type VolumeUnit,
} from '../quantity/index.js'

/** A volume from a sheet (a printed figure) or from stock, toolbox or record (a number). */
export type VolumeAmount = Quantity<VolumeUnit> | PrintedQuantity<VolumeUnit>

/**
 * A volume in mL as an exact fraction. A number is read by its shortest decimal, as it stands in the JSON file:
 * 0.1 L is a tenth of a litre, so that ten of them make one. Internal.
 */
export function exactVolume({ value, unit }: VolumeAmount): Exact {
  const [mantissa = '', power = '0'] = String(value).split('e')
  const exponent = Number(power)
  const factor = 10n ** BigInt(Math.abs(exponent))
  const { n, d } = exactOfText(mantissa)
  return exactlyIn(exponent < 0 ? { n, d: d * factor } : { n: n * factor, d }, unit, 'mL')
}

/** An exact number of mL as a quantity in a unit, to the nearest double. Internal. */
export function volumeIn<U extends VolumeUnit>(millilitres: Exact, unit: U): Quantity<U> {
  return { value: nearestDouble(exactlyIn(millilitres, 'mL', unit as Unit)), unit }
}

/**
 * Volumes as whole numbers of one common small part of a millilitre, so that sums and comparisons are exact whatever
 * units are mixed (a US quart is 946.352946 mL). Internal.
 */
export function wholeParts(volumes: readonly VolumeAmount[]): { parts: bigint[]; perMillilitre: bigint } {
  const exact = volumes.map(exactVolume)
  // denominators are powers of ten (no volume unit has another), so the largest is a multiple of all
  let perMillilitre = 1n
  for (const { d } of exact) if (d > perMillilitre) perMillilitre = d
  return { parts: exact.map(({ n, d }) => (n * perMillilitre) / d), perMillilitre }
}
