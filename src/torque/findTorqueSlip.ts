import type { Reason } from '../base/index.js'
import type { Exact, Quantity, TorqueUnit } from '../quantity/index.js'
import {
  chooseSingleFigure,
  compareExact,
  divide,
  exactOf,
  multiply,
  readBandAsPrinted,
  requireBand,
  TORQUE_FACTORS,
} from '../quantity/index.js'
import type { StatedValue } from '../spec/index.js'
import { findPlugTorqueBand, type PlugHousing, type PlugTorqueBand, parseThread } from '../thread/index.js'
import { torqueReason } from './codes.js'
import { exactTorque, findNearestTorque } from './exactTorque.js'

export type SlipFactor = '×12' | '÷12' | '×9.80665' | '÷9.80665'

/** A unit mistake that would explain the printed figure. */
interface UnitMistake {
  /** The factor that corrects the printed figure. */
  readonly factor: SlipFactor
  /** The corrected torque, in the sheet's unit. */
  readonly becomes: Quantity<TorqueUnit>
  /**
   * The unit that was probably meant; absent if the factor is not the ratio of the printed unit to another.
   */
  readonly meant?: TorqueUnit
}

interface TorqueSlipVerdict {
  /**
   * `usual`: inside the band; `slip`: outside, but a known ratio brings it inside; `unusual`: outside, and no
   * known ratio brings it inside.
   */
  readonly verdict: 'usual' | 'slip' | 'unusual' | 'cannot tell'
  /** Mistakes with a probable unit come first. */
  readonly unitMistakes: readonly UnitMistake[]
  readonly reasons: readonly Reason[]
}

const SLIP_RATIOS: readonly {
  readonly factor: SlipFactor
  readonly ratio: string
  readonly way: 'times' | 'over'
  readonly printed: TorqueUnit
  readonly meant: TorqueUnit
}[] = [
  { factor: '×12', ratio: '12', way: 'times', printed: 'lbf.in', meant: 'lbf.ft' },
  { factor: '÷12', ratio: '12', way: 'over', printed: 'lbf.ft', meant: 'lbf.in' },
  { factor: '×9.80665', ratio: '9.80665', way: 'times', printed: 'N.m', meant: 'kgf.m' },
  { factor: '÷9.80665', ratio: '9.80665', way: 'over', printed: 'kgf.m', meant: 'N.m' },
]

/**
 * Checks whether a plug's printed torque has the wrong unit (lbf·in for lbf·ft, kgf·m for N·m). Only for drain, fill and
 * level plugs: bolts have other torques.
 *
 * Source: ratios exact by definition (12 in = 1 ft; standard gravity 9.80665). The band is that of {@link
 * findPlugTorqueBand}.
 */
export function findTorqueSlip(
  torque: StatedValue<TorqueUnit>,
  thread: string | undefined,
  housing: PlugHousing,
): TorqueSlipVerdict {
  requireBand('torque', torque, TORQUE_FACTORS)
  const { designation, band: expectedBand } = findPlugBand(thread, housing)
  if (expectedBand.verdict === 'cannot tell')
    return { verdict: 'cannot tell', unitMistakes: [], reasons: expectedBand.reasons }
  const figure = chooseSingleFigure(readBandAsPrinted(torque))
  const min = exactTorque(expectedBand.min, torque.unit)
  const max = exactTorque(expectedBand.max, torque.unit)
  const isInside = (value: Exact) => compareExact(value, min) >= 0 && compareExact(value, max) <= 0
  const band = { min: findNearestTorque(min, torque.unit), max: findNearestTorque(max, torque.unit) }
  const printedTorque = findNearestTorque(figure, torque.unit)
  const params = { torque: printedTorque, band, thread: designation }
  if (isInside(figure))
    return {
      verdict: 'usual',
      unitMistakes: [],
      reasons: [...expectedBand.reasons, torqueReason('torque/usual-for-plug', params)],
    }
  const unitMistakes = SLIP_RATIOS.flatMap(({ factor, ratio, way, printed, meant }): UnitMistake[] => {
    const correctedTorque =
      way === 'times' ? multiply(figure, exactOf(ratio)) : divide(figure, exactOf(ratio))
    if (!isInside(correctedTorque)) return []
    return [
      {
        factor,
        becomes: findNearestTorque(correctedTorque, torque.unit),
        ...(printed === torque.unit ? { meant } : {}),
      },
    ]
  })
  unitMistakes.sort((first, second) => Number(second.meant !== undefined) - Number(first.meant !== undefined))
  return {
    verdict: unitMistakes.length > 0 ? 'slip' : 'unusual',
    unitMistakes,
    reasons: [
      ...expectedBand.reasons,
      torqueReason('torque/unusual-for-plug', params),
      ...unitMistakes.map((slip) =>
        torqueReason('torque/unit-slip', { ...slip, torque: printedTorque, band }),
      ),
    ],
  }
}

/** Finds the usual torques of a plug with this thread, or the reason why they are unknown. */
export function findPlugBand(
  thread: string | undefined,
  housing: PlugHousing,
): { readonly designation: string; readonly band: PlugTorqueBand } {
  const cannotTell = (reason: Reason) => ({
    designation: thread ?? '',
    band: { verdict: 'cannot tell' as const, reasons: [reason] },
  })
  if (thread === undefined) return cannotTell(torqueReason('torque/thread-missing', {}))
  const parsedThread = parseThread(thread)
  if (!parsedThread.ok) return cannotTell(torqueReason('torque/thread-unreadable', { thread }))
  return {
    designation: parsedThread.value.designation,
    band: findPlugTorqueBand(parsedThread.value, housing),
  }
}
