import { giveReason } from './giveReason.js'
import type { Condition } from './leaf.js'
import { missFact } from './missFact.js'
import type { Judgement } from './resolved.js'

/**
 * Judges a serial number against a range. A range is a prefix plus a number of fixed width, so that the digits
 * compare as they are; any other form is `cannot tell`. Both ends of the range belong to it.
 */
export function judgeSerial(range: NonNullable<Condition['serials']>, serial: string | undefined): Judgement {
  const { prefix = '', from, to } = range
  if (prefix === '' && from === undefined && to === undefined) return { verdict: 'yes', reasons: [] }
  const ends = [from, to].filter((end) => end !== undefined)
  const width = ends[0]?.length
  if (ends.some((end) => !isNumberText(end) || end.length !== width))
    return {
      verdict: 'cannot tell',
      missing: [],
      reasons: [giveReason('spec/serial-range-unreadable', { ...range, prefix })],
    }
  if (serial === undefined) return missFact('serial')
  const number = serial.slice(prefix.length)
  const start = serial.slice(0, prefix.length)
  const sameBuild = isNumberText(number) && (width === undefined || number.length === width)
  const otherCase = start !== prefix && start.toLowerCase() === prefix.toLowerCase()
  if (!sameBuild || otherCase)
    return {
      verdict: 'cannot tell',
      missing: ['serial'],
      reasons: [
        giveReason('spec/serial-unlike-range', { serial, prefix, ...(width === undefined ? {} : { width }) }),
      ],
    }
  const params = { ...range, serial, prefix }
  const inside =
    start === prefix && (from === undefined || number >= from) && (to === undefined || number <= to)
  return inside
    ? { verdict: 'yes', reasons: [giveReason('spec/serial-inside', params)] }
    : { verdict: 'no', reasons: [giveReason('spec/serial-outside', params)] }
}

function isNumberText(text: string): boolean {
  return /^[0-9]+$/.test(text) && !text.endsWith('\n')
}
