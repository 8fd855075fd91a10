export type {
  ActionRow,
  Hazard,
  HazardCode,
  PartKind,
  SignalWord,
  SupplyKind,
  ToolKind,
} from './actionRow.js'
export { ACTIONS } from './actions.js'
export { type BuildOptions, buildProcedure } from './buildProcedure.js'
export type { EffectName } from './effects.js'
export type { NeedName } from './needs.js'
export type {
  CoverState,
  GearcaseState,
  OpeningState,
  PlugPosition,
  ProcedureState,
  SealState,
} from './state.js'
