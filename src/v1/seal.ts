export type { ORingVerdict, SealCodes, WasherFit } from '../seal/index.js'
export { checkORing, checkWasherFit } from '../seal/index.js'
