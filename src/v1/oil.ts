export type {
  AspectVerdict,
  GradeSystem,
  OilCodes,
  OilFacts,
  OilVerdict,
  ViscosityVerdict,
} from '../oil/index.js'
export { oilMeets, viscosityAt } from '../oil/index.js'
