import type { CalendarCodes } from '../calendar/codes.js'
import type { CliCodes } from '../cli/codes.js'
import type { IntervalCodes } from '../interval/codes.js'
import type { QuantityCodes } from '../quantity/codes.js'
import type { SpecCodes } from '../spec/codes.js'
import type { ThreadCodes } from '../thread/codes.js'
import type { TorqueCodes } from '../torque/codes.js'

/** Every code that any room emits, with its params. A catalogue has a text for each. */
export interface AllCodes
  extends CalendarCodes,
    CliCodes,
    IntervalCodes,
    QuantityCodes,
    SpecCodes,
    ThreadCodes,
    TorqueCodes {}
