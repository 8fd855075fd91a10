// The functions and types that other modules import.
export type {
  ActionRow,
  Hazard,
  HazardCode,
  PartKind,
  ShownFigure,
  SupplyKind,
  ToolKind,
} from './actionRow.js'
export { ACTIONS } from './actions.js'
export { type BuildFacts, type BuildOptions, buildProcedure } from './buildProcedure.js'
export type { AtPart, ProcedureCodes, RampObstacle, SignalWord } from './codes.js'
export { type Comparison, compareProcedures, type StateDifference } from './compareProcedures.js'
export type { EffectName } from './effects.js'
export { findCautions } from './findCautions.js'
export { showsFigure } from './findStepFigures.js'
export { groupLines, type ProcedureLine } from './lines/groupLines.js'
export type { NeedName } from './needs.js'
export { rankHarm } from './rankHarm.js'
export { refreshProcedure } from './refreshProcedure.js'
export { type Repair, repairProcedure } from './repairProcedure.js'
export { validateProcedure } from './validateProcedure.js'
