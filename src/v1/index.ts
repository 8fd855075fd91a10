export type {
  DocumentKind,
  DocumentReference,
  Fix,
  JsonPointer,
  Param,
  Params,
  Place,
  Reason,
  Severity,
} from '../base/index.js'
export * from './calendar.js'
export * from './fill.js'
export type { Finding, Result } from './finding.js'
export * from './interval/fleet.js'
export * from './interval/meters.js'
export * from './interval.js'
export * from './message.js'
export * from './oil.js'
export * from './procedure.js'
export * from './quantity.js'
export * from './rules.js'
export * from './seal.js'
export * from './service.js'
export * from './spec.js'
export * from './thread.js'
export * from './torque.js'
