import { requireStraightThread } from './requireStraightThread.js'
import type { MetricThread, UnifiedThread } from './thread.js'

/** An area in mm². */
export interface StressArea {
  readonly squareMillimetres: number
}

const MILLIMETRES_PER_INCH = 25.4

/**
 * Calculates the tensile stress area of a bolt, for proof and clamp loads. Pipe threads have none.
 *
 * Metric: A = π/4 · ((d2 + d3)/2)² = π/4 · (d − 13/12·H)², with diameter d and H = √3/2 × pitch (0.9382·P).
 * Unified: A = π/4 · (d − 0.9743/n)², with n threads per inch.
 *
 * Source: ISO 898-1 and ASME B1.1; the formulas are from memory and agree with ISO 898-1's printed areas from M6 to M24
 * (from a secondary source) and with 0.0775 in² for 3/8-16 (IFI worked example).
 */
export function calculateStressArea(thread: MetricThread | UnifiedThread): StressArea {
  requireStraightThread(thread, 'metric', 'unified')
  const coreDiameter =
    thread.kind === 'metric'
      ? thread.majorDiameter.value - (13 / 12) * (Math.sqrt(3) / 2) * thread.pitch.value
      : (thread.majorDiameter.value - 0.9743 / thread.threadsPerInch) * MILLIMETRES_PER_INCH
  return { squareMillimetres: (Math.PI / 4) * coreDiameter * coreDiameter }
}
