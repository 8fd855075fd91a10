import type { Reason } from '../base/index.js'
import type { Quantity } from '../quantity/index.js'
import { type FillCodes, fillReason } from './codes.js'
import { funnelVolume, hoseArea } from './hoseFlow.js'
import { pourFillings } from './pourFillings.js'
import { type PourInput, readPourInput } from './readPourInput.js'

/** One part of a pour. */
export interface PourPart {
  readonly time: Quantity<'s'>
  /** The same by the plain laminar law, without kinetic and entrance correction. */
  readonly uncorrected: Quantity<'s'>
}

export interface PourTime {
  readonly verdict: 'pour time'
  /** From pouring into the funnel until oil comes out below. */
  readonly hoseFills: PourPart
  /** The funnel runs empty, the hose full. */
  readonly funnelEmpties: PourPart
  /** The oil in the hose runs out: the wait before the hose comes out of the hole. */
  readonly hoseEmpties: PourPart
  readonly total: Quantity<'s'>
  /** How often the funnel is filled. */
  readonly fillings: number
  /** What the hose holds when full. */
  readonly hoseVolume: Quantity<'mL'>
  /** Largest Reynolds number in the hose. */
  readonly reynolds: number
  readonly reasons: readonly Reason<keyof FillCodes>[]
}

export type PourVerdict =
  | PourTime
  | { readonly verdict: 'cannot tell'; readonly reasons: readonly Reason<keyof FillCodes>[] }

/** Largest Reynolds number that still counts as laminar; it belongs to the laminar side. */
const LAMINAR = 2100
const MAX_FILLINGS = 1000

/**
 * How long a measured refill takes through a funnel and a hose, in three parts that the technician sees, for the
 * step "wait for the hose". It takes a viscosity, never an oil: ask {@link viscosityAt} for it. Not for pumps, nor
 * for thin liquids: where the flow may not be laminar the answer is `cannot tell`.
 *
 * Hose fills: ∫ dx/V(x); funnel empties: (1/C)·ln((h + Z)/h) with C = g·d⁴/(32·ν·L·D²) for a cylinder, integrated for a
 * cone; hose empties: 32·ν·L²/(g·d²·h). Each with g·H = 32·ν·x·V/d² + 1.1·V² for the kinetic energy and the entrance,
 * but the last, since no oil enters then.
 *
 * @param input - `funnel` (cylinder, or cone that narrows to the hose's bore), `hose` with its bore, length and the
 *   drop of the funnel's floor above its lower end, lengths above 0; `kinematicViscosity` above 0; `volume` above 0.
 *   Where the volume is more than the funnel holds, the funnel is filled again each time it has just run empty; the
 *   technician's own pouring takes no time in this count, and a funnel kept topped up is faster
 * @returns the parts and their total in seconds, not rounded, or `cannot tell` with the reason. Oil that stays as a
 *   film on the walls is named in the reasons and not counted
 * @throws TypeError or RangeError when a part of the input is not a quantity of 0 or more; 0 gives `cannot tell`
 *
 * Source: F. M. White, Fluid Mechanics, 5th ed., problem 6.27 (funnel with the hose full); Hagen–Poiseuille for the
 * other parts; laminar up to Re 2100, entrance length 0.06·Re·d and the factor 1.1 as quoted in texts read second hand.
 *
 * @example
 * ```ts
 * import { pourTime } from 'drivetrain-service/v1/fill'
 * // How long does half a litre of 460 mm²/s take through a 12 mm hose of 1.5 m?
 * const answer = pourTime({
 *   funnel: { shape: 'cylinder', diameter: { value: 120, unit: 'mm' }, depth: { value: 100, unit: 'mm' } },
 *   hose: {
 *     bore: { value: 12, unit: 'mm' }, length: { value: 1.5, unit: 'm' }, drop: { value: 1.5, unit: 'm' },
 *   },
 *   kinematicViscosity: { value: 460, unit: 'mm2/s' },
 *   volume: { value: 0.5, unit: 'L' },
 * })
 * answer.verdict === 'pour time' && answer.hoseEmpties.time.value.toFixed(1) // => '15.6'
 * ```
 */
export function pourTime(input: PourInput): PourVerdict {
  const read = readPourInput(input)
  if ('code' in read) return cannotTell(read)
  const { flow, volume } = read
  const { funnel, hose } = input
  if (flow.drop === 0) return cannotTell(fillReason('fill/hose-not-below-funnel', {}))
  if (flow.drop > flow.length)
    return cannotTell(fillReason('fill/drop-longer-than-hose', { drop: hose.drop, length: hose.length }))
  if (flow.bore >= flow.topDiameter) {
    const params = { bore: hose.bore, diameter: funnel.diameter }
    return cannotTell(fillReason('fill/bore-wider-than-funnel', params))
  }
  const fillings = Math.ceil((volume / funnelVolume(flow)) * (1 - 1e-12))
  if (fillings > MAX_FILLINGS)
    return cannotTell(fillReason('fill/funnel-too-small', { fillings, limit: MAX_FILLINGS }))
  const corrected = pourFillings(flow, volume)
  const plain = pourFillings({ ...flow, kinetic: 0 }, volume)
  const reynolds = (corrected.fastest * flow.bore) / flow.viscosity
  if (!(reynolds <= LAMINAR))
    return cannotTell(fillReason('fill/flow-not-laminar', { reynolds, limit: LAMINAR }))
  const entrance = 0.06 * ((corrected.fastestFull * flow.bore) / flow.viscosity) * flow.bore
  if (entrance > flow.length) {
    const params = { entrance: { value: entrance * 1000, unit: 'mm' }, length: hose.length } as const
    return cannotTell(fillReason('fill/entrance-longer-than-hose', params))
  }
  const part = (time: number, uncorrected: number): PourPart => ({
    time: { value: time, unit: 's' },
    uncorrected: { value: uncorrected, unit: 's' },
  })
  const total = corrected.fills + corrected.empties + corrected.drains
  const hoseVolume = { value: hoseArea(flow) * flow.length * 1e6, unit: 'mL' } as const
  const funnelSize = { value: funnelVolume(flow) * 1e6, unit: 'mL' } as const
  const reasons: Reason<keyof FillCodes>[] = [
    fillReason('fill/flow-laminar', { reynolds, limit: LAMINAR }),
    fillReason('fill/kinetic-correction', { seconds: total - plain.fills - plain.empties - plain.drains }),
    ...(fillings > 1 ? [fillReason('fill/several-fillings', { fillings, funnel: funnelSize })] : []),
    ...(corrected.full ? [] : [fillReason('fill/hose-never-full', { hose: hoseVolume })]),
    fillReason('fill/wall-film-not-counted', {}),
  ]
  return {
    verdict: 'pour time',
    hoseFills: part(corrected.fills, plain.fills),
    funnelEmpties: part(corrected.empties, plain.empties),
    hoseEmpties: part(corrected.drains, plain.drains),
    total: { value: total, unit: 's' },
    fillings,
    hoseVolume,
    reynolds,
    reasons,
  }
}

function cannotTell(reason: Reason<keyof FillCodes>): PourVerdict {
  return { verdict: 'cannot tell', reasons: [reason] }
}
