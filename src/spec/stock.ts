import type { Quantity, VolumeUnit } from '../quantity/index.js'
import type { DocumentHead, Id, Seal } from './leaf.js'

/** Oil and seals in stock. */
export interface Stock extends DocumentHead<'stock'> {
  readonly name: string
  readonly containers: Readonly<Record<Id, OilContainer>>
  readonly seals: Readonly<Record<Id, StockSeal>>
}

/** The label of an oil. */
export interface OfferedOil {
  readonly name: string
  readonly grade?: string
  readonly system?: 'SAE J306' | 'SAE J300' | 'ISO VG'
  /** Categories printed on the label; two for a dual-rated oil. */
  readonly categories?: readonly string[]
  /** Maker fluids that the label names. */
  readonly makerFluids?: readonly string[]
  readonly limitedSlip?: 'contains additive' | 'no additive' | 'not stated'
  /** Kinematic viscosity at 40 °C. */
  readonly kv40?: Quantity<'mm2/s'>
  /** Kinematic viscosity at 100 °C. */
  readonly kv100?: Quantity<'mm2/s'>
  readonly density15?: Quantity<'kg/m3'>
  readonly pourPoint?: Quantity<'degC'>
  readonly source?: string
}

export interface OilContainer {
  readonly name: string
  readonly oil: OfferedOil
  readonly size: Quantity<VolumeUnit>
  /** Number of full containers. */
  readonly count: number
  /** The oil left in an opened container, in addition to the full ones. */
  readonly opened?: Quantity<VolumeUnit>
  readonly price?: Price
}

export interface StockSeal {
  readonly name: string
  readonly seal: Seal
  readonly count: number
  readonly price?: Price
}

export interface Price {
  readonly value: number
  /** ISO 4217 code. */
  readonly currency: string
}
