import type { Reason } from '../base/index.js'
import type { Quantity } from '../quantity/index.js'
import { addUpFillingTimes } from './addUpFillingTimes.js'
import { type FillCodes, fillReason } from './codes.js'
import { calculateFunnelVolume, calculateHoseArea } from './hoseFlow.js'
import { type PourInput, readPourInput } from './readPourInput.js'

/** One part of a pour. */
export interface PourPart {
  readonly time: Quantity<'s'>
  /** The same time by the plain laminar law, without kinetic and entrance correction. */
  readonly uncorrected: Quantity<'s'>
}

export interface PourTime {
  readonly verdict: 'pour time'
  /** From pouring into the funnel until oil comes out of the hose. */
  readonly hoseFills: PourPart
  /** The funnel empties while the hose is full. */
  readonly funnelEmpties: PourPart
  /** The oil in the hose runs out; wait for this before taking the hose away. */
  readonly hoseEmpties: PourPart
  readonly total: Quantity<'s'>
  /** Number of funnel fillings. */
  readonly fillings: number
  /** Volume of the full hose. */
  readonly hoseVolume: Quantity<'mL'>
  /** Maximum Reynolds number in the hose. */
  readonly reynolds: number
  readonly reasons: readonly Reason<keyof FillCodes>[]
}

export type PourVerdict =
  | PourTime
  | { readonly verdict: 'cannot tell'; readonly reasons: readonly Reason<keyof FillCodes>[] }

/** Maximum Reynolds number of laminar flow, inclusive. */
const MAX_LAMINAR_REYNOLDS = 2100

/** Six digits: engines differ in the last ones of a logarithm, and reasons are compared. */
const roundSum = (value: number): number => Number(value.toPrecision(6))
const MAX_FILLINGS = 1000

/**
 * Calculates how long a refill through a funnel and a hose takes, in three parts that the technician can see. For
 * the viscosity of an oil use {@link viscosityAt}. Do not use it for pumps or thin liquids: if the flow may not be
 * laminar, the answer is `cannot tell`.
 *
 * Hose fills: ∫ dx/V(x); funnel empties: (1/C)·ln((h + Z)/h) with C = g·d⁴/(32·ν·L·D²) for a cylinder,
 * integrated for a cone; hose empties: 32·ν·L²/(g·d²·h). Each with g·H = 32·ν·x·V/d² + 1.1·V² for the kinetic
 * energy and the entrance, except the last, since no oil enters then.
 *
 * @param input - `funnel` (cylinder, or cone that narrows to the hose's bore), `hose` with its bore, length
 *   and the drop of the funnel's floor above its lower end, lengths above 0; `kinematicViscosity` above 0;
 *   `volume` above 0. If the volume is larger than the funnel, the funnel is filled again each time it is
 *   empty. The time to fill it is not included; a funnel that is always topped up is faster
 * @returns the parts and their total in seconds, not rounded, or `cannot tell` with the reason. The oil film on the
 *   walls is not included; a reason states this
 * @throws TypeError or RangeError if a part of the input is not a quantity of 0 or more; 0 gives `cannot tell`
 *
 * Source: F. M. White, Fluid Mechanics, 5th ed., problem 6.27 (funnel with the hose full). Hagen–Poiseuille for the
 * other parts. Laminar up to Re 2100, entrance length 0.06·Re·d and the factor 1.1 from secondary sources.
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
  const parsedInput = readPourInput(input)
  if ('code' in parsedInput) return cannotTell(parsedInput)
  const { flow, volume } = parsedInput
  const { funnel, hose } = input
  if (flow.drop === 0) return cannotTell(fillReason('fill/hose-not-below-funnel', {}))
  if (flow.drop > flow.length)
    return cannotTell(fillReason('fill/drop-longer-than-hose', { drop: hose.drop, length: hose.length }))
  if (flow.bore >= flow.topDiameter) {
    const params = { bore: hose.bore, diameter: funnel.diameter }
    return cannotTell(fillReason('fill/bore-wider-than-funnel', params))
  }
  const fillings = Math.ceil((volume / calculateFunnelVolume(flow)) * (1 - 1e-12))
  if (fillings > MAX_FILLINGS)
    return cannotTell(fillReason('fill/funnel-too-small', { fillings, limit: MAX_FILLINGS }))
  const correctedTimes = addUpFillingTimes(flow, volume)
  const plainTimes = addUpFillingTimes({ ...flow, kineticFactor: 0 }, volume)
  const reynolds = (correctedTimes.maxSpeed * flow.bore) / flow.viscosity
  if (!(reynolds <= MAX_LAMINAR_REYNOLDS))
    return cannotTell(
      fillReason('fill/flow-not-laminar', { reynolds: roundSum(reynolds), limit: MAX_LAMINAR_REYNOLDS }),
    )
  const entrance = 0.06 * ((correctedTimes.maxFullSpeed * flow.bore) / flow.viscosity) * flow.bore
  if (entrance > flow.length) {
    const params = {
      entrance: { value: roundSum(entrance * 1000), unit: 'mm' },
      length: hose.length,
    } as const
    return cannotTell(fillReason('fill/entrance-longer-than-hose', params))
  }
  const makePart = (time: number, uncorrected: number): PourPart => ({
    time: { value: time, unit: 's' },
    uncorrected: { value: uncorrected, unit: 's' },
  })
  const total = correctedTimes.fillSeconds + correctedTimes.emptySeconds + correctedTimes.drainSeconds
  const hoseVolume = { value: calculateHoseArea(flow) * flow.length * 1e6, unit: 'mL' } as const
  const funnelSize = { value: calculateFunnelVolume(flow) * 1e6, unit: 'mL' } as const
  const reasons: Reason<keyof FillCodes>[] = [
    fillReason('fill/flow-laminar', { reynolds: roundSum(reynolds), limit: MAX_LAMINAR_REYNOLDS }),
    fillReason('fill/kinetic-correction', {
      seconds: roundSum(total - plainTimes.fillSeconds - plainTimes.emptySeconds - plainTimes.drainSeconds),
    }),
    ...(fillings > 1 ? [fillReason('fill/several-fillings', { fillings, funnel: funnelSize })] : []),
    ...(correctedTimes.isFull ? [] : [fillReason('fill/hose-never-full', { hose: hoseVolume })]),
    fillReason('fill/wall-film-not-counted', {}),
  ]
  return {
    verdict: 'pour time',
    hoseFills: makePart(correctedTimes.fillSeconds, plainTimes.fillSeconds),
    funnelEmpties: makePart(correctedTimes.emptySeconds, plainTimes.emptySeconds),
    hoseEmpties: makePart(correctedTimes.drainSeconds, plainTimes.drainSeconds),
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
