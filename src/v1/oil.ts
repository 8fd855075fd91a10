export {
  type AspectVerdict,
  type GradeSystem,
  type OilCircumstances,
  type OilCodes,
  type OilVerdict,
  oilMeets,
  type ViscosityVerdict,
  viscosityAt,
} from '../oil/index.js'
