// Exports for other modules.
export { checkORing, type ORingVerdict } from './checkORing.js'
export { checkWasherFit, type WasherFit } from './checkWasherFit.js'
export type { SealCodes } from './codes.js'
export { partNumbersOf } from './compareSeals.js'
export { judgeSealMaterial } from './judgeSealMaterial.js'
export { listSealTasks, type SealTask } from './listSealTasks.js'
export { matchStockSeals } from './matchStockSeals.js'
