import type { Param } from '../base/index.js'
import type { CalendarCodes } from '../calendar/index.js'
import type { FillCodes } from '../fill/index.js'
import type { IntervalCodes } from '../interval/index.js'
import type { OilCodes } from '../oil/index.js'
import type { ProcedureCodes } from '../procedure/index.js'
import type { NumberMarks, PrintedBand, QuantityCodes, Unit } from '../quantity/index.js'
import type { RuleCodes } from '../rules/index.js'
import type { SealCodes } from '../seal/index.js'
import type { PlannedCover, PlannedFilterHold, PlannedLevel, ServiceCodes } from '../service/index.js'
import type { Action, Seal, SpecCodes, WheelMark } from '../spec/index.js'
import type { ThreadCodes } from '../thread/index.js'
import type { TorqueCodes } from '../torque/index.js'
import type { CardWords } from './cardWords.js'

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

/** How a text writes numbers and quantities in the catalogue's language; texts never format a number themselves. */
export interface Say {
  /** A bare number with the language's marks, at most `digits` decimals (default 3), no trailing zeros. */
  number(value: number, digits?: number): string
  /** A quantity param `{ value: number | Figure, unit }`; a Figure keeps its printed digits. */
  quantity(value: Param | undefined): string
  /** A calendar date as `YYYY-MM-DD`, which every reader of a workshop card can sort. */
  date(value: string): string
  /** `one, two and three`. */
  list(items: readonly string[]): string
  /** A plural: `count(3, 'washer', 'washers')` gives `3 washers`. */
  count(value: number, one: string, other: string): string
  /** Another code's text, for params that carry a reason `{ code, params }`. */
  reason(value: Param | undefined): string
}

/** The texts of one room in one language: one for each code of the room. */
export type Texts<Codes> = { readonly [Code in keyof Codes]: (params: Codes[Code], say: Say) => string }

/**
 * One language: every sentence, label and spoken word that a reader can get. Written by hand, one module a language, so
 * that only the one imported is bundled.
 */
export interface Catalogue {
  /** BCP 47 tag. */
  readonly language: string
  readonly direction: 'ltr' | 'rtl'
  readonly marks: NumberMarks
  /** Joins a list as the language does. */
  readonly list: (items: readonly string[]) => string
  /** The text of every code of every room. */
  readonly texts: Texts<AllCodes>
  /** The instruction of each action of a procedure. */
  readonly steps: StepTexts
  /** Headings, labels and the names of kinds and states on cards. */
  readonly card: CardWords
  /** Numbers and units for a voice. */
  readonly speech: SpeechWords
}

/**
 * What a step's text may name. Every string fits into a sentence; what is not known is absent, and the text leaves it
 * out.
 */
export interface StepParams {
  /** `fill plug` */
  readonly part?: string
  /** `front differential`; absent where the heading above the step names it. */
  readonly gearcase?: string
  /** `left` */
  readonly instance?: string
  readonly wheelMark?: WheelMark
  /** How an item is secured, in the sheet's words. */
  readonly how?: string
  /** A shield that is back in front of what is looked at. */
  readonly shield?: string
  /** Where the jack goes, in the manual's words. */
  readonly jack?: string
  /** The part's position, in the manual's words. */
  readonly place?: string
  readonly seal?: Seal['kind']
  readonly sealant?: string
  /** `SAE 80W-90, API GL-5` */
  readonly oil?: string
  /** `450 mL` */
  readonly volume?: string
  /** `34 N·m`, `30–38 N·m`; includes stages and a final angle. */
  readonly torque?: string
  /** `2–3`, turns past finger tight. */
  readonly turns?: string
  /** Why there is no figure for this step. */
  readonly gap?: 'not stated' | 'cannot tell'
  readonly wrench?: string
  /** The wrench's setting, on its own scale. */
  readonly setting?: string
  /** `about 4 min` */
  readonly wait?: string
  /** A sentence on how long the wait usually is, where it cannot be calculated. */
  readonly usualWait?: string
  /** `30–50 °C` */
  readonly temperature?: string
  readonly additive?: string
  /** `1.4 L`: the refill that oil and additive make together. */
  readonly together?: string
  readonly additiveOrder?: 'additive first' | 'oil first'
  /** How the fill is judged; its figures are the next three. */
  readonly level?: PlannedLevel
  /** `0–5 mm` below the lower edge of the level hole. */
  readonly below?: string
  /** `40–50 °C` */
  readonly levelTemperature?: string
  /** `10 min` after stopping. */
  readonly minutes?: string
  /** More oil than this stops the work: `1045 mL`. */
  readonly stopAt?: string
  readonly cover?: PlannedCover
  readonly filter?: PlannedFilterHold
  /** The bead of a sealant: `3 mm`. */
  readonly bead?: string
  /** The gearcase takes grease, which is pressed in. */
  readonly fluid?: 'grease'
  /** What closes the part, where no tool does. */
  readonly drive?: 'hand' | 'clip'
  /** The torque has stages before its last. */
  readonly staged?: boolean
}

/** The texts of one action; the params are values as printed or, for a voice, in words. */
export interface StepText {
  /** Whole sentences: one instruction each, at most 20 words, imperative. */
  readonly full: (params: StepParams) => string
  /** A few words for a technician who knows the job. */
  readonly short: (params: StepParams) => string
  /** What the camera shows while the step is spoken. */
  readonly show: (params: StepParams) => string
}

export type StepTexts = Readonly<Record<Action, StepText>>

/** Numbers and units in words, for a voice. */
export interface SpeechWords {
  /** A decimal numeral in words, digit by digit behind the mark: `10.0` is `ten point zero`. */
  readonly numeral: (digits: string) => string
  /** `eight point nine pound-feet` */
  readonly quantity: (digits: string, unit: Unit) => string
  /** `two to three`, around two numerals in words. */
  readonly range: (from: string, to: string) => string
  /** A printed figure, a figure with its tolerance, or limits. */
  readonly band: (value: PrintedBand) => string
  /** A time of whole seconds. */
  readonly duration: (seconds: number) => string
}
