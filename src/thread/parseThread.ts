import type { Finding, FindingMaker, Result, Severity } from '../base/index.js'
import { makeFinding, refuse } from '../base/index.js'
import type { ThreadCodes } from './codes.js'
import type { Thread, UnifiedThread } from './thread.js'
import {
  COARSE_PITCHES,
  CONSTANT_THREADS_PER_INCH,
  FINE_PITCHES,
  PIPE_LETTERS,
  PIPE_THREADS_PER_INCH,
  UNIFIED_THREADS_PER_INCH,
} from './threadSizes.js'

const MAX_LENGTH = 64

const textFinding = makeFinding as FindingMaker<ThreadCodes>
const makeThreadFinding = <Code extends keyof ThreadCodes>(
  code: Code,
  severity: Severity,
  params: ThreadCodes[Code],
) => textFinding(code, severity, { kind: 'text' }, '', params)

const refuseText = (candidate: Finding<ThreadCodes>): Result<never, ThreadCodes> => ({
  ok: false,
  findings: [candidate],
})

/**
 * Reads a thread designation: its size, its pitch, and whether it is taper or parallel.
 *
 * It reads `M18x1.5`, `M18×1,5`, `M18 x 1.5`, `M10` (coarse pitch), `M12x1.25-6g`; `G 1/2`, `BSPP 1/2` and
 * `PF 1/2` (one thread), `R 1/2`, `1/2 BSPT` and `PT 1/2`, `Rc 3/8`, `Rp 1/2`; `1/2-14 NPT`, `NPT 1/2`;
 * `3/8-16 UNC`, `3/4-16UNF-2A`, `#10-32 UNF`, `1 1/16-12 UN` (also printed `1 1/16-12 UNF`), `3/4-16` (the
 * series that has these threads per inch). Capitals, inch marks and kinds of dashes do not matter. `BSP`
 * alone may be parallel or taper: it is refused, and the finding offers both. `R` is the taper external
 * thread of ISO 7-1; old drawings use the same letter for the parallel thread.
 *
 * @param text - a designation of at most 64 characters; spaces around it are ignored
 * @returns the thread in its standard spelling, or findings: `thread/unknown-thread`,
 *   `thread/parallel-or-taper`, `thread/pitch-not-known` (no coarse pitch for that size),
 *   `thread/pitch-too-coarse`, `thread/size-not-known`, `thread/threads-per-inch-differ`, `thread/too-long`;
 *   `thread/unusual-pitch` is only a warning
 * @throws TypeError for anything but a string
 *
 * Source: ISO 261, ISO 228-1, ISO 7-1, JIS B 0202 and B 0203, ASME B1.1 and B1.20.1 for sizes and letters, all from memory.
 *
 * @example
 * ```ts
 * import { parseThread } from 'drivetrain-service/v1/thread'
 * // Does a half-inch NPT plug seal in its thread?
 * const read = parseThread('1/2-14 NPT')
 * read.ok && read.value.form // => 'taper'
 * ```
 */
export function parseThread(text: string): Result<Thread, ThreadCodes> {
  if (typeof text !== 'string') throw refuse('text', text, 'a string')
  if (text.length > MAX_LENGTH)
    return refuseText(makeThreadFinding('thread/too-long', 'error', { length: text.length, max: MAX_LENGTH }))
  const plainText = normalizeDesignation(text)
  const metric = THREAD_PATTERNS.metric.exec(plainText)?.groups
  if (metric) return readMetric(text, metric)
  const pipe =
    THREAD_PATTERNS.pipe.exec(plainText)?.groups ?? THREAD_PATTERNS.pipeLettersLast.exec(plainText)?.groups
  if (pipe) return parsePipeThread(text, pipe)
  const unified = THREAD_PATTERNS.unified.exec(plainText)?.groups
  if (unified) return readUnified(text, unified)
  return refuseText(makeThreadFinding('thread/unknown-thread', 'error', { text }))
}

