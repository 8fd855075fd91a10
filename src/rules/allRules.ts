import { portionLargerThanRefill } from './fill/portion-larger-than-refill.js'
import { refillLargerThanDryFill } from './fill/refill-larger-than-dry-fill.js'
import { factorLeavesPart } from './interval/factor-leaves-part.js'
import { firstLongerThanRepeat } from './interval/first-longer-than-repeat.js'
import { impliedSpeed } from './interval/implied-speed.js'
import { limitNotAboveZero } from './interval/limit-not-above-zero.js'
import { logSpeed } from './interval/log-speed.js'
import { monthsAsDays } from './interval/months-as-days.js'
import { severeLongerThanRepeat } from './interval/severe-longer-than-repeat.js'
import { windowNotBelowRepeat } from './interval/window-not-below-repeat.js'
import { dateInTheFuture } from './log/date-in-the-future.js'
import { pauseReversed } from './log/pause-reversed.js'
import { recordOfOtherMachine } from './log/record-of-other-machine.js'
import { unknownLogPart } from './log/unknown-part.js'
import { usedBeforeCommissioned } from './log/used-before-commissioned.js'
import { variantContradicted } from './log/variant-contradicted.js'
import { additiveCountedTwice } from './oil/additive-counted-twice.js'
import { additiveExceedsRefill } from './oil/additive-exceeds-refill.js'
import { ambientGap } from './oil/ambient-gap.js'
import { unknownEdition } from './oil/unknown-edition.js'
import { unknownGrade } from './oil/unknown-grade.js'
import { viscosityOutsideGrade } from './oil/viscosity-outside-grade.js'
import { intervalDistancesDiffer } from './quantity/interval-distances-differ.js'
import { secondUnitDisagrees } from './quantity/second-unit-disagrees.js'
import { secondUnitSlip } from './quantity/second-unit-slip.js'
import { recordInTheFuture } from './record/date-in-the-future.js'
import { leakLeft } from './record/leak-left.js'
import { levelNotRight } from './record/level-not-right.js'
import { machineNotFound } from './record/machine-not-found.js'
import { metalInTheOil } from './record/metal-in-the-oil.js'
import { oilNotPermitted } from './record/oil-not-permitted.js'
import { partNotOnMachine } from './record/part-not-on-machine.js'
import { plugNotTightened } from './record/plug-not-tightened.js'
import { readingAgainstLog } from './record/reading-against-log.js'
import { readingMissing } from './record/reading-missing.js'
import { refillNotNoted } from './record/refill-not-noted.js'
import { refillOutsideTolerance } from './record/refill-outside-tolerance.js'
import { sealNotNew } from './record/seal-not-new.js'
import { tightenedOtherWay } from './record/tightened-other-way.js'
import { torqueOutsideBand } from './record/torque-outside-band.js'
import { turnsOutsideBand } from './record/turns-outside-band.js'
import { unknownContainer } from './record/unknown-container.js'
import { unknownRecordPart } from './record/unknown-part.js'
import { unknownTool } from './record/unknown-tool.js'
import { waterInTheOil } from './record/water-in-the-oil.js'
import { wrenchCannotReach } from './record/wrench-cannot-reach.js'
import type { AnyRule } from './rule.js'
import { crushWasherKept } from './seal/crush-washer-kept.js'
import { materialNotForOil } from './seal/material-not-for-oil.js'
import { noneAtOpening } from './seal/none-at-opening.js'
import { noneBesideSeal } from './seal/none-beside-seal.js'
import { noneOnParallelThread } from './seal/none-on-parallel-thread.js'
import { oRingSizeDiffers } from './seal/o-ring-size-differs.js'
import { sizeIsNothing } from './seal/size-is-nothing.js'
import { washerDoesNotFit } from './seal/washer-does-not-fit.js'
import { conditionEmpty } from './spec/condition-empty.js'
import { danglingReference } from './spec/dangling-reference.js'
import { idUsedTwice } from './spec/id-used-twice.js'
import { instancesWithoutPer } from './spec/instances-without-per.js'
import { intervalEmpty } from './spec/interval-empty.js'
import { limitsEmpty } from './spec/limits-empty.js'
import { limitsReversed } from './spec/limits-reversed.js'
import { modelYearsReversed } from './spec/model-years-reversed.js'
import { noFillOpening } from './spec/no-fill-opening.js'
import { noWayToEmpty } from './spec/no-way-to-empty.js'
import { oilSpaceChain } from './spec/oil-space-chain.js'
import { openingLacksRole } from './spec/opening-lacks-role.js'
import { overlappingOverrides } from './spec/overlapping-overrides.js'
import { overrideOfOtherKind } from './spec/override-of-other-kind.js'
import { overrideTargetMissing } from './spec/override-target-missing.js'
import { periodAsHours } from './spec/period-as-hours.js'
import { serialRangeWrong } from './spec/serial-range-wrong.js'
import { sheetNotFound } from './spec/sheet-not-found.js'
import { sheetOfOtherRevision } from './spec/sheet-of-other-revision.js'
import { toleranceTooLarge } from './spec/tolerance-too-large.js'
import { unitOfOtherMeasure } from './spec/unit-of-other-measure.js'
import { unknownVariant } from './spec/unknown-variant.js'
import { variantsOverlap } from './spec/variants-overlap.js'
import { openedLargerThanSize } from './stock/opened-larger-than-size.js'
import { viscositiesSwapped } from './stock/viscosities-swapped.js'
import { designationNotRead } from './thread/designation-not-read.js'
import { accuracyNotBelieved } from './toolbox/accuracy-not-believed.js'
import { calibrationInTheFuture } from './toolbox/calibration-in-the-future.js'
import { declaredRangeReversed } from './toolbox/declared-range-reversed.js'
import { scaleWrong } from './toolbox/scale-wrong.js'
import { scalesDisagree } from './toolbox/scales-disagree.js'
import { vesselGraduation } from './toolbox/vessel-graduation.js'
import { aboveProofLoad } from './torque/above-proof-load.js'
import { fillAndDrainSwapped } from './torque/fill-and-drain-swapped.js'
import { slipAtPlug } from './torque/slip-at-plug.js'
import { stagesNotRising } from './torque/stages-not-rising.js'
import { turnsOnParallelThread } from './torque/turns-on-parallel-thread.js'
import { turnsReversed } from './torque/turns-reversed.js'

