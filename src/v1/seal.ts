export {
  checkORing,
  checkWasherFit,
  type ORingVerdict,
  type SealCodes,
  type WasherFit,
} from '../seal/index.js'
