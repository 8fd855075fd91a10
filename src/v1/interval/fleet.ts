export {
  computeDueColumns,
  createDueColumns,
  DUE_LIMITS,
  DUE_STATES,
  type DueColumns,
  type DueColumnVerdicts,
  type DueRow,
  type DueSqlOptions,
  dueSql,
  NO_DAY,
  type SqlDialect,
  writeDueRow,
} from '../../interval/index.js'
