import type { CalendarCodes } from '../calendar/codes.js'
import type { FillCodes } from '../fill/codes.js'
import type { IntervalCodes } from '../interval/codes.js'
import type { OilCodes } from '../oil/codes.js'
import type { ProcedureCodes } from '../procedure/codes.js'
import type { QuantityCodes } from '../quantity/codes.js'
import type { RuleCodes } from '../rules/codes.js'
import type { SealCodes } from '../seal/codes.js'
import type { ServiceCodes } from '../service/codes.js'
import type { SpecCodes } from '../spec/codes.js'
import type { ThreadCodes } from '../thread/codes.js'
import type { TorqueCodes } from '../torque/codes.js'

/** Every code that any room emits, with its params. A catalogue has a text for each. */
export interface AllCodes
  extends CalendarCodes,
    FillCodes,
    IntervalCodes,
    OilCodes,
    ProcedureCodes,
    QuantityCodes,
    RuleCodes,
    SealCodes,
    ServiceCodes,
    SpecCodes,
    ThreadCodes,
    TorqueCodes {}
