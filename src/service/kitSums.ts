import { Decimal } from 'decimal.js'
import type { Quantity, VolumeUnit } from '../quantity/index.js'
import { UNIT_FACTORS } from '../quantity/index.js'
import type { Filter, Seal } from '../spec/index.js'
import type { SoldOil } from './visitPlan.js'

export interface KitOil {
  readonly oil: string
  readonly volume: Quantity<VolumeUnit>
  /** The containers in which it is sold; absent: not known, or nothing to buy. */
  readonly sold?: readonly SoldOil[]
}

export interface KitSeal {
  readonly seal: Seal
  /** Part number, or a description. */
  readonly name: string
  readonly count: number
}

export interface KitFilter {
  /** Part number and kind. */
  readonly name: string
  readonly kind: Filter['kind']
  /** The part number, else the name of the part. */
  readonly part: string
  readonly count: number
}

let decimalClass: typeof Decimal | undefined

/** A private constructor, since other code may change the settings of the shared one. */
function getExactDecimal(): typeof Decimal {
  decimalClass ??= Decimal.clone({ defaults: true, precision: 60 })
  return decimalClass
}

/** The exact sum of volumes in millilitres, rounded once. */
function sumVolumes(volumes: readonly Quantity<VolumeUnit>[]): Quantity<'mL'> {
  const Exact = getExactDecimal()
  const sum = volumes.reduce(
    (total, { value, unit }) => total.plus(new Exact(value).times(UNIT_FACTORS[unit])),
    new Exact(0),
  )
  return { value: sum.toNumber(), unit: 'mL' }
}

/** Adds up volumes by the name of the oil, in the order of first mention. */
export function sumOils(oils: readonly KitOil[]): readonly KitOil[] {
  const oilsByName = new Map<string, KitOil[]>()
  for (const kitOil of oils) {
    const sameOils = oilsByName.get(kitOil.oil)
    if (sameOils === undefined) oilsByName.set(kitOil.oil, [kitOil])
    else sameOils.push(kitOil)
  }
  return [...oilsByName].map(([oil, sameOils]) => {
    const sold = new Map(
      sameOils.flatMap((kitOil) =>
        (kitOil.sold ?? []).map((container) => [JSON.stringify(container), container] as const),
      ),
    )
    return {
      oil,
      volume: sumVolumes(sameOils.map(({ volume }) => volume)),
      ...(sold.size > 0 && { sold: [...sold.values()] }),
    }
  })
}

/** Adds up counts by the name of the seal, in the order of first mention, without sums of zero. */
export function sumSeals(seals: readonly KitSeal[]): readonly KitSeal[] {
  const sums = new Map<string, KitSeal>()
  for (const { seal, name, count } of seals)
    sums.set(name, { seal, name, count: count + (sums.get(name)?.count ?? 0) })
  return [...sums.values()].filter(({ count }) => count > 0)
}

/** Adds up counts by the name of the filter; undefined if there are none. */
export function sumFilters(filters: readonly KitFilter[]): readonly KitFilter[] | undefined {
  const sums = new Map<string, KitFilter>()
  for (const filter of filters)
    sums.set(filter.name, { ...filter, count: filter.count + (sums.get(filter.name)?.count ?? 0) })
  return sums.size === 0 ? undefined : [...sums.values()]
}
