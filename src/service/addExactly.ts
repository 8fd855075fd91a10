import { Decimal } from 'decimal.js'
import { type Quantity, UNIT_FACTORS, type VolumeUnit } from '../quantity/index.js'

let own: typeof Decimal | undefined

/** Our own constructor, made at first use: the shared one may be set by anybody in the process. */
function exact(): typeof Decimal {
  own ??= Decimal.clone({ defaults: true, precision: 60 })
  return own
}

/**
 * The sum of volumes over many documents, in millilitres: each number as it is written times the exact factor of its
 * unit, so that two of 1.001 L are 2002 mL; rounded once to the nearest double.
 */
export function addExactly(volumes: readonly Quantity<VolumeUnit>[]): Quantity<'mL'> {
  const Exact = exact()
  const inMillilitres = volumes.map(({ value, unit }) => new Exact(value).times(UNIT_FACTORS[unit].factor))
  const sum = inMillilitres.reduce((all, next) => all.plus(next), new Exact(0))
  return { value: sum.toNumber(), unit: 'mL' }
}
