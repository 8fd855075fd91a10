import { type Reason, refuse, requireOneOf } from '../base/index.js'
import type { Quantity } from '../quantity/index.js'
import { threadReason } from './codes.js'
import type { Thread } from './thread.js'

export type PlugHousing = 'steel' | 'cast iron' | 'aluminium' | 'not stated'

/** The expected torque of a plug, or why it is unknown. */
export type PlugTorqueBand =
  | {
      readonly verdict: 'band'
      readonly min: Quantity<'N.m'>
      readonly max: Quantity<'N.m'>
      /** The published figures behind the band, lowest first. */
      readonly published: readonly Quantity<'N.m'>[]
      readonly reasons: readonly Reason[]
    }
  | { readonly verdict: 'cannot tell'; readonly reasons: readonly Reason[] }

function listPublishedTorques(row: PlugTorqueRow, housing: PlugHousing): number[] {
  const figures: number[] = []
  if (housing !== 'aluminium') {
    if (row.copperRing) figures.push(row.copperRing.steel)
    if (row.other?.steel !== undefined) figures.push(row.other.steel)
  }
  if (housing === 'aluminium' || housing === 'not stated') {
    if (row.copperRing) figures.push(row.copperRing.aluminium)
    if (row.other) figures.push(row.other.aluminium[0], row.other.aluminium[0] + row.other.aluminium[1])
  }
  return figures.sort((first, second) => first - second)
}

/**
 * Finds the expected torque band of a plug with this thread, for rules that find wrong units. Never use it as
 * a tightening torque: the machine's manual always decides.
 *
 * Band = half the lowest to 1.75 × the highest published figure for that housing.
 *
 * Source: an engine maker's works standards MTN 5183-1 and MTN 5183-6, from a secondary source. Their
 * threads are oiled; no table for dry threads was found, so dry plugs are compared with this one too. The width is
 * a house rule: the band includes every published figure, with a margin for other washers, and for dry threads. If
 * the housing is known, the ratio of its ends is less than 9.80665, so a figure inside it that is multiplied
 * or divided by 9.80665 or 12 is always outside.
 */
export function findPlugTorqueBand(thread: Thread, housing: PlugHousing): PlugTorqueBand {
  if (typeof thread !== 'object' || thread === null || typeof thread.designation !== 'string')
    throw refuse('thread', thread, 'a thread as parseThread gives it')
  requireOneOf('housing', housing, ['steel', 'cast iron', 'aluminium', 'not stated'])
  const { designation, form } = thread
  if (form === 'taper')
    return { verdict: 'cannot tell', reasons: [threadReason('thread/taper-plug', { thread: designation })] }
  const row = PLUG_TORQUES.find((candidate) => candidate.thread === designation)
  const published = row === undefined ? [] : listPublishedTorques(row, housing)
  const [lowest] = published
  const highest = published.at(-1)
  if (lowest === undefined || highest === undefined)
    return {
      verdict: 'cannot tell',
      reasons: [threadReason('thread/plug-not-in-table', { thread: designation, housing })],
    }
  const min = { value: lowest / 2, unit: 'N.m' as const }
  const max = { value: highest * 1.75, unit: 'N.m' as const }
  return {
    verdict: 'band',
    min,
    max,
    published: published.map((value) => ({ value, unit: 'N.m' })),
    reasons: [threadReason('thread/plug-band', { thread: designation, housing, min, max })],
  }
}

/**
 * Published tightening torques of one plug thread in N·m, as printed; `[value, plus]` with a printed
 * tolerance.
 */
interface PlugTorqueRow {
  /** Designation in the spelling of {@link parseThread}. */
  readonly thread: string
  /** Flat copper ring under the head. */
  readonly copperRing?: { readonly steel: number; readonly aluminium: number }
  /** Another type of seal. */
  readonly other?: { readonly steel?: number; readonly aluminium: readonly [value: number, plus: number] }
}

/**
 * An engine maker's works standards, from a secondary source: MTN 5183-1 (plugs DIN 908, DIN 910, DIN 7604 with a DIN 7603
 * copper ring, threads and faces oiled) and MTN 5183-6 (screw plugs with another type of seal). `steel` means
 * steel and grey cast iron.
 */
const PLUG_TORQUES: readonly PlugTorqueRow[] = [
  { thread: 'M10x1', copperRing: { steel: 15, aluminium: 15 }, other: { steel: 20, aluminium: [10, 2] } },
  { thread: 'M12x1.5', copperRing: { steel: 35, aluminium: 25 }, other: { steel: 35, aluminium: [14, 2] } },
  { thread: 'M14x1.5', copperRing: { steel: 35, aluminium: 25 }, other: { steel: 45, aluminium: [15, 3] } },
  { thread: 'M16x1.5', copperRing: { steel: 40, aluminium: 30 }, other: { steel: 55, aluminium: [18, 3] } },
  { thread: 'M18x1.5', copperRing: { steel: 50, aluminium: 35 }, other: { steel: 70, aluminium: [23, 3] } },
  { thread: 'M20x1.5', copperRing: { steel: 55, aluminium: 45 } },
  { thread: 'M22x1.5', copperRing: { steel: 60, aluminium: 50 }, other: { steel: 100, aluminium: [33, 4] } },
  { thread: 'M24x1.5', copperRing: { steel: 70, aluminium: 60 } },
  { thread: 'M26x1.5', copperRing: { steel: 80, aluminium: 70 } },
  { thread: 'M27x2', copperRing: { steel: 80, aluminium: 70 }, other: { steel: 170, aluminium: [57, 5] } },
  { thread: 'M30x1.5', copperRing: { steel: 100, aluminium: 90 } },
  { thread: 'M30x2', copperRing: { steel: 95, aluminium: 85 } },
  {
    thread: 'M33x2',
    copperRing: { steel: 120, aluminium: 110 },
    other: { steel: 310, aluminium: [103, 10] },
  },
  { thread: 'M36x1.5', copperRing: { steel: 130, aluminium: 115 } },
  { thread: 'M38x1.5', copperRing: { steel: 140, aluminium: 120 } },
  { thread: 'M42x1.5', copperRing: { steel: 150, aluminium: 130 } },
  { thread: 'M45x1.5', copperRing: { steel: 160, aluminium: 140 } },
  { thread: 'M48x1.5', copperRing: { steel: 170, aluminium: 145 } },
  { thread: 'M52x1.5', copperRing: { steel: 180, aluminium: 150 } },
  { thread: 'M56x2', copperRing: { steel: 190, aluminium: 160 } },
  { thread: 'M64x2', copperRing: { steel: 205, aluminium: 175 } },
  { thread: 'M42x2', other: { steel: 330, aluminium: [110, 11] } },
  { thread: 'M48x2', other: { steel: 420, aluminium: [140, 14] } },
  { thread: 'M60x2', other: { aluminium: [200, 20] } },
]