/** Normalizes signs that vary in print: decimal comma, inch mark, dashes, fraction characters, spaces. */
function normalizeDesignation(text: string): string {
  return text
    .replace(/[¼½¾⅛⅜⅝⅞]/g, (sign) => ` ${sign.normalize('NFKC').replace('⁄', '/')}`)
    .replace(/(?<=[0-9]) ?["″”]/g, '')
    .replace(/[–‐‑−]/g, '-')
    .replace(/(?<=[0-9]),(?=[0-9])/g, '.')
    .replace(/[\s\u00a0\u202f]+/g, ' ')
    .trim()
}

type PatternGroups = { readonly [name: string]: string | undefined }

function readMetric(text: string, { size = '', pitch, fit }: PatternGroups): Result<Thread, ThreadCodes> {
  const diameter = String(Number(size))
  const coarsePitch = Object.hasOwn(COARSE_PITCHES, diameter) ? COARSE_PITCHES[diameter] : undefined
  const statedPitch = pitch === undefined ? coarsePitch : Number(pitch)
  if (statedPitch === undefined)
    return refuseText(makeThreadFinding('thread/pitch-not-known', 'error', { text, diameter }))
  // a pitch of 0, or of more than a third of the diameter, is impossible
  if (statedPitch <= 0 || statedPitch * 3 > Number(diameter))
    return refuseText(
      makeThreadFinding('thread/pitch-too-coarse', 'error', { text, pitch: String(statedPitch), diameter }),
    )
  const isCoarse = statedPitch === coarsePitch
  const isUsual = isCoarse || FINE_PITCHES.includes(statedPitch)
  const findings = isUsual
    ? []
    : [makeThreadFinding('thread/unusual-pitch', 'warning', { text, pitch: String(statedPitch), diameter })]
  const value: Thread = {
    kind: 'metric',
    designation: isCoarse ? `M${diameter}` : `M${diameter}x${statedPitch}`,
    form: 'parallel',
    majorDiameter: { value: Number(diameter), unit: 'mm' },
    pitch: { value: statedPitch, unit: 'mm' },
    coarse: isCoarse,
    ...(fit === undefined ? {} : { toleranceClass: fit }),
  }
  return { ok: true, value, findings }
}

function parsePipeThread(
  text: string,
  { system = '', size = '', per }: PatternGroups,
): Result<Thread, ThreadCodes> {
  const letters = system.toUpperCase()
  const inches = size.replace('-', ' ')
  if (letters === 'BSP') {
    const candidates = ['G', 'R'].map((item) => `${item} ${inches}`)
    return refuseText(makeThreadFinding('thread/parallel-or-taper', 'error', { text, candidates }))
  }
  const pipeSystem = PIPE_LETTERS[letters] ?? 'G'
  const isNpt = pipeSystem === 'NPT' || pipeSystem === 'NPTF'
  const row = Object.hasOwn(PIPE_THREADS_PER_INCH, inches) ? PIPE_THREADS_PER_INCH[inches] : undefined
  // sizes without American pipes exist only in ISO 228-1
  const threadsPerInch =
    pipeSystem === 'G' || row?.npt !== undefined ? row?.[isNpt ? 'npt' : 'iso'] : undefined
  if (threadsPerInch === undefined)
    return refuseText(
      makeThreadFinding('thread/size-not-known', 'error', { text, size: inches, system: pipeSystem }),
    )
  if (per !== undefined && Number(per.replace(' 1/2', '.5')) !== threadsPerInch)
    return refuseText(makeThreadsFinding(text, per, threadsPerInch))
  const form = pipeSystem === 'G' || pipeSystem === 'Rp' ? 'parallel' : 'taper'
  const designation = isNpt ? `${inches}-${threadsPerInch} ${pipeSystem}` : `${pipeSystem} ${inches}`
  return {
    ok: true,
    value: { kind: 'pipe', designation, form, system: pipeSystem, size: inches, threadsPerInch },
    findings: [],
  }
}

const SERIES_IN_TABLE = ['UNC', 'UNF', 'UNEF'] as const

function readUnified(
  text: string,
  { size: written = '', per = '', series: letters, fit }: PatternGroups,
): Result<Thread, ThreadCodes> {
  const size = readUnifiedSize(written, per)
  const row = Object.hasOwn(UNIFIED_THREADS_PER_INCH, size) ? UNIFIED_THREADS_PER_INCH[size] : undefined
  const namedSeries = letters?.toUpperCase() as UnifiedThread['series'] | undefined
  // Above 1 in, sizes without a fine series have 12 threads of series UN, which manuals print as UNF.
  const lacksFineSeries =
    namedSeries === 'UNF' && row !== undefined && row.UNF === undefined && readInches(size) > 1
  const series =
    lacksFineSeries && Number(per) === 12
      ? 'UN'
      : (namedSeries ?? SERIES_IN_TABLE.find((candidate) => row?.[candidate] === Number(per)))
  if (series === undefined) return refuseText(makeThreadFinding('thread/unknown-thread', 'error', { text }))
  const usualThreads = series === 'UN' ? CONSTANT_THREADS_PER_INCH : [row?.[series] ?? []].flat()
  if (row === undefined || usualThreads.length === 0 || (series === 'UN' && size.startsWith('#')))
    return refuseText(makeThreadFinding('thread/size-not-known', 'error', { text, size, system: series }))
  if (!usualThreads.includes(Number(per))) return refuseText(makeThreadsFinding(text, per, ...usualThreads))
  const value: Thread = {
    kind: 'unified',
    designation: `${size}-${Number(per)} ${series}`,
    form: 'parallel',
    majorDiameter: { value: readInches(size), unit: 'in' },
    threadsPerInch: Number(per),
    series,
    ...(fit === undefined ? {} : { toleranceClass: fit.toUpperCase() }),
  }
  return { ok: true, value, findings: [] }
}

/** `No. 10` and `10-32` mean `#10`: no thread of ten inches has 32 threads per inch. */
function readUnifiedSize(written: string, per: string): string {
  const size = written.replace(/^No\.? ?/i, '#').replace('-', ' ')
  return /^(4|5|6|8|10|12)$/.test(size) && Number(per) >= 24 ? `#${size}` : size
}

function makeThreadsFinding(
  text: string,
  statedThreads: string,
  ...usualThreads: readonly number[]
): Finding<ThreadCodes> {
  return makeThreadFinding('thread/threads-per-inch-differ', 'error', {
    text,
    stated: statedThreads,
    usual: usualThreads.join(', '),
  })
}

/** The inches of a written size: `1/2`, `1 1/4`, `#10` (0.060 in plus 0.013 in for each number). */
function readInches(size: string): number {
  if (size.startsWith('#')) return Number((0.06 + 0.013 * Number(size.slice(1))).toFixed(3))
  let inches = 0
  for (const part of size.split(' ')) {
    const [over = '0', under = '1'] = part.split('/')
    inches += Number(over) / Number(under)
  }
  return inches
}

/** The pattern of each kind of designation, after `normalizeDesignation`. */
export const THREAD_PATTERNS = {
  metric:
    /^M ?(?<size>[0-9]{1,3}(?:\.[0-9]{1,2})?)(?: ?[x×] ?(?<pitch>[0-9]{1,2}(?:\.[0-9]{1,3})?))?(?: ?- ?(?<fit>[0-9]{1,2}[A-Za-z](?:[0-9][A-Za-z])?))?$/i,
  pipe: /^(?<system>BSPP|BSPT|BSP|NPTF|NPT|PT|PF|PS|Rc|Rp|R|G) ?(?<size>[0-9]{1,2}(?:[ -][0-9]\/[0-9]{1,2}|\/[0-9]{1,2})?)(?: ?- ?(?<per>[0-9]{1,2}(?:\.5| 1\/2)?))?(?: ?[AB])?$/i,
  pipeLettersLast:
    /^(?<size>[0-9]{1,2}(?:[ -][0-9]\/[0-9]{1,2}|\/[0-9]{1,2})?)(?: ?- ?(?<per>[0-9]{1,2}(?:\.5| 1\/2)?))? ?(?<system>BSPP|BSPT|BSP|NPTF|NPT|PT|PF|PS)$/i,
  unified:
    /^(?<size>(?:#|No\.? ?)?[0-9]{1,2}(?:[ -][0-9]{1,2}\/[0-9]{1,2}|\/[0-9]{1,2})?) ?- ?(?<per>[0-9]{1,2})(?: ?(?<series>UNC|UNF|UNEF|UN))?(?: ?-? ?(?<fit>[123][AB]))?$/i,
} as const
