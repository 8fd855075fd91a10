import type { Param } from '../base/index.js'
import type { CalendarCodes } from '../calendar/index.js'
import type { FillCodes } from '../fill/index.js'
import type { IntervalCodes } from '../interval/index.js'
import type { OilCodes } from '../oil/index.js'
import type { ProcedureCodes } from '../procedure/index.js'
import type { NumberMarks, PrintedBand, QuantityCodes, Unit } from '../quantity/index.js'
import type { RecordCodes } from '../record/index.js'
import type { RuleCodes } from '../rules/index.js'
import type { SealCodes } from '../seal/index.js'
import type { PlannedCover, PlannedFilterHold, PlannedLevel, ServiceCodes } from '../service/index.js'
import type { Action, Seal, SpecCodes, WheelMark } from '../spec/index.js'
import type { ThreadCodes } from '../thread/index.js'
import type { TorqueCodes } from '../torque/index.js'
import type { CardWords } from './cardWords.js'
import type { CueWords } from './cueWords.js'
import type { PaperWords } from './paperWords.js'
import type { SlipWords } from './slipWords.js'
import type { WallWords } from './wallWords.js'

/** Every code that any module emits, with its params. A catalogue has a text for each. */
export interface AllCodes
  extends CalendarCodes,
    FillCodes,
    IntervalCodes,
    OilCodes,
    ProcedureCodes,
    QuantityCodes,
    RecordCodes,
    RuleCodes,
    SealCodes,
    ServiceCodes,
    SpecCodes,
    ThreadCodes,
    TorqueCodes {}

/** Writes numbers and quantities in the catalogue's language; texts never format a number themselves. */
export interface Say {
  /** A number without a unit, with the language's marks, at most `digits` decimals (default 3), no trailing zeros. */
  number(value: number, digits?: number): string
  /** A quantity param `{ value: number | Figure, unit }`; a Figure keeps its printed digits. */
  quantity(value: Param | undefined): string
  /** A calendar date as `YYYY-MM-DD`, unambiguous in every country. */
  date(value: string): string
  /** `one, two and three`. */
  list(items: readonly string[]): string
  /** A plural: `count(3, 'washer', 'washers')` gives `3 washers`. */
  count(value: number, singular: string, pluralForm: string): string
  /** The text of a reason param `{ code, params }`. */
  reason(value: Param | undefined): string
}

/** The texts of a set of codes in one language, one for each code. */
export type Texts<Codes> = { readonly [Code in keyof Codes]: (params: Codes[Code], say: Say) => string }

/** Messages in one language: texts, and the forms of numbers and lists. */
export interface Messages {
  /** BCP 47 tag. */
  readonly language: string
  readonly marks: NumberMarks
  /** Joins a list: `one, two and three`. */
  readonly list: (items: readonly string[]) => string
  /** The plural form of a number; `Intl.PluralRules` would be slow to load. */
  readonly plural: (value: number) => Intl.LDMLPluralRule
  /** The texts of codes; a code without a text is shown unchanged. */
  readonly texts: Partial<Texts<AllCodes>>
}

/**
 * The texts of one language: sentences, labels and spoken words. Each language is a separate module, so that only the
 * imported one is bundled.
 */
export interface Catalogue extends Messages {
  readonly direction: 'ltr' | 'rtl'
  /** Who checked the translation of the safety sentences. */
  readonly review: TranslationReview
  /** The text of every code. */
  readonly texts: Texts<AllCodes>
  /** The instruction of each action of a procedure. */
  readonly steps: StepTexts
  /** Instructions for several steps done together; the longest that fits is used. */
  readonly lines: readonly LineText[]
  /** Headings, labels and the names of kinds and states on cards. */
  readonly card: CardWords
  /** Headings, camera shots and sentences of a cue sheet. */
  readonly cues: CueWords
  /** Headings, labels and findings on an owner's slip. */
  readonly slip: SlipWords
  /** Headings, warnings, and the job on a wall card. */
  readonly wall: WallWords
  /** Headings and labels on small papers: label, chart, pick list, differences, blank record. */
  readonly papers: PaperWords
  /** Numbers and units for speech. */
  readonly speech: SpeechWords
}

