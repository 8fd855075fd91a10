import { quoteValue, refuse } from '../base/index.js'
import type { Quantity } from '../quantity/index.js'
import type { MetricThread, UnifiedThread } from './thread.js'

/** An area in mm². */
interface StressArea {
  readonly squareMillimetres: number
}

const MILLIMETRES_PER_INCH = 25.4

/**
 * Calculates the tensile stress area of a bolt, for proof and clamp loads. Pipe threads have none.
 *
 * Metric: A = π/4 · ((d2 + d3)/2)² = π/4 · (d − 13/12·H)², with diameter d and H = √3/2 × pitch (0.9382·P).
 * Unified: A = π/4 · (d − 0.9743/n)², with n threads per inch.
 *
 * Source: ISO 898-1 and ASME B1.1, both from memory. The metric formula agrees with the areas that ISO 898-1 prints for M6
 * to M24, read in a secondary source. The unified formula agrees with the 0.0775 in² of an IFI worked example for 3/8-16.
 */
export function calculateStressArea(thread: MetricThread | UnifiedThread): StressArea {
  requireStraightThread(thread, 'metric', 'unified')
  const coreDiameter =
    thread.kind === 'metric'
      ? thread.majorDiameter.value - (13 / 12) * (Math.sqrt(3) / 2) * thread.pitch.value
      : (thread.majorDiameter.value - 0.9743 / thread.threadsPerInch) * MILLIMETRES_PER_INCH
  return { squareMillimetres: (Math.PI / 4) * coreDiameter * coreDiameter }
}

/**
 * Calculates the pitch diameter of a metric thread, to find the friction in the thread. At this diameter ridges and
 * grooves are equally wide.
 *
 * d2 = d − 0.649519·P, with diameter d and pitch P.
 *
 * Source: ISO 68-1 profile, 3/4 of H = 0.866025·P, from memory.
 */
export function calculatePitchDiameter(thread: MetricThread): Quantity<'mm'> {
  requireStraightThread(thread, 'metric')
  return { value: thread.majorDiameter.value - 0.649519 * thread.pitch.value, unit: 'mm' }
}

/** Throws TypeError if the argument is not a metric or unified thread. */
function requireStraightThread<Kind extends 'metric' | 'unified'>(
  thread: unknown,
  ...kinds: readonly Kind[]
): asserts thread is Extract<MetricThread | UnifiedThread, { kind: Kind }> {
  const threadFields = (thread ?? {}) as Partial<MetricThread> & { readonly threadsPerInch?: unknown }
  const { kind, majorDiameter } = threadFields
  if (!(kinds as readonly unknown[]).includes(kind))
    throw refuse('thread', thread, `a ${kinds.join(' or ')} thread`)
  requireNumber('majorDiameter.value', majorDiameter?.value)
  if (kind === 'metric') requireNumber('pitch.value', threadFields.pitch?.value)
  else requireNumber('threadsPerInch', threadFields.threadsPerInch)
  const unit = kind === 'metric' ? 'mm' : 'in'
  if (majorDiameter?.unit !== unit)
    throw refuse('thread.majorDiameter.unit', majorDiameter?.unit, `${unit} in a ${kind} thread`)
}

function requireNumber(fieldName: string, value: unknown): void {
  if (typeof value !== 'number')
    throw new TypeError(
      `thread.${fieldName} must be a number, got ${quoteValue(value)}; parseThread reads a thread from a text`,
    )
}
