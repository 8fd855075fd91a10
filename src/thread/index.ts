// The functions and types that other modules use.

export { calculatePitchDiameter, calculateStressArea } from './calculateStressArea.js'
export type { ThreadCodes } from './codes.js'
export { findPlugTorqueBand, type PlugHousing, type PlugTorqueBand } from './findPlugTorqueBand.js'
export { parseThread } from './parseThread.js'
export type { MetricThread, PipeThread, Thread, UnifiedThread } from './thread.js'
