export {
  type MetricThread,
  type PipeThread,
  parseThread,
  type Thread,
  type ThreadCodes,
  type UnifiedThread,
} from '../thread/index.js'
