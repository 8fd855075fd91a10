// What other rooms may use of this one.
export { type AdaptorAnswer, type AdaptorQuestion, adaptorSetting } from './adaptorSetting.js'
export { type CalibrationInputs, calibrationInputs } from './calibrationInputs.js'
export { checkPlugsSwapped, type PlugTorque, type SwapVerdict } from './checkPlugsSwapped.js'
export { checkWrench } from './checkWrench.js'
export {
  type ChooseWrenchesOptions,
  type CoveredTask,
  chooseWrenches,
  type UncoveredReason,
  type WrenchChoice,
  type WrenchTask,
} from './chooseWrenches.js'
export { type ClampLoad, type ClampLoadQuestion, clampLoad } from './clampLoad.js'
export type { TorqueCodes } from './codes.js'
export { findTorqueSlip, type SlipFactor, type TorqueSlip, type TorqueSlipVerdict } from './findTorqueSlip.js'
export { judgeTorqueSet, type TorqueSetVerdict } from './judgeTorqueSet.js'
export { judgeTurns, type TurnsVerdict } from './judgeTurns.js'
export { judgeWrenchReach, type WrenchReachVerdict } from './judgeWrenchReach.js'
export { type NutFactorQuestion, nutFactor } from './nutFactor.js'
export { type ProofLoad, proofLoad } from './proofLoad.js'
export { type TurnsBand, turnsBand } from './turnsBand.js'
export type { WrenchToGet } from './wrenchToGet.js'
export type {
  Fit,
  TorqueBand,
  TorqueFit,
  TorqueSetting,
  WrenchOptions,
  WrenchVerdict,
} from './wrenchVerdict.js'