/** Every rule that `checkDocuments` asks, room by room. The rule on unused waivers is asked after them. */
export const allRules: readonly AnyRule[] = [
  conditionEmpty,
  danglingReference,
  idUsedTwice,
  instancesWithoutPer,
  intervalEmpty,
  limitsEmpty,
  limitsReversed,
  modelYearsReversed,
  noFillOpening,
  noWayToEmpty,
  oilSpaceChain,
  openingLacksRole,
  overlappingOverrides,
  overrideOfOtherKind,
  overrideTargetMissing,
  periodAsHours,
  serialRangeWrong,
  sheetNotFound,
  sheetOfOtherRevision,
  toleranceTooLarge,
  unitOfOtherMeasure,
  unknownVariant,
  variantsOverlap,
  designationNotRead,
  intervalDistancesDiffer,
  secondUnitDisagrees,
  secondUnitSlip,
  aboveProofLoad,
  fillAndDrainSwapped,
  slipAtPlug,
  stagesNotRising,
  turnsOnParallelThread,
  turnsReversed,
  crushWasherKept,
  materialNotForOil,
  noneAtOpening,
  noneBesideSeal,
  noneOnParallelThread,
  oRingSizeDiffers,
  sizeIsNothing,
  washerDoesNotFit,
  additiveCountedTwice,
  additiveExceedsRefill,
  ambientGap,
  unknownEdition,
  unknownGrade,
  viscosityOutsideGrade,
  portionLargerThanRefill,
  refillLargerThanDryFill,
  factorLeavesPart,
  firstLongerThanRepeat,
  impliedSpeed,
  limitNotAboveZero,
  logSpeed,
  monthsAsDays,
  severeLongerThanRepeat,
  windowNotBelowRepeat,
  dateInTheFuture,
  pauseReversed,
  recordOfOtherMachine,
  unknownLogPart,
  usedBeforeCommissioned,
  variantContradicted,
  accuracyNotBelieved,
  calibrationInTheFuture,
  declaredRangeReversed,
  scaleWrong,
  scalesDisagree,
  vesselGraduation,
  openedLargerThanSize,
  viscositiesSwapped,
  recordInTheFuture,
  leakLeft,
  levelNotRight,
  machineNotFound,
  metalInTheOil,
  oilNotPermitted,
  partNotOnMachine,
  plugNotTightened,
  readingAgainstLog,
  readingMissing,
  refillNotNoted,
  refillOutsideTolerance,
  sealNotNew,
  tightenedOtherWay,
  torqueOutsideBand,
  turnsOutsideBand,
  unknownContainer,
  unknownRecordPart,
  unknownTool,
  waterInTheOil,
  wrenchCannotReach,
]
