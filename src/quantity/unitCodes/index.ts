export { UNIT_CODES, type UnitCodes } from './unitCodeTable.js'
export { type CodeSystem, unitOfCode } from './unitOfCode.js'
