import { type Reason, refuse, requireObject, requireOneOf } from '../base/index.js'
import { convert } from '../quantity/index.js'
import type { CrushWasher } from '../spec/index.js'
import { parseThread, type Thread } from '../thread/index.js'
import { type SealCodes, sealReason } from './codes.js'

export interface WasherFit {
  /**
   * `in the table`: a checked row of DIN 7603; `plausible`: fits over the thread and under the plug's collar.
   */
  readonly verdict: 'in the table' | 'plausible' | 'doubtful' | 'does not fit' | 'cannot tell'
  readonly reasons: readonly Reason<keyof SealCodes>[]
}

/** Rows of DIN 7603, from a secondary source: thread, inside × outside × thickness in mm. */
const WASHER_ROWS: readonly (readonly [string, number, number, number])[] = [
  ['M14', 14, 18, 1.5],
  ['M14', 14, 20, 1.5],
  ['M16', 16, 20, 1.5],
  ['M18', 18, 22, 1.5],
  ['M20', 20, 24, 1.5],
  ['M24', 24, 30, 2],
  ['M30', 30, 36, 2],
]

/** Outside diameters of ISO 228-1 threads in mm, from memory; 1 3/4 is from a secondary source. */
const PIPE_DIAMETERS: Readonly<Record<string, number>> = {
  '1/8': 9.728,
  '1/4': 13.157,
  '3/8': 16.662,
  '1/2': 20.955,
  '5/8': 22.911,
  '3/4': 26.441,
  '7/8': 30.201,
  '1': 33.249,
  '1 1/8': 37.897,
  '1 1/4': 41.91,
  '1 1/2': 47.803,
  '1 3/4': 53.746,
  '2': 59.614,
}

/**
 * House rule: from M14 up, thread sizes are 2 mm apart, so a washer with half of this play fits only one thread.
 */
const MAX_PLAY = 1
/**
 * House rule: in the narrowest checked row the outside is 4 mm larger than the inside. Half of this still seals.
 */
const MIN_RIM = 2
/** House rule: an undercut that holds a ring is 2 to 4 mm smaller in diameter than the thread. */
const MAX_UNDERCUT = 4
const MIN_THICKNESS = 0.5
const MAX_THICKNESS = 4

/**
 * Checks whether a sealing washer fits a plug's thread, in sheets and stock. It compares sizes only, not the
 * plug's collar or the housing's face, which no sheet states.
 *
 * It fits if thread diameter ≤ inside ≤ thread diameter + 1 mm. The inside diameter may be any size that
 * rounds to the printed figure: `33` is 32.5 to 33.5 mm and fits over G 1, 33.249 mm.
 *
 * @param thread - as printed (`M18x1.5`, `G 1/2`) or already read by `parseThread`
 * @param size - size of the washer or bonded seal, in mm or inches, as printed; absent: `cannot tell`
 * @param form - form of a ring held in an undercut of the plug: `captive` or `profile ring`, which may be
 *   smaller than the thread
 * @returns the verdict with reasons; no washer fits a taper thread
 * @throws TypeError if an argument has the wrong shape
 *
 * Source: DIN 7603 rows M14 to M30 from secondary sources (a public code table; M14 in three). Play, rim and
 * thickness are house rules. Pipe diameters from memory.
 *
 * @example
 * ```ts
 * import { checkWasherFit } from 'drivetrain-service/v1/seal'
 * // Does a 16 × 20 washer belong on an M18 plug?
 * const size = { inside: '16', outside: '20', thickness: '1.5', unit: 'mm' } as const
 * checkWasherFit('M18x1.5', size).verdict // => 'does not fit'
 * ```
 */
export function checkWasherFit(
  thread: string | Thread,
  size: CrushWasher['size'],
  form?: CrushWasher['form'] | 'profile ring',
): WasherFit {
  const read = typeof thread === 'string' ? readThread(thread) : thread
  if (read === undefined)
    return cannotTell(sealReason('seal/thread-unreadable', { thread: String(thread).slice(0, 40) }))
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
  const diameter = findMajorDiameter(read)
  if (diameter === undefined) return cannotTell(sealReason('seal/pipe-size-not-known', { thread: name }))
  const { unit } = size
  requireOneOf('size.unit', unit, ['mm', 'in'])
  const toMillimetres = (figure: string) => convert({ value: Number(figure), unit }, 'mm').value
  const hole = toMillimetres(inside)
  const rounding = toMillimetres(String(0.5 * 10 ** -(inside.split('.')[1] ?? '').length))
  const makeLength = (value: number) => ({ value, unit: 'mm' as const })
  const printed = (value: string) => ({ value, unit })
  const holeParams = { thread: name, inside: printed(inside), major: makeLength(diameter) }
  const isHeldOnPlug = form === 'captive' || form === 'profile ring'
  // 1e-9 for binary rounding
  if (hole + rounding + 1e-9 < diameter - (isHeldOnPlug ? MAX_UNDERCUT : 0))
    return { verdict: 'does not fit', reasons: [sealReason('seal/washer-bore-too-small', holeParams)] }
  if (hole - rounding - 1e-9 > diameter + MAX_PLAY) {
    const params = { ...holeParams, largest: makeLength(diameter + MAX_PLAY) }
    return { verdict: 'does not fit', reasons: [sealReason('seal/washer-bore-too-large', params)] }
  }
  const doubtReasons: Reason<keyof SealCodes>[] = []
  if (toMillimetres(outside) < hole + MIN_RIM) {
    const params = {
      inside: printed(inside),
      outside: printed(outside),
      smallest: makeLength(hole + MIN_RIM),
    }
    doubtReasons.push(sealReason('seal/washer-rim-too-narrow', params))
  }
  if (toMillimetres(thickness) < MIN_THICKNESS || toMillimetres(thickness) > MAX_THICKNESS) {
    const params = {
      thickness: printed(thickness),
      min: makeLength(MIN_THICKNESS),
      max: makeLength(MAX_THICKNESS),
    }
    doubtReasons.push(sealReason('seal/washer-thickness-doubtful', params))
  }
  if (doubtReasons.length > 0) return { verdict: 'doubtful', reasons: doubtReasons }
  if (isHeldOnPlug) return cannotTell(sealReason('seal/ring-held-on-plug', { thread: name }))
  const washer = `${inside} × ${outside} × ${thickness} ${unit}`
  const row = WASHER_ROWS.some(
    ([size, d1, d2, h]) =>
      read.kind === 'metric' &&
      size === `M${read.majorDiameter.value}` &&
      d1 === hole &&
      d2 === toMillimetres(outside) &&
      h === toMillimetres(thickness),
  )
  return row
    ? { verdict: 'in the table', reasons: [sealReason('seal/washer-in-table', { thread: name, washer })] }
    : { verdict: 'plausible', reasons: [sealReason('seal/washer-plausible', { thread: name, washer })] }
}

function readThread(text: string): Thread | undefined {
  const read = parseThread(text)
  return read.ok ? read.value : undefined
}

function findMajorDiameter(thread: Thread): number | undefined {
  if (thread.kind === 'pipe')
    return Object.hasOwn(PIPE_DIAMETERS, thread.size) ? PIPE_DIAMETERS[thread.size] : undefined
  return convert(thread.majorDiameter, 'mm').value
}

function cannotTell(reason: Reason<keyof SealCodes>): WasherFit {
  return { verdict: 'cannot tell', reasons: [reason] }
}
