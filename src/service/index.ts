// The functions and types that other rooms import.

export { chooseVisit } from './chooseVisit.js'
export type { ServiceCodes } from './codes.js'
export { groupKits } from './groupKits.js'
export { judgeOilLoss, type OilLoss, type Span } from './judgeOilLoss.js'
export { type Kit, kitContents } from './kitContents.js'
export type { KitFilter, KitOil, KitSeal } from './kitSums.js'
export { type DueFacts, listDue, type ServiceDue } from './listDue.js'
export { listDueRows } from './listDueRows.js'
export { listVariantDifferences, type VariantDifference } from './listVariantDifferences.js'
export {
  type ChartGearcase,
  type ChartInterval,
  type ChartService,
  type LubeChart,
  lubeChart,
} from './lubeChart.js'
export type { PartName } from './names.js'
export { type NamedService, type NextDue, type NextPoint, nextDue } from './nextDue.js'
export { orderList } from './orderList.js'
export { type OwnerSlip, ownerSlip, type SlipFacts, type SlipOptions, type SlipWork } from './ownerSlip.js'
export { pickList } from './pickList.js'
export type { PlannedCover, PlannedFilterHold, PlannedLevel, PlannedStep } from './plannedStep.js'
export { planVisit, type VisitCodes } from './planVisit.js'
export { remainingStock } from './remainingStock.js'
export type { VisitFacts, VisitOptions } from './requireVisit.js'
export type * from './visitPlan.js'
export type * from './wall/wallFactsTypes.js'
export { type WallInput, type WallOptions, wallFacts } from './wallFacts.js'
