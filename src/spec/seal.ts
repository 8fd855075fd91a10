import type { Figure } from '../quantity/index.js'
import type { NotStated, SourceRef, SpecValue } from './specValue.js'

/** When a seal is replaced. */
export type ReplaceWhen = 'every opening' | 'on condition' | 'not stated'

/** Another number of the same part. */
export interface OtherNumber {
  /** The number as printed: `UM-2025`. */
  readonly partNumber: string
  /** The source of the number. */
  readonly source?: SourceRef
}

/** The numbers under which a part is sold. */
export interface NumberedPart {
  /** The part number as printed: `UM-2024`. */
  readonly partNumber?: string
  /** The number that the maker sells in its place: `{ partNumber: UM-2025 }`. Buy this number. */
  readonly supersededBy?: OtherNumber
  /** Numbers of other makers for the same part: `[{ partNumber: KX-20 }]`. */
  readonly equivalents?: readonly OtherNumber[]
}

interface SealPart extends NumberedPart {
  /** Whether a new seal is fitted at every opening, or only if the old one is worn. */
  readonly replace: ReplaceWhen
  /** The source of the seal data. */
  readonly source?: SourceRef
}

/** A metal or fibre washer that the plug crushes when tightened. */
export interface CrushWasher extends SealPart {
  readonly kind: 'crush washer'
  /** `captive`: held on the plug, in the undercut behind its thread. */
  readonly form: 'flat' | 'folded' | 'captive' | 'not stated'
  /** The material of the washer. */
  readonly material: 'copper' | 'aluminium' | 'soft steel' | 'fibre' | 'not stated'
  /** Inside and outside diameter and thickness, as printed: `18 x 24 x 1.5 mm`. */
  readonly size?: {
    /** The inside diameter, as text: `18`. */
    readonly inside: Figure
    /** The outside diameter, as text: `24`. */
    readonly outside: Figure
    /** The thickness, as text: `1.5`. */
    readonly thickness: Figure
    /** The unit of the three sizes. */
    readonly unit: 'mm' | 'in'
  }
}

/** A metal washer with a rubber lip, or a rubber profile ring. */
export interface BondedSeal extends SealPart {
  readonly kind: 'bonded seal'
  /** `profile ring`: all rubber, in the undercut behind the plug's thread. Default: a washer with a rubber lip. */
  readonly form?: 'profile ring'
  /** The kind of rubber: `NBR`. */
  readonly material: Elastomer
  /** Inside and outside diameter and thickness, as printed: `18 x 24 x 1.5 mm`. */
  readonly size?: {
    /** The inside diameter, as text: `18`. */
    readonly inside: Figure
    /** The outside diameter, as text: `24`. */
    readonly outside: Figure
    /** The thickness, as text: `1.5`. */
    readonly thickness: Figure
    /** The unit of the three sizes. */
    readonly unit: 'mm' | 'in'
  }
}

/** Kinds of rubber, by their usual abbreviations. */
export type Elastomer =
  | 'NBR'
  | 'HNBR'
  | 'FKM'
  | 'ACM'
  | 'EPDM'
  | 'VMQ'
  | 'FVMQ'
  | 'AU'
  | 'CR'
  | 'FFKM'
  | 'not stated'

/** A rubber ring of round section. */
export interface ORing extends SealPart {
  readonly kind: 'o-ring'
  /** The kind of rubber: `NBR`. */
  readonly material: Elastomer
  /** An AS568 dash number such as `-214`, or a JIS B 2401 number such as `P22` or `G45`. */
  readonly designation?: string
  /** Inside diameter and section, as printed: `15.6 x 1.78 mm`. */
  readonly size?: {
    /** The inside diameter, as text: `15.6`. */
    readonly inside: Figure
    /** The thickness of the ring, as text: `1.78`. */
    readonly section: Figure
    /** The unit of both sizes. */
    readonly unit: 'mm' | 'in'
  }
}

/** Sealant or tape on a thread. */
export interface ThreadSealant extends SealPart {
  readonly kind: 'thread sealant'
  /** The product or its kind: `PTFE tape`. */
  readonly product: string
}

/** A cut or formed gasket. */
export interface CutGasket extends SealPart {
  readonly kind: 'gasket'
  /** The material of the gasket: `paper`. */
  readonly material: string
}

/** A gasket from a tube, applied as a bead. */
export interface LiquidGasket extends SealPart {
  readonly kind: 'liquid gasket'
  /** The product or its kind: `silicone gasket maker`. */
  readonly product: string
  /** The diameter of the bead: `3 mm`. */
  readonly bead: SpecValue<'mm'>
  /** Time from closing the cover until oil may touch the joint. */
  readonly cureBeforeOil: SpecValue<'h' | 'min'>
}

/** The part has no seal. */
export interface NoSeal {
  readonly kind: 'none'
  /** The source. */
  readonly source?: SourceRef
}

/** A seal of an opening, a cover or a filter; `none` if there is none, `not stated` if the manual does not say. */
export type Seal =
  | CrushWasher
  | BondedSeal
  | ORing
  | ThreadSealant
  | CutGasket
  | LiquidGasket
  | NoSeal
  | NotStated
