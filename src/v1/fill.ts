export type {
  ContainerChoice,
  ContainerUse,
  DrainInput,
  DrainVerdict,
  FillCodes,
  PanVerdict,
  PourInput,
  PourPart,
  PourTime,
  PourVerdict,
  RefillVerdict,
  VesselChoice,
  VolumeAmount,
} from '../fill/index.js'
export { checkPan, chooseContainers, chooseVessel, drainTime, judgeRefill, pourTime } from '../fill/index.js'
