export * from './calendar/index.js'
export * from './fill/index.js'
export type {
  Cure,
  DocumentKind,
  DocumentReference,
  Finding,
  JsonPointer,
  Param,
  Params,
  Place,
  Reason,
  Result,
  Severity,
} from './finding.js'
export * from './interval/fleet/index.js'
export * from './interval/index.js'
export * from './interval/meters/index.js'
export * from './message/index.js'
export * from './oil/index.js'
export * from './procedure/index.js'
export * from './quantity/index.js'
export * from './rules/index.js'
export * from './seal/index.js'
export * from './service/index.js'
export * from './spec/index.js'
export * from './thread/index.js'
export * from './torque/index.js'
