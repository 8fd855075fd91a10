import type { Finding, FindingMaker, Result, Severity } from '../base/index.js'
import { makeFinding, refuse } from '../base/index.js'
import { COARSE_PITCHES, FINE_PITCHES } from './coarsePitches.js'
import type { ThreadCodes } from './codes.js'
import { PIPE_THREADS_PER_INCH, UNIFIED_THREADS_PER_INCH } from './inchSizes.js'
import type { PipeThread, Thread } from './thread.js'
import { THREAD_PATTERNS } from './threadPatterns.js'

const MAX_CHARACTERS = 64

const textFinding = makeFinding as FindingMaker<ThreadCodes>
const finding = <Code extends keyof ThreadCodes>(code: Code, severity: Severity, params: ThreadCodes[Code]) =>
  textFinding(code, severity, { kind: 'text' }, '', params)

const refused = (one: Finding<ThreadCodes>): Result<never, ThreadCodes> => ({ ok: false, findings: [one] })

/**
 * The thread of a manual's designation, for everyone who needs its size, its pitch, or whether it is taper or parallel.
 *
 * Read: `M18x1.5`, `M18×1.5`, `M18 x 1.5`, `M10` (coarse pitch), `M12x1.25-6g`, `G 1/2`, `R 1/2`, `Rc 3/8`, `Rp 1/2`,
 * `1/2-14 NPT`, `1/2 NPT`, `3/8-16 UNC`, `1/2-20 UNF`, `3/4-20 UNEF`; capitals do not matter, a decimal comma is
 * refused. `R` is the taper external thread of ISO 7-1; old drawings that mean the parallel one write the same letter.
 *
 * @param text - a designation of at most 64 characters; spaces around it are ignored
 * @returns the thread with one spelling, or findings: `thread/not-a-thread`, `thread/decimal-comma`,
 *   `thread/pitch-not-known` (no coarse pitch for that size), `thread/pitch-too-coarse`, `thread/size-not-known`,
 *   `thread/threads-per-inch-differ`, `thread/too-long`; a warning `thread/unusual-pitch` does not stop the reading
 * @throws TypeError for anything but a string
 *
 * Source: ISO 261, ISO 228-1, ISO 7-1, ASME B1.1 and B1.20.1 for sizes, all from memory.
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
  if (text.length > MAX_CHARACTERS)
    return refused(finding('thread/too-long', 'error', { length: text.length, max: MAX_CHARACTERS }))
  const plain = text.trim().replace(/[\s\u00a0\u202f]+/g, ' ')
  if (/[0-9],[0-9]/.test(plain))
    return refused(finding('thread/decimal-comma', 'error', { text, meant: plain.replace(',', '.') }))
  const metric = THREAD_PATTERNS.metric.exec(plain)?.groups
  if (metric) return readMetric(text, metric)
  const pipe = THREAD_PATTERNS.pipe.exec(plain)?.groups ?? THREAD_PATTERNS.npt.exec(plain)?.groups
  if (pipe) return readPipe(text, pipe)
  const unified = THREAD_PATTERNS.unified.exec(plain)?.groups
  if (unified) return readUnified(text, unified)
  return refused(finding('thread/not-a-thread', 'error', { text }))
}

type Groups = { readonly [name: string]: string | undefined }

function readMetric(text: string, { size = '', pitch, fit }: Groups): Result<Thread, ThreadCodes> {
  const diameter = String(Number(size))
  const coarsePitch = Object.hasOwn(COARSE_PITCHES, diameter) ? COARSE_PITCHES[diameter] : undefined
  const stated = pitch === undefined ? coarsePitch : Number(pitch)
  if (stated === undefined) return refused(finding('thread/pitch-not-known', 'error', { text, diameter }))
  // a ridge as high as a third of the diameter is not a thread, and a pitch of 0 none either
  if (stated <= 0 || stated * 3 > Number(diameter))
    return refused(finding('thread/pitch-too-coarse', 'error', { text, pitch: String(stated), diameter }))
  const coarse = stated === coarsePitch
  const usual = coarse || FINE_PITCHES.includes(stated)
  const findings = usual
    ? []
    : [finding('thread/unusual-pitch', 'warning', { text, pitch: String(stated), diameter })]
  const value: Thread = {
    kind: 'metric',
    designation: coarse ? `M${diameter}` : `M${diameter}x${stated}`,
    form: 'parallel',
    majorDiameter: { value: Number(diameter), unit: 'mm' },
    pitch: { value: stated, unit: 'mm' },
    coarse,
    ...(fit === undefined ? {} : { toleranceClass: fit }),
  }
  return { ok: true, value, findings }
}

const SYSTEMS: Readonly<Record<string, PipeThread['system']>> = {
  G: 'G',
  R: 'R',
  RC: 'Rc',
  RP: 'Rp',
  NPT: 'NPT',
  NPTF: 'NPTF',
}

function readPipe(
  text: string,
  { system: letters = '', size = '', per }: Groups,
): Result<Thread, ThreadCodes> {
  const system = SYSTEMS[letters.toUpperCase()] ?? 'G'
  const inches = size.replace('-', ' ')
  if (!Object.hasOwn(PIPE_THREADS_PER_INCH, inches))
    return refused(finding('thread/size-not-known', 'error', { text, size: inches, system }))
  const isNpt = system === 'NPT' || system === 'NPTF'
  const threadsPerInch = PIPE_THREADS_PER_INCH[inches]?.[isNpt ? 'npt' : 'iso'] ?? 0
  if (per !== undefined && Number(per.replace(' 1/2', '.5')) !== threadsPerInch)
    return refused(differ(text, per, threadsPerInch))
  const form = system === 'G' || system === 'Rp' ? 'parallel' : 'taper'
  const designation = isNpt ? `${inches}-${threadsPerInch} ${system}` : `${system} ${inches}`
  return {
    ok: true,
    value: { kind: 'pipe', designation, form, system, size: inches, threadsPerInch },
    findings: [],
  }
}

function readUnified(
  text: string,
  { size = '', per = '', series: letters = '', fit }: Groups,
): Result<Thread, ThreadCodes> {
  const series = letters.toUpperCase() as 'UNC' | 'UNF' | 'UNEF'
  const known = Object.hasOwn(UNIFIED_THREADS_PER_INCH, size) ? UNIFIED_THREADS_PER_INCH[size] : undefined
  if (known === undefined)
    return refused(finding('thread/size-not-known', 'error', { text, size, system: series }))
  if (Number(per) !== known[series]) return refused(differ(text, per, known[series]))
  const value: Thread = {
    kind: 'unified',
    designation: `${size}-${known[series]} ${series}`,
    form: 'parallel',
    majorDiameter: { value: readInches(size), unit: 'in' },
    threadsPerInch: known[series],
    series,
    ...(fit === undefined ? {} : { toleranceClass: fit.toUpperCase() }),
  }
  return { ok: true, value, findings: [] }
}

function differ(text: string, stated: string, usual: number): Finding<ThreadCodes> {
  return finding('thread/threads-per-inch-differ', 'error', { text, stated, usual: String(usual) })
}

/** Inches of a written size: `1/2`, `1 1/4`, `1-1/4`, `2`. Internal; the text is checked. */
function readInches(size: string): number {
  let inches = 0
  for (const part of size.split(/[ -]/)) {
    const [over = '0', under = '1'] = part.split('/')
    inches += Number(over) / Number(under)
  }
  return inches
}