/**
 * English is the original. A translation prints its note beside the safety sentences of a card until someone who works
 * with the machines in that language has read them and is named.
 */
export type TranslationReview =
  | { readonly kind: 'original' }
  | { readonly kind: 'reviewed'; readonly by: string }
  | { readonly kind: 'not reviewed'; readonly note: string }

/**
 * The values for a step's text, worded to fit into a sentence. Unknown values are absent and omitted from the
 * text.
 */
export interface StepParams {
  /** `fill plug` */
  readonly part?: string
  /** `front differential`; absent if the heading above the step names it. */
  readonly gearcase?: string
  /** `left` */
  readonly instance?: string
  readonly wheelMark?: WheelMark
  /** The way to secure an item, in the sheet's words. */
  readonly how?: string
  /** A refitted shield in front of the part to check. */
  readonly shield?: string
  /** The jacking point, in the manual's words. */
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
  /** The reason why this step has no figure. */
  readonly gap?: 'not stated' | 'cannot tell'
  readonly wrench?: string
  /** The wrench's setting, in the unit of its scale. */
  readonly setting?: string
  /** `about 4 min` */
  readonly wait?: string
  /** A sentence with the usual waiting time, if it cannot be calculated. */
  readonly usualWait?: string
  /** `30–50 °C` */
  readonly temperature?: string
  readonly additive?: string
  /** `1.4 L`: oil plus additive. */
  readonly totalVolume?: string
  readonly additiveOrder?: 'additive first' | 'oil first'
  /** The method of the level check; the next three keys are its figures. */
  readonly level?: PlannedLevel
  /** `0–5 mm` below the lower edge of the level hole. */
  readonly below?: string
  /** `40–50 °C` */
  readonly levelTemperature?: string
  /** `10 min` after stopping. */
  readonly minutes?: string
  /** Stop the work if more oil than this goes in: `1045 mL`. */
  readonly stopAt?: string
  readonly cover?: PlannedCover
  readonly filter?: PlannedFilterHold
  readonly beforeDraining?: true
  /** The bead of a sealant: `3 mm`. */
  readonly bead?: string
  /** Present if the gearcase is filled with grease. */
  readonly fluid?: 'grease'
  /** The socket or key of the toolbox that fits the part: `10 mm hex bit socket`. */
  readonly socket?: string
  /**
   * Whether the step is on another part than the rest of its line, such as the fill plug that lets air in.
   */
  readonly isOther?: true
  /** The way to close the part without a tool. */
  readonly drive?: 'hand' | 'clip'
  /** Whether the torque has several stages. */
  readonly hasStages?: boolean
}

/** The texts of one action; the params are values as printed or, for speech, in words. */
export interface StepText {
  /** Whole sentences: one instruction each, at most 20 words, imperative. */
  readonly full: (params: StepParams) => string
  /** A few words for a technician who knows the job, without the figures in the margin of the line. */
  readonly short: (params: StepParams) => string
  /** The camera shot during the spoken step. */
  readonly show: (params: StepParams) => string
}

export type StepTexts = Readonly<Record<Action, StepText>>

/** A text for consecutive steps done together; if undefined, each step keeps its own text. */
export interface LineText {
  readonly actions: readonly Action[]
  /** Whether it fits any number of these actions in any order. */
  readonly anyOrder?: true
  /** One or two sentences; gets the params of the steps in order. */
  readonly full: WriteLineText
  readonly short: WriteLineText
}

type WriteLineText = (...steps: readonly (StepParams & { readonly do: Action })[]) => string | undefined

/** Numbers and units in words, for speech. */
export interface SpeechWords {
  /** A decimal numeral in words, digit by digit after the decimal mark, without zeros at the end. */
  readonly numeral: (digits: string) => string
  /** `eight point nine foot-pounds`: the unit as people say it. */
  readonly quantity: (digits: string, unit: Unit) => string
  /** A name with its numbers in words: `ten millimetre socket`, `SAE eighty W ninety`. */
  readonly name: (text: string) => string
  /** `two to three`, from two numerals in words. */
  readonly range: (from: string, to: string) => string
  /** A printed figure, a figure with its tolerance, or limits. */
  readonly band: (value: PrintedBand) => string
  /** A time of whole seconds. */
  readonly duration: (seconds: number) => string
}
