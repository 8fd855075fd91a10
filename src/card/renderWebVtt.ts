import { requireNumber, requireShape } from '../base/index.js'
import { cleanText } from '../message/index.js'
import type { Cue } from './cueParts.js'
import { countCharacters, splitCaptions } from './cues/splitCaptions.js'

const CHARACTERS_PER_SECOND = 17
const WORDS_PER_MINUTE = 140
const MIN_MILLISECONDS = 1000
/** Four digits of hours. */
const MAX_START = 3_600_000

interface Caption {
  readonly lines: readonly string[]
  /** The shortest time to read it, and the time to speak it, in milliseconds. */
  readonly shortest: number
  readonly spoken: number
}

/** `01:02:03.045` */
function formatTimeStamp(milliseconds: number): string {
  const pad = (count: number, width = 2) => String(Math.floor(count)).padStart(width, '0')
  const [hours, minutes, seconds] = [
    milliseconds / 3_600_000,
    (milliseconds / 60_000) % 60,
    (milliseconds / 1000) % 60,
  ]
  return `${pad(hours)}:${pad(minutes)}:${pad(seconds)}.${pad(milliseconds % 1000, 3)}`
}

const escapeText = (text: string) => text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;')

function makeCaptions({ say }: Cue): readonly Caption[] {
  const text = say.map((speech) => speech.text).join(' ')
  return splitCaptions(text).map((lines) => {
    const joined = lines.join(' ')
    const words = joined.split(' ').length
    const reading = Math.ceil((countCharacters(joined) * 1000) / CHARACTERS_PER_SECOND)
    const shortest = Math.max(MIN_MILLISECONDS, reading)
    return { lines, shortest, spoken: Math.max(shortest, Math.ceil((words * 60_000) / WORDS_PER_MINUTE)) }
  })
}

const addUp = (captions: readonly Caption[], of: 'shortest' | 'spoken') =>
  captions.reduce((sum, caption) => sum + caption[of], 0)

/**
 * Writes the spoken text of scenes as WebVTT captions: at most two lines of 42 characters, at most 17 characters a second.
 * Captions begin with their scene and never overlap. For one file per scene, pass one scene with the start 0.
 *
 * @param cues - from {@link cueList}
 * @param starts - the start of each scene in the film, in seconds, as the editor gives it
 * @returns a WebVTT file; markup in names from the sheet is escaped
 * @throws TypeError if `cues` is not a list of cues, or `starts` not a list of as many numbers. RangeError if a start is
 *   not after the one before it, or if a scene is too short for its captions
 *
 * Source: WebVTT: The Web Video Text Tracks Format (W3C), file structure and cue text escapes, from memory. Lines,
 * characters and reading speed: common practice, no source.
 *
 * @example
 * ```ts
 * import { renderWebVtt } from 'drivetrain-service/v1/card'
 * const say = [{ kind: 'step', text: 'Wipe it down.', from: '/lines/0' }] as const
 * const cue = { id: 'wipe', kind: 'fill', title: [], shots: [], say, hold: [], screen: [], from: '/lines/0', seconds: 3 } as const
 * // How is a scene captioned that starts after two seconds?
 * renderWebVtt([cue], [2]) // => 'WEBVTT\n\nwipe-1\n00:00:02.000 --> 00:00:03.286\nWipe it down.\n'
 * ```
 */
export function renderWebVtt(cues: readonly Cue[], starts: readonly number[]): string {
  requireShape('cues', cues, [{ id: 'string', say: [{ text: 'string' }] }], 'pass the result of cueList')
  requireShape('starts', starts, ['number'], 'pass the start of each scene in seconds')
  if (starts.length !== cues.length)
    throw new RangeError(
      `starts must have a time for each of the ${cues.length} scenes, got ${starts.length}`,
    )
  const times = starts.map((start, index) => {
    requireNumber(`starts[${index}]`, start, { min: 0, max: MAX_START })
    return Math.round(start * 1000)
  })
  const blocks = cues.flatMap((cue, index) => {
    const captions = makeCaptions(cue)
    const start = times[index] ?? 0
    const available = (times[index + 1] ?? Number.POSITIVE_INFINITY) - start
    const [shortest, spoken] = [addUp(captions, 'shortest'), addUp(captions, 'spoken')]
    if (available <= 0)
      throw new RangeError(`starts[${index + 1}] must be after starts[${index}], got ${starts[index + 1]}`)
    if (shortest > available)
      throw new RangeError(
        `starts[${index + 1}] must be at least ${(start + shortest) / 1000} for the captions of scene ${index + 1}, got ${starts[index + 1]}`,
      )
    // A scene that is shorter than its speech: all captions are shortened in proportion, but not below their reading
    // time.
    const share = spoken <= available ? 1 : (available - shortest) / (spoken - shortest)
    let end = start
    return captions.map((caption, place) => {
      const from = end
      end += caption.shortest + Math.floor((caption.spoken - caption.shortest) * share)
      const stamp = `${formatTimeStamp(from)} --> ${formatTimeStamp(end)}`
      return [`${escapeText(cleanText(cue.id))}-${place + 1}`, stamp, ...caption.lines.map(escapeText)].join(
        '\n',
      )
    })
  })
  return `${['WEBVTT', ...blocks].join('\n\n')}\n`
}
