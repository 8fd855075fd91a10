// Exports for other rooms.
export type { ThreadCodes } from './codes.js'
export { parseThread } from './parseThread.js'
export { pitchDiameter } from './pitchDiameter.js'
export { type PlugHousing, type PlugTorqueBand, plugTorqueBand } from './plugTorqueBand.js'
export { stressArea } from './stressArea.js'
export type { MetricThread, PipeThread, Thread, UnifiedThread } from './thread.js'
