import type { Quantity, VolumeUnit } from '../quantity/index.js'
import type { DocumentHead } from './leaf.js'
import type { Seal } from './seal.js'
import type { Id } from './specValue.js'

/** Oil and seals in stock. */
export interface Stock extends DocumentHead<'stock'> {
  /** The name of the stock: `station shelf`. */
  readonly name: string
  /** Bottles and cans of oil, by id. */
  readonly containers: Readonly<Record<Id, OilContainer>>
  /** Seals, by id. */
  readonly seals: Readonly<Record<Id, StockSeal>>
}

/** The label of an oil. */
export interface OfferedOil {
  /** The name on the label. */
  readonly name: string
  /** The grade as printed: `80W-90`, `VG 220`. */
  readonly grade?: string
  /** The system of the grade. */
  readonly system?: 'SAE J306' | 'SAE J300' | 'ISO VG'
  /** Categories printed on the label; two for a dual-rated oil. */
  readonly categories?: readonly string[]
  /** Maker fluids that the label names. */
  readonly makerFluids?: readonly string[]
  /** Whether the oil contains an additive for limited-slip differentials. */
  readonly limitedSlip?: 'contains additive' | 'no additive' | 'not stated'
  /** Kinematic viscosity at 40 °C. */
  readonly kv40?: Quantity<'mm2/s'>
  /** Kinematic viscosity at 100 °C. */
  readonly kv100?: Quantity<'mm2/s'>
  /** Density at 15 °C. */
  readonly density15?: Quantity<'kg/m3'>
  /** The lowest temperature at which the oil still pours. */
  readonly pourPoint?: Quantity<'degC'>
  /** The source of these data: `label`. */
  readonly source?: string
}

/** Equal containers of one oil. */
export interface OilContainer {
  /** The name in plain words: `quart bottle`. */
  readonly name: string
  /** The oil as on the label. */
  readonly oil: OfferedOil
  /** The volume of a full container: 1 L. */
  readonly size: Quantity<VolumeUnit>
  /** Number of full containers. */
  readonly count: number
  /** The oil left in an opened container, in addition to the full ones. */
  readonly opened?: Quantity<VolumeUnit>
  /** The price of a full container. */
  readonly price?: Price
}

/** Equal seals. */
export interface StockSeal {
  /** The name in plain words: `washer 18 mm`. */
  readonly name: string
  /** The kind of seal. */
  readonly seal: Seal
  /** The number of seals. */
  readonly count: number
  /** The price of one seal. */
  readonly price?: Price
}

/** A price in one currency. */
export interface Price {
  /** The price as a number: `12.5`. */
  readonly value: number
  /** ISO 4217 code. */
  readonly currency: string
}
