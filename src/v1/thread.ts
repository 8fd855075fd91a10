export type { MetricThread, PipeThread, Thread, ThreadCodes, UnifiedThread } from '../thread/index.js'
export { parseThread } from '../thread/index.js'
