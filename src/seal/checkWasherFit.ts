import { type Reason, refuse, requireObject } from '../base/index.js'
import { convert } from '../quantity/index.js'
import type { CrushWasher } from '../spec/index.js'
import { parseThread, type Thread } from '../thread/index.js'
import { type SealCodes, sealReason } from './codes.js'

export interface WasherFit {
  /** `in the table`: a checked row of DIN 7603; `plausible`: goes over the thread and under the plug's collar. */
  readonly verdict: 'in the table' | 'plausible' | 'doubtful' | 'does not fit' | 'cannot tell'
  readonly reasons: readonly Reason<keyof SealCodes>[]
}

/** Rows of DIN 7603 that were read second hand: thread, inside × outside × thickness in mm. */
const ROWS: readonly (readonly [string, number, number, number])[] = [
  ['M14', 14, 18, 1.5],
  ['M14', 14, 20, 1.5],
  ['M16', 16, 20, 1.5],
  ['M18', 18, 22, 1.5],
  ['M20', 20, 24, 1.5],
  ['M24', 24, 30, 2],
  ['M30', 30, 36, 2],
]

/** Outside diameters of ISO 228-1 threads in mm, from memory. */
const PIPE: Readonly<Record<string, number>> = {
  '1/8': 9.728,
  '1/4': 13.157,
  '3/8': 16.662,
  '1/2': 20.955,
  '3/4': 26.441,
  '1': 33.249,
}

/** House rule: the next thread size is 2 mm away from M14 on, so half of that still fits only one thread. */
const MAX_PLAY = 1
/** House rule: the narrowest checked row has 4 mm more outside than inside; half of that still seals. */
const MIN_RIM = 2
const MIN_THICKNESS = 0.5
const MAX_THICKNESS = 4

/**
 * Whether a sealing washer fits a plug's thread, for checking sheets and stock. It compares sizes only, not
 * the plug's collar or the housing's face, which no sheet states.
 *
 * Fits when thread diameter ≤ inside ≤ thread diameter + 1 mm; both ends included.
 *
 * @param thread - as printed (`M18x1.5`, `G 1/2`) or already read by `parseThread`
 * @param size - of the washer or bonded seal, in mm, as the sheet prints it; absent: `cannot tell`
 * @returns the verdict with reasons; a taper thread takes no washer
 * @throws TypeError when an argument has the wrong shape
 *
 * Source: DIN 7603 rows M14 to M30 read second hand (a public code table; M14 in three sources); play, rim and
 * thickness: house rule; pipe diameters from memory.
 *
 * @example
 * ```ts
 * import { checkWasherFit } from 'drivetrain-service/v1/seal'
 * // Does a 16 × 20 washer belong on an M18 plug?
 * const size = { inside: '16', outside: '20', thickness: '1.5', unit: 'mm' } as const
 * checkWasherFit('M18x1.5', size).verdict // => 'does not fit'
 * ```
 */
export function checkWasherFit(thread: string | Thread, size: CrushWasher['size']): WasherFit {
  const read = typeof thread === 'string' ? readThread(thread) : thread
  if (read === undefined)
    return cannotTell(sealReason('seal/thread-not-read', { thread: String(thread).slice(0, 40) }))
  requireObject('thread', read)
  if (read.kind !== 'pipe') requireObject('thread.majorDiameter', read.majorDiameter)
  const name = read.designation
  if (read.form === 'taper') {
    return {
      verdict: 'does not fit',
      reasons: [sealReason('seal/taper-thread-takes-no-washer', { thread: name })],
    }
  }
  if (size === undefined) return cannotTell(sealReason('seal/size-not-stated', {}))
  requireObject('size', size)
  const { inside, outside, thickness } = size
  for (const [key, figure] of Object.entries({ inside, outside, thickness })) {
    if (typeof figure !== 'string' || !(Number(figure) > 0))
      throw refuse(`size.${key}`, figure, 'a printed figure above 0')
  }
  const diameter = majorDiameter(read)
  if (diameter === undefined) return cannotTell(sealReason('seal/pipe-size-not-known', { thread: name }))
  const hole = Number(inside)
  const mm = (value: number | string) => ({ value, unit: 'mm' as const })
  const shownHole = { thread: name, inside: mm(inside), major: mm(diameter) }
  if (hole < diameter)
    return { verdict: 'does not fit', reasons: [sealReason('seal/washer-too-small', shownHole)] }
  if (hole > diameter + MAX_PLAY) {
    const params = { ...shownHole, largest: mm(diameter + MAX_PLAY) }
    return { verdict: 'does not fit', reasons: [sealReason('seal/washer-too-wide', params)] }
  }
  const doubts: Reason<keyof SealCodes>[] = []
  if (Number(outside) < hole + MIN_RIM) {
    const params = { inside: mm(inside), outside: mm(outside), smallest: mm(hole + MIN_RIM) }
    doubts.push(sealReason('seal/washer-rim-too-narrow', params))
  }
  if (Number(thickness) < MIN_THICKNESS || Number(thickness) > MAX_THICKNESS) {
    const params = { thickness: mm(thickness), min: mm(MIN_THICKNESS), max: mm(MAX_THICKNESS) }
    doubts.push(sealReason('seal/washer-thickness-doubtful', params))
  }
  if (doubts.length > 0) return { verdict: 'doubtful', reasons: doubts }
  const washer = `${inside} × ${outside} × ${thickness}`
  const row = ROWS.some(
    ([size, d1, d2, h]) =>
      read.kind === 'metric' &&
      size === `M${read.majorDiameter.value}` &&
      d1 === hole &&
      d2 === Number(outside) &&
      h === Number(thickness),
  )
  return row
    ? { verdict: 'in the table', reasons: [sealReason('seal/washer-in-table', { thread: name, washer })] }
    : { verdict: 'plausible', reasons: [sealReason('seal/washer-plausible', { thread: name, washer })] }
}

function readThread(text: string): Thread | undefined {
  const read = parseThread(text)
  return read.ok ? read.value : undefined
}

function majorDiameter(thread: Thread): number | undefined {
  if (thread.kind === 'pipe') return Object.hasOwn(PIPE, thread.size) ? PIPE[thread.size] : undefined
  return convert(thread.majorDiameter, 'mm').value
}

function cannotTell(reason: Reason<keyof SealCodes>): WasherFit {
  return { verdict: 'cannot tell', reasons: [reason] }
}
