import type { CalendarCodes } from '../calendar/index.js'
import type { FillCodes } from '../fill/index.js'
import type { IntervalCodes } from '../interval/index.js'
import type { OilCodes } from '../oil/index.js'
import type { ProcedureCodes } from '../procedure/index.js'
import type { QuantityCodes } from '../quantity/index.js'
import type { RuleCodes } from '../rules/index.js'
import type { SealCodes } from '../seal/index.js'
import type { ServiceCodes } from '../service/index.js'
import type { SpecCodes } from '../spec/index.js'
import type { ThreadCodes } from '../thread/index.js'
import type { TorqueCodes } from '../torque/index.js'

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
