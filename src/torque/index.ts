export { type AdaptorAnswer, type AdaptorQuestion, adaptorSetting } from './adaptorSetting.js'
export { checkWrench } from './checkWrench.js'
export {
  type ChooseWrenchesOptions,
  type CoveredTask,
  chooseWrenches,
  type UncoveredReason,
  type WrenchChoice,
  type WrenchTask,
} from './chooseWrenches.js'
export type { TorqueCodes } from './codes.js'
export type { WrenchToGet } from './wrenchToGet.js'
export type {
  Fit,
  TorqueBand,
  TorqueFit,
  TorqueSetting,
  WrenchOptions,
  WrenchVerdict,
} from './wrenchVerdict.js'
