export {
  type MetricThread,
  type PipeThread,
  type PlugHousing,
  type PlugTorqueBand,
  plugTorqueBand,
  type Thread,
  type ThreadCodes,
  type UnifiedThread,
} from '../thread/index.js'
