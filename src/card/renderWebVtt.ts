import { requireShape } from '../base/index.js'
import { cleanText } from '../message/index.js'
import type { Cue } from './cueList.js'

const two = (count: number) => String(count).padStart(2, '0')

/** `01:02:03.000` */
function timeStamp(seconds: number): string {
  return `${two(Math.floor(seconds / 3600))}:${two(Math.floor((seconds % 3600) / 60))}:${two(seconds % 60)}.000`
}

const escaped = (text: string) =>
  cleanText(text).replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;')

/**
 * The script as WebVTT captions: what is said, and under it the values on the screen. One cue follows the other
 * without a gap; an editor moves them to the real takes.
 *
 * @param cues - from {@link cueList}; at least 1 s each
 * @returns a WebVTT file; names from the sheet can make neither tags nor cues
 * @throws TypeError when `cues` is not a list of cues, RangeError when a cue's `seconds` is not a whole number from 1 on
 *
 * Source: WebVTT: The Web Video Text Tracks Format (W3C), file structure and cue text escapes; from memory.
 *
 * @example
 * ```ts
 * import { renderWebVtt } from 'drivetrain-service/v1/card'
 * const cue = { id: 'wipe', kind: 'step', show: 'The clean case.', say: 'Wipe it down.', screen: [], from: '/steps/0', seconds: 3 } as const
 * // What does one cue look like in the file?
 * renderWebVtt([cue]) // => 'WEBVTT\n\nwipe\n00:00:00.000 --> 00:00:03.000\nWipe it down.\n'
 * ```
 */
export function renderWebVtt(cues: readonly Cue[]): string {
  const shape = [{ id: 'string', say: 'string', screen: [{ text: 'string' }], seconds: 'number' }] as const
  requireShape('cues', cues, shape, 'pass the result of cueList')
  let start = 0
  const blocks = cues.map(({ id, say, screen, seconds }) => {
    if (!Number.isSafeInteger(seconds) || seconds < 1) {
      throw new RangeError(`seconds must be a whole number from 1, got ${seconds}`)
    }
    const end = start + seconds
    const times = `${timeStamp(start)} --> ${timeStamp(end)}`
    start = end
    const values = screen.map(({ text }) => escaped(text)).join(' · ')
    return [escaped(id), times, escaped(say), ...(values === '' ? [] : [values])].join('\n')
  })
  return `${['WEBVTT', ...blocks].join('\n\n')}\n`
}
