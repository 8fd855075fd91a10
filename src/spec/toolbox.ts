import type { LengthUnit, MassUnit, Quantity, TorqueUnit, VolumeUnit } from '../quantity/index.js'
import type { DateText, DocumentHead, DriveKind } from './leaf.js'
import type { Id } from './specValue.js'

/** The workshop's tools and equipment. */
export interface Toolbox extends DocumentHead<'toolbox'> {
  /** The name of the toolbox. */
  readonly name: string
  /** The torque wrenches, by id. */
  readonly wrenches: Readonly<Record<Id, TorqueWrench>>
  /** Crowfeet, extensions and drive adaptors, by id. */
  readonly adaptors?: Readonly<Record<Id, Adaptor>>
  /** Sockets, bits, keys and spanners, by id. */
  readonly sockets: Readonly<Record<Id, Socket>>
  /** Measuring jugs and bottles, by id. */
  readonly vessels: Readonly<Record<Id, MeasuringVessel>>
  /** Drain pans, by id. */
  readonly pans: Readonly<Record<Id, DrainPan>>
  /** Funnels with hoses, by id. */
  readonly fillers: Readonly<Record<Id, FunnelAndHose>>
  /** Sets of stands, by id. */
  readonly stands: Readonly<Record<Id, Stands>>
  /** Sets of wheel ramps, by id. */
  readonly ramps?: Readonly<Record<Id, Ramps>>
  /** Jacks, by id. */
  readonly jacks?: Readonly<Record<Id, Jack>>
  /** The number of wheel chocks. */
  readonly chocks?: number
}

/** One scale of a torque wrench. */
export interface WrenchScale {
  /** The unit of the scale: `N.m`, `lbf.in`. */
  readonly unit: TorqueUnit
  /** Lowest value marked on this scale. */
  readonly lowest: number
  /** Highest value marked on this scale. */
  readonly highest: number
  /** Step between marks. */
  readonly graduation: number
}

/** The wrench's permissible error. */
export type WrenchAccuracy =
  /** Permissible deviation of ISO 6789 for a setting tool: ±6 % up to 10 N·m maximum, else ±4 %, of the reference reading. */
  | { readonly kind: 'ISO 6789' }
  /** The maker's figure, per cent of the reference reading. */
  | {
      readonly kind: 'of reading'
      /** The error as a number in per cent, up or down: `4`. */
      readonly percent: number
    }
  | { readonly kind: 'of full scale'; readonly percent: number }

/** A torque wrench. */
export interface TorqueWrench {
  /** The name in plain words: `small click wrench`. */
  readonly name: string
  /** How the wrench shows the torque. */
  readonly type: 'click' | 'dial' | 'beam' | 'electronic'
  /** Size of the square drive: `1/4 in`, `3/8 in`, `1/2 in`. */
  readonly drive: string
  /** The scales of the wrench. A wrench marked in two units has two. */
  readonly scales: readonly WrenchScale[]
  /** The maker's declared range, if it is not the marked range. */
  readonly declaredRange?: {
    /** The lowest torque that the maker declares. */
    readonly min: Quantity<TorqueUnit>
    /** The highest torque that the maker declares. */
    readonly max: Quantity<TorqueUnit>
  }
  /** The permissible error of the wrench. */
  readonly accuracy: WrenchAccuracy
  /** From the centre of the square drive to the hand. */
  readonly leverLength?: Quantity<LengthUnit>
  /** The last calibration. */
  readonly calibration?: {
    /** The day: `2023-03-09`. */
    readonly date: DateText
    /** The number of uses since then: `1200`. */
    readonly cyclesSince?: number
  }
}

/** A part between wrench and socket. */
export interface Adaptor {
  /** The name in plain words: `13 mm crowfoot`. */
  readonly name: string
  /** The kind of adaptor. Only a crowfoot changes the setting of the wrench. */
  readonly kind: 'crowfoot' | 'straight extension' | 'drive adaptor'
  /** The square drive on the side of the wrench: `3/8 in`. */
  readonly from: string
  /** The driven end: a square drive, or the size of the fastener. */
  readonly to: string
  /** From the centre of the wrench's square drive to the centre of the fastener. */
  readonly extension?: Quantity<LengthUnit>
}

/** A socket, bit, key or spanner. */
export interface Socket {
  /** The name in plain words: `10 mm hex bit`. */
  readonly name: string
  /** The shape of head that it fits. */
  readonly fits: DriveKind
  /** The size as a designation: `10 mm`, `3/8 in`, `T40`. */
  readonly size?: string
  /** The square drive of a socket or bit. Absent for a key or a spanner. */
  readonly drive?: string
}

/** A jug or bottle with marks. */
export interface MeasuringVessel {
  /** The name in plain words: `700 mL jug`. */
  readonly name: string
  /** The volume at the highest mark. */
  readonly size: Quantity<VolumeUnit>
  /** The step between marks. */
  readonly graduation: Quantity<VolumeUnit>
  /** The lowest mark, if it is not one step above empty. */
  readonly lowestMark?: Quantity<VolumeUnit>
}

/** A pan for used oil. */
export interface DrainPan {
  /** The name in plain words: `8 L pan`. */
  readonly name: string
  /** The capacity. */
  readonly size: Quantity<VolumeUnit>
}

/** A funnel with a hose. */
export interface FunnelAndHose {
  /** The name in plain words: `long funnel`. */
  readonly name: string
  /** The funnel. */
  readonly funnel: {
    /** Its shape. */
    readonly shape: 'cylinder' | 'cone'
    /** The diameter at the top. */
    readonly diameter: Quantity<LengthUnit>
    /** Its depth, inside. */
    readonly depth: Quantity<LengthUnit>
  }
  /** The hose below the funnel. */
  readonly hose: {
    /**
     * The inside diameter. Absent: not measured; no time is calculated, and the last drip shows that the hose
     * is empty.
     */
    readonly bore?: Quantity<LengthUnit>
    /** Its length. */
    readonly length: Quantity<LengthUnit>
    /** Height of the bottom of the funnel above the lower end of the hose. */
    readonly drop: Quantity<LengthUnit>
  }
}

/** A set of equal stands. */
export interface Stands {
  /** The name in plain words: `3 t stands`. */
  readonly name: string
  /** The number of stands. */
  readonly count: number
  /** Rated load of one stand. */
  readonly rating: Quantity<MassUnit>
}

/** A set of equal ramps that wheels are driven onto. */
export interface Ramps {
  /** The name in plain words: `1 t ramps`. */
  readonly name: string
  /** The number of ramps: `2`. */
  readonly count: number
  /** Rated load of one ramp. */
  readonly rating: Quantity<MassUnit>
}

/** A jack. */
export interface Jack {
  /** The name in plain words: `trolley jack`. */
  readonly name: string
  /** Rated load. */
  readonly rating: Quantity<MassUnit>
}
