// The functions and types that other rooms use.
export { type AdaptorInput, type AdaptorSetting, adaptorSetting } from './adaptorSetting.js'
export { checkPlugsSwapped } from './checkPlugsSwapped.js'
export { checkWrench } from './checkWrench.js'
export {
  type ChooseWrenchesOptions,
  type CoveredTask,
  chooseWrenches,
  type UncoveredReason,
  type WrenchChoice,
  type WrenchTask,
} from './chooseWrenches.js'
export { type ClampLoad, type ClampLoadInput, clampLoad } from './clampLoad.js'
export type { TorqueCodes } from './codes.js'
export { findTorqueSlip, type SlipFactor } from './findTorqueSlip.js'
export { judgeTurns } from './judgeTurns.js'
export { judgeWrenchSetting } from './judgeWrenchSetting.js'
export { readCalibrationInputs } from './readCalibrationInputs.js'
export type { WrenchToGet } from './wrenchToGet.js'
export type {
  Fit,
  TorqueBand,
  TorqueFit,
  TorqueSetting,
  WrenchFits,
  WrenchOptions,
  WrenchVerdict,
} from './wrenchVerdict.js'
