import { requireShape } from '../base/index.js'
import { cleanText } from '../message/index.js'
import type { Cue } from './cueList.js'

const padTwoDigits = (count: number) => String(count).padStart(2, '0')

/** `01:02:03.000` */
function formatTimeStamp(seconds: number): string {
  return `${padTwoDigits(Math.floor(seconds / 3600))}:${padTwoDigits(Math.floor((seconds % 3600) / 60))}:${padTwoDigits(seconds % 60)}.000`
}

const escapeText = (text: string) =>
  cleanText(text).replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;')

/**
 * Writes the script as WebVTT captions: the spoken text, then the values on the screen. The cues follow each other
 * without gaps; adjust their times to the recording.
 *
 * @param cues - from {@link cueList}; at least 1 s each
 * @returns a WebVTT file; markup in names from the sheet is escaped
 * @throws TypeError if `cues` is not a list of cues, RangeError if `seconds` of a cue is not a whole number of 1 or
 *   more
 *
 * Source: WebVTT: The Web Video Text Tracks Format (W3C), file structure and cue text escapes, from memory.
 *
 * @example
 * ```ts
 * import { renderWebVtt } from 'drivetrain-service/v1/card'
 * const cue = { id: 'wipe', kind: 'step', show: 'The clean case.', say: 'Wipe it down.', screen: [], from: '/steps/0', seconds: 3 } as const
 * // How is one cue written?
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
    const times = `${formatTimeStamp(start)} --> ${formatTimeStamp(end)}`
    start = end
    const values = screen.map(({ text }) => escapeText(text)).join(' · ')
    return [escapeText(id), times, escapeText(say), ...(values === '' ? [] : [values])].join('\n')
  })
  return `${['WEBVTT', ...blocks].join('\n\n')}\n`
}
