import { makeReason, type ReasonMaker } from '../base/index.js'
import type { Figure, TorqueUnit } from '../quantity/index.js'

type Torque = { value: number | Figure; unit: TorqueUnit }

/** Codes of the thread functions with their params. */
export interface ThreadCodes {
  'thread/unknown-thread': { text: string }
  'thread/parallel-or-taper': { text: string; candidates: readonly string[] }
  'thread/pitch-not-known': { text: string; diameter: string }
  'thread/pitch-too-coarse': { text: string; pitch: string; diameter: string }
  'thread/size-not-known': { text: string; size: string; system: string }
  'thread/threads-per-inch-differ': { text: string; stated: string; usual: string }
  'thread/unusual-pitch': { text: string; pitch: string; diameter: string }
  'thread/too-long': { length: number; max: number }
  'thread/plug-band': { thread: string; housing: string; min: Torque; max: Torque }
  'thread/plug-not-in-table': { thread: string; housing: string }
  'thread/taper-plug': { thread: string }
}

export const threadReason: ReasonMaker<ThreadCodes> = makeReason
