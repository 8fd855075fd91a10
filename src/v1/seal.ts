export {
  checkORing,
  checkWasherFit,
  type MaterialVerdict,
  matchStockSeals,
  materialSuits,
  type OpenedPart,
  type ORingVerdict,
  type SealCodes,
  type SealLine,
  type SealTask,
  sealsToReplace,
  type WasherFit,
} from '../seal/index.js'
