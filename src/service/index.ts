export type { ServiceCodes } from './codes.js'
export { type DueListRequest, type ListedDue, listDue } from './listDue.js'
export { planVisit, type VisitRequest } from './planVisit.js'
export type {
  FigureRole,
  PartName,
  PlannedDue,
  PlannedFigure,
  PlannedMachine,
  PlannedMissing,
  PlannedOil,
  PlannedPan,
  PlannedSeal,
  PlannedStep,
  PlannedTightening,
  PlannedTool,
  PlannedUsedOil,
  PlannedWait,
  PlannedWork,
  VisitPlan,
} from './visitPlan.js'
