import type { Reason } from '../base/index.js'
import type { Exact, Quantity, TorqueUnit } from '../quantity/index.js'
import {
  compareExact,
  exactOf,
  over,
  readOwnBand,
  requireBand,
  singleFigure,
  TORQUE,
  times,
} from '../quantity/index.js'
import type { StatedValue } from '../spec/index.js'
import type { PlugHousing } from '../thread/index.js'
import { torqueReason } from './codes.js'
import { exactTorque, nearestTorque } from './exactTorque.js'
import { plugFigures } from './plugFigures.js'

export type SlipFactor = '×12' | '÷12' | '×9.80665' | '÷9.80665'

/** A ratio that turns the printed figure into a usual one. */
interface TorqueSlip {
  /** What the printed figure must be multiplied or divided by. */
  readonly factor: SlipFactor
  /** The corrected torque, in the sheet's unit. */
  readonly becomes: Quantity<TorqueUnit>
  /** The unit that the printed digits would then have been meant in, where the ratio is that of two units. */
  readonly meant?: TorqueUnit
}

export interface TorqueSlipVerdict {
  /** `usual`: inside the band; `slip`: outside, and a known ratio brings it inside; `unusual`: outside, no ratio does. */
  readonly verdict: 'usual' | 'slip' | 'unusual' | 'cannot tell'
  /** The slip whose units explain it first. */
  readonly slips: readonly TorqueSlip[]
  readonly reasons: readonly Reason[]
}

const RATIOS: readonly {
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
 * Whether a plug's printed torque looks like one that slipped by the ratio of two units (lbf·in for lbf·ft, kgf·m for
 * N·m), for rules that read sheets. Only for drain, fill and level plugs: bolts have other torques.
 *
 * Source: ratios exact by definition (12 in = 1 ft; standard gravity 9.80665); the band is {@link plugTorqueBand}'s.
 */
export function findTorqueSlip(
  torque: StatedValue<TorqueUnit>,
  thread: string | undefined,
  housing: PlugHousing,
): TorqueSlipVerdict {
  requireBand('torque', torque, TORQUE)
  const { designation, band: expected } = plugFigures(thread, housing)
  if (expected.verdict === 'cannot tell')
    return { verdict: 'cannot tell', slips: [], reasons: expected.reasons }
  const figure = singleFigure(readOwnBand(torque))
  const min = exactTorque(expected.min, torque.unit)
  const max = exactTorque(expected.max, torque.unit)
  const inside = (value: Exact) => compareExact(value, min) >= 0 && compareExact(value, max) <= 0
  const band = { min: nearestTorque(min, torque.unit), max: nearestTorque(max, torque.unit) }
  const printedTorque = nearestTorque(figure, torque.unit)
  const where = { torque: printedTorque, band, thread: designation }
  if (inside(figure))
    return {
      verdict: 'usual',
      slips: [],
      reasons: [...expected.reasons, torqueReason('torque/inside-plug-band', where)],
    }
  const slips = RATIOS.flatMap(({ factor, ratio, way, printed, meant }): TorqueSlip[] => {
    const corrected = way === 'times' ? times(figure, exactOf(ratio)) : over(figure, exactOf(ratio))
    if (!inside(corrected)) return []
    return [
      {
        factor,
        becomes: nearestTorque(corrected, torque.unit),
        ...(printed === torque.unit ? { meant } : {}),
      },
    ]
  })
  slips.sort((first, second) => Number(second.meant !== undefined) - Number(first.meant !== undefined))
  return {
    verdict: slips.length > 0 ? 'slip' : 'unusual',
    slips,
    reasons: [
      ...expected.reasons,
      torqueReason('torque/outside-plug-band', where),
      ...slips.map((slip) => torqueReason('torque/slip', { ...slip, torque: printedTorque, band })),
    ],
  }
}
