import { quoteValue, type Reason } from '../base/index.js'
import type { Quantity } from '../quantity/index.js'
import { calculateStressArea, type MetricThread, type UnifiedThread } from '../thread/index.js'
import { torqueReason } from './codes.js'

export type ProofLoad =
  | {
      readonly verdict: 'load'
      readonly load: Quantity<'N'>
      readonly stress: Quantity<'MPa'>
      readonly reasons: readonly Reason[]
    }
  | { readonly verdict: 'cannot tell'; readonly reasons: readonly Reason[] }

/**
 * Calculates the tension that a bolt of a stated class withstands without permanent stretch, for {@link
 * clampLoad}. Do not use it for drain plugs, which have no class.
 *
 * F = S·A, with proof stress S of the class and {@link calculateStressArea} A.
 *
 * Source: ISO 898-1:1999 and SAE J429, both from secondary sources. Classes 5.6 and 6.8 were not read and are
 * left out.
 */
export function calculateProofLoad(thread: MetricThread | UnifiedThread, propertyClass: string): ProofLoad {
  const { squareMillimetres } = calculateStressArea(thread)
  if (typeof propertyClass !== 'string')
    throw new TypeError(`propertyClass must be a string, got ${quoteValue(propertyClass)}`)
  const rows = listBoltClasses().filter(({ name }) => name === propertyClass)
  const cannotTell = (reason: Reason): ProofLoad => ({ verdict: 'cannot tell', reasons: [reason] })
  const [first] = rows
  const last = rows.at(-1)
  if (first === undefined || last === undefined)
    return cannotTell(torqueReason('torque/class-unknown', { propertyClass: propertyClass.slice(0, 64) }))
  const { designation, majorDiameter } = thread
  if ((first.system === 'ISO 898-1') !== (thread.kind === 'metric'))
    return cannotTell(torqueReason('torque/class-not-for-thread', { propertyClass, thread: designation }))
  const row = rows.find(({ from, to }) => majorDiameter.value >= from && majorDiameter.value <= to)
  if (row === undefined) {
    const size = (value: number) => (thread.kind === 'metric' ? `M${value}` : `${value} in`)
    return cannotTell(
      torqueReason('torque/class-not-for-size', {
        propertyClass,
        thread: designation,
        from: size(first.from),
        to: size(last.to),
      }),
    )
  }
  const load = { value: row.proofStressMPa * squareMillimetres, unit: 'N' as const }
  return {
    verdict: 'load',
    load,
    stress: { value: row.proofStressMPa, unit: 'MPa' },
    reasons: [
      torqueReason('torque/proof-load', { stressMPa: row.proofStressMPa, area: squareMillimetres, load }),
    ],
  }
}

/** Proof stress of one class over a range of sizes. */
interface BoltClass {
  readonly name: string
  readonly system: 'ISO 898-1' | 'SAE J429'
  readonly proofStressMPa: number
  /** Smallest and largest nominal diameter of the range: mm for ISO 898-1, inches for SAE J429. */
  readonly from: number
  readonly to: number
}

const PSI_TO_MPA = 0.006894757293168361

/**
 * ISO 898-1:1999 as quoted by a course page, limited to the sizes whose proof loads were read (M6 to M24); 580 MPa for
 * 8.8 up to M16 follows from those loads. SAE J429 as quoted by a university page; grade 2 only for bolts up to 6 in.
 */
function listBoltClasses(): readonly BoltClass[] {
  const iso = (name: string, proofStressMPa: number, from = 6, to = 24) =>
    ({ name, system: 'ISO 898-1', proofStressMPa, from, to }) as const
  const sae = (grade: string, ksi: number, from: number, to: number) =>
    ({
      name: `grade ${grade}`,
      system: 'SAE J429',
      proofStressMPa: ksi * 1000 * PSI_TO_MPA,
      from,
      to,
    }) as const
  return [
    iso('4.6', 225),
    iso('4.8', 310),
    iso('5.8', 380),
    iso('8.8', 580, 6, 16),
    iso('8.8', 600, 18, 24),
    iso('9.8', 650, 6, 16),
    iso('10.9', 830),
    iso('12.9', 970),
    sae('1', 33, 0.25, 1.5),
    sae('2', 55, 0.25, 0.75),
    sae('2', 33, 0.875, 1.5),
    sae('4', 65, 0.25, 1.5),
    sae('5', 85, 0.25, 1),
    sae('5', 74, 1.125, 1.5),
    sae('5.2', 85, 0.25, 1),
    sae('7', 105, 0.25, 1.5),
    sae('8', 120, 0.25, 1.5),
    sae('8.2', 120, 0.25, 1),
  ]
}
