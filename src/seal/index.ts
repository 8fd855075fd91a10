// Exports for other rooms.
export { checkORing, type ORingVerdict } from './checkORing.js'
export { checkWasherFit, type WasherFit } from './checkWasherFit.js'
export type { SealCodes } from './codes.js'
export { matchStockSeals } from './matchStockSeals.js'
export { materialSuits } from './materialSuits.js'
export { partNumbersOf } from './partNumbersOf.js'
export { type SealTask, sealsToReplace } from './sealsToReplace.js'
