import { Decimal } from 'decimal.js'
import type { Quantity, VolumeUnit } from '../quantity/index.js'
import { UNIT_FACTORS } from '../quantity/index.js'
import type { Seal } from '../spec/index.js'

export interface KitOil {
  readonly oil: string
  readonly volume: Quantity<VolumeUnit>
}

export interface KitSeal {
  readonly seal: Seal
  /** Part number, else what it is. */
  readonly name: string
  readonly count: number
}

export interface KitFilter {
  /** Part number, then what it is. */
  readonly name: string
  readonly count: number
}

let own: typeof Decimal | undefined

/** Our own constructor, made at first use: any code in the process may change the settings of the shared one. */
function exact(): typeof Decimal {
  own ??= Decimal.clone({ defaults: true, precision: 60 })
  return own
}

/** The sum in millilitres of volumes as they are written (0.1 L three times is 300 mL), rounded once. */
function addVolumes(volumes: readonly Quantity<VolumeUnit>[]): Quantity<'mL'> {
  const Exact = exact()
  const sum = volumes.reduce(
    (total, { value, unit }) => total.plus(new Exact(value).times(UNIT_FACTORS[unit])),
    new Exact(0),
  )
  return { value: sum.toNumber(), unit: 'mL' }
}

/** Adds up volumes by the oil's name, in the order of first mention. */
export function addOils(oils: readonly KitOil[]): readonly KitOil[] {
  const names = [...new Set(oils.map(({ oil }) => oil))]
  return names.map((oil) => ({
    oil,
    volume: addVolumes(oils.filter((one) => one.oil === oil).map(({ volume }) => volume)),
  }))
}

/** Adds up counts by the seal's name, in the order of first mention; none is left out. */
export function addSeals(seals: readonly KitSeal[]): readonly KitSeal[] {
  const sums = new Map<string, KitSeal>()
  for (const { seal, name, count } of seals)
    sums.set(name, { seal, name, count: count + (sums.get(name)?.count ?? 0) })
  return [...sums.values()].filter(({ count }) => count > 0)
}

/** Adds up counts by the filter's name; undefined where there is none, so that a kit without filters has no such list. */
export function addFilters(filters: readonly KitFilter[]): readonly KitFilter[] | undefined {
  const sums = new Map<string, number>()
  for (const { name, count } of filters) sums.set(name, count + (sums.get(name) ?? 0))
  return sums.size === 0 ? undefined : [...sums].map(([name, count]) => ({ name, count }))
}
