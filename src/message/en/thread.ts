import type { ThreadCodes } from '../../thread/index.js'
import type { Texts } from '../catalogue.js'

export const threadTexts: Texts<ThreadCodes> = {
  'thread/unknown-thread': ({ text }) =>
    `“${text}” is not a known thread. Write it like M18x1.5, G 1/2, R 1/2, 1/2-14 NPT or 3/8-16 UNC.`,
  'thread/parallel-or-taper': ({ text, candidates }) =>
    `“${text}” may be parallel or taper: ${candidates.join(' or ')}. Find out which, and write that.`,
  'thread/pitch-not-known': ({ text, diameter }) =>
    `“${text}” gives no pitch, and no coarse pitch of M${diameter} is known. Write the pitch, as in M18x1.5.`,
  'thread/pitch-too-coarse': ({ text, pitch, diameter }) =>
    `“${text}”: a pitch of ${pitch} mm is too coarse for ${diameter} mm. Check both figures.`,
  'thread/size-not-known': ({ text, size, system }) =>
    `“${text}”: no ${system} size ${size} is known. Check the size in the manual.`,
  'thread/threads-per-inch-differ': ({ text, stated, usual }) =>
    `“${text}” says ${stated} threads per inch; this size has ${usual}. Check which is meant.`,
  'thread/unusual-pitch': ({ text, pitch, diameter }) =>
    `“${text}”: ${pitch} mm is an unusual pitch on ${diameter} mm. Check it in the manual.`,
  'thread/too-long': ({ length, max }, say) =>
    `This text has ${say.number(length)} characters; a thread has at most ${say.number(max)}.`,
  'thread/plug-band': ({ thread, housing, min, max }, say) =>
    `Plugs of ${thread} (housing: ${housing}) are usually tightened to ${say.quantity(min)} to ${say.quantity(max)}. This wide band from published tables is only for finding wrong units.`,
  'thread/plug-not-in-table': ({ thread, housing }) =>
    `No published plug torque is known for ${thread} (housing: ${housing}), so the torque is not compared.`,
  'thread/taper-plug': ({ thread }) =>
    `${thread} is a taper thread: it is tightened by turns, and the table of torques does not apply.`,
}
