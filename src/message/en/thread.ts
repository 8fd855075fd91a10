import type { ThreadCodes } from '../../thread/index.js'
import type { Texts } from '../catalogue.js'

export const threadTexts: Texts<ThreadCodes> = {
  'thread/not-a-thread': ({ text }) =>
    `“${text}” is not a thread that can be read. Write it like M18x1.5, G 1/2, R 1/2, 1/2-14 NPT or 3/8-16 UNC.`,
  'thread/decimal-comma': ({ text, meant }) => `“${text}” has a decimal comma. Write a point: ${meant}.`,
  'thread/pitch-not-known': ({ text, diameter }) =>
    `“${text}” gives no pitch, and M${diameter} has no coarse pitch here. Write the pitch, as in M18x1.5.`,
  'thread/pitch-too-coarse': ({ text, pitch, diameter }) =>
    `“${text}”: a pitch of ${pitch} mm is no thread on ${diameter} mm. Check both figures.`,
  'thread/size-not-known': ({ text, size, system }) =>
    `“${text}”: ${system} has no size ${size} here. Check the size in the manual.`,
  'thread/threads-per-inch-differ': ({ text, stated, usual }) =>
    `“${text}” says ${stated} threads per inch; this size has ${usual}. Check which is meant.`,
  'thread/unusual-pitch': ({ text, pitch, diameter }) =>
    `“${text}”: ${pitch} mm is an unusual pitch on ${diameter} mm. Check it in the manual.`,
  'thread/too-long': ({ length, most }, say) =>
    `A thread is written in at most ${say.number(most)} characters; this text has ${say.number(length)}.`,
  'thread/plug-band': ({ thread, housing, min, max }, say) =>
    `Plugs of ${thread} (housing: ${housing}) usually get between ${say.quantity(min)} and ${say.quantity(max)}: a wide band made from published tables, only to look for slips.`,
  'thread/plug-not-in-table': ({ thread, housing }) =>
    `No published plug torque was read for ${thread} (housing: ${housing}), so nothing can be compared.`,
  'thread/taper-plug': ({ thread }) =>
    `${thread} is a taper thread: it is tightened by turns, and no table of torques applies.`,
}
