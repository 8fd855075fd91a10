import type { Quantity } from '../quantity/index.js'

export interface MetricThread {
  readonly kind: 'metric'
  /** The standard spelling: `M18x1.5`, or `M10` for a coarse pitch. */
  readonly designation: string
  readonly form: 'parallel'
  readonly majorDiameter: Quantity<'mm'>
  readonly pitch: Quantity<'mm'>
  readonly coarse: boolean
  /** As written after the size, such as `6g`. */
  readonly toleranceClass?: string
}

export interface UnifiedThread {
  readonly kind: 'unified'
  readonly designation: string
  readonly form: 'parallel'
  readonly majorDiameter: Quantity<'in'>
  readonly threadsPerInch: number
  /** `UN`: constant pitch, such as 12 or 16 threads per inch on any diameter. */
  readonly series: 'UNC' | 'UNF' | 'UNEF' | 'UN'
  readonly toleranceClass?: string
}

export interface PipeThread {
  readonly kind: 'pipe'
  readonly designation: string
  /** A taper thread seals in the thread and is tightened by turns; a parallel one needs a ring or a washer. */
  readonly form: 'parallel' | 'taper'
  /** ISO 228-1 (G), ISO 7-1 (R, Rc taper, Rp parallel), American taper (NPT, NPTF). */
  readonly system: 'G' | 'R' | 'Rc' | 'Rp' | 'NPT' | 'NPTF'
  /** Nominal pipe size in inches as written, such as `1/2` or `1 1/4`: not a diameter. */
  readonly size: string
  readonly threadsPerInch: number
}

export type Thread = MetricThread | UnifiedThread | PipeThread
