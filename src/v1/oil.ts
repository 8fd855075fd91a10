export type {
  AspectVerdict,
  GradeSystem,
  OilCircumstances,
  OilCodes,
  OilVerdict,
  ViscosityVerdict,
} from '../oil/index.js'
export { oilMeets, viscosityAt } from '../oil/index.js'
