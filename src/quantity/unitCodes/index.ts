export { unitCodes } from './unitCodes.js'
export type { UnitCodes } from './unitCodeTable.js'
export { type CodeSystem, unitOfCode } from './unitOfCode.js'
