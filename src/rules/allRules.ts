import { dateInTheFuture } from './log/date-in-the-future.js'
import { pauseReversed } from './log/pause-reversed.js'
import { recordOfOtherMachine } from './log/record-of-other-machine.js'
import { unknownLogPart } from './log/unknown-part.js'
import { usedBeforeCommissioned } from './log/used-before-commissioned.js'
import { variantContradicted } from './log/variant-contradicted.js'
import type { AnyRule } from './runRules.js'
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
import { scaleWrong } from './toolbox/scale-wrong.js'
import { scalesDisagree } from './toolbox/scales-disagree.js'
import { vesselGraduation } from './toolbox/vessel-graduation.js'

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
  dateInTheFuture,
  pauseReversed,
  recordOfOtherMachine,
  unknownLogPart,
  usedBeforeCommissioned,
  variantContradicted,
  scaleWrong,
  scalesDisagree,
  vesselGraduation,
  openedLargerThanSize,
  viscositiesSwapped,
]
