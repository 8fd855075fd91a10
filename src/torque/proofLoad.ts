import { quoteValue, type Reason } from '../base/index.js'
import type { Quantity } from '../quantity/index.js'
import { type MetricThread, stressArea, type UnifiedThread } from '../thread/index.js'
import { boltClasses } from './boltClasses.js'
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
 * The tension that a bolt of a stated class bears without staying longer, for {@link clampLoad}. Only where the class
 * is stated: drain plugs have none.
 *
 * F = S·A, with proof stress S of the class and {@link stressArea} A.
 *
 * Source: ISO 898-1:1999 and SAE J429, both read second hand; 5.6 and 6.8 were not read and are left out.
 */
export function proofLoad(thread: MetricThread | UnifiedThread, propertyClass: string): ProofLoad {
  const { squareMillimetres } = stressArea(thread)
  if (typeof propertyClass !== 'string')
    throw new TypeError(`propertyClass must be a string, got ${quoteValue(propertyClass)}`)
  const rows = boltClasses().filter(({ name }) => name === propertyClass)
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
