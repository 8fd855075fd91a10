import { type Reason, refuse, requireOneOf } from '../base/index.js'
import type { Quantity } from '../quantity/index.js'
import { threadReason } from './codes.js'
import { PLUG_TORQUES, type PlugTorqueRow } from './plugTorques.js'
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
 * Source: an engine maker's works standards MTN 5183-1 and MTN 5183-6, from a secondary source. The width is
 * a house rule: the band includes every published figure, with a margin for other washers and lubricants. If
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
