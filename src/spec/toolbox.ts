import type { LengthUnit, MassUnit, Quantity, TorqueUnit, VolumeUnit } from '../quantity/index.js'
import type { DateText, DocumentHead, DriveKind, Id } from './leaf.js'

/** The workshop's tools and equipment. */
export interface Toolbox extends DocumentHead<'toolbox'> {
  readonly name: string
  readonly wrenches: Readonly<Record<Id, TorqueWrench>>
  readonly adaptors?: Readonly<Record<Id, Adaptor>>
  readonly sockets: Readonly<Record<Id, Socket>>
  readonly vessels: Readonly<Record<Id, MeasuringVessel>>
  readonly pans: Readonly<Record<Id, DrainPan>>
  readonly fillers: Readonly<Record<Id, FunnelAndHose>>
  readonly stands: Readonly<Record<Id, Stands>>
  readonly jacks?: Readonly<Record<Id, Jack>>
  readonly chocks?: number
}

export interface WrenchScale {
  readonly unit: TorqueUnit
  /** Lowest value marked on this scale. */
  readonly lowest: number
  readonly highest: number
  /** Step between marks. */
  readonly graduation: number
}

/** The wrench's permissible error. */
export type WrenchAccuracy =
  /** Permissible deviation of ISO 6789 for a setting tool: ±6 % up to 10 N·m maximum, else ±4 %, of the reference reading. */
  | { readonly kind: 'ISO 6789' }
  /** The maker's figure, per cent of the reference reading. */
  | { readonly kind: 'of reading'; readonly percent: number }
  | { readonly kind: 'of full scale'; readonly percent: number }

export interface TorqueWrench {
  readonly name: string
  readonly type: 'click' | 'dial' | 'beam' | 'electronic'
  /** Square drive, a designation: `1/4 in`, `3/8 in`, `1/2 in`. */
  readonly drive: string
  readonly scales: readonly WrenchScale[]
  /** The maker's declared range, if it is not the marked range. */
  readonly declaredRange?: { readonly min: Quantity<TorqueUnit>; readonly max: Quantity<TorqueUnit> }
  readonly accuracy: WrenchAccuracy
  /** From the centre of the square drive to the hand. */
  readonly leverLength?: Quantity<LengthUnit>
  readonly calibration?: { readonly date: DateText; readonly cyclesSince?: number }
}

export interface Adaptor {
  readonly name: string
  readonly kind: 'crowfoot' | 'straight extension' | 'drive adaptor'
  readonly from: string
  readonly to: string
  /** From the centre of the wrench's square drive to the centre of the fastener. */
  readonly extension?: Quantity<LengthUnit>
}

export interface Socket {
  readonly name: string
  readonly fits: DriveKind
  readonly size?: string
  /** Square drive of a socket or bit; absent: a key or a spanner without one. */
  readonly drive?: string
}

export interface MeasuringVessel {
  readonly name: string
  readonly size: Quantity<VolumeUnit>
  readonly graduation: Quantity<VolumeUnit>
  readonly lowestMark?: Quantity<VolumeUnit>
}

export interface DrainPan {
  readonly name: string
  readonly size: Quantity<VolumeUnit>
}

export interface FunnelAndHose {
  readonly name: string
  readonly funnel: {
    readonly shape: 'cylinder' | 'cone'
    /** At the top. */
    readonly diameter: Quantity<LengthUnit>
    readonly depth: Quantity<LengthUnit>
  }
  readonly hose: {
    /** Absent: not measured. No time is then calculated; the last drip shows that the hose is empty. */
    readonly bore?: Quantity<LengthUnit>
    readonly length: Quantity<LengthUnit>
    /** Height of the bottom of the funnel above the lower end of the hose. */
    readonly drop: Quantity<LengthUnit>
  }
}

export interface Stands {
  readonly name: string
  readonly count: number
  /** Rated load of one stand. */
  readonly rating: Quantity<MassUnit>
}

export interface Jack {
  readonly name: string
  readonly rating: Quantity<MassUnit>
}
