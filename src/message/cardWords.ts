import type { DueState } from '../interval/index.js'
import type {
  FigureRole,
  PlannedMissing,
  PlannedTightening,
  PlannedTool,
  PlannedWait,
} from '../service/index.js'
import type {
  CaseFace,
  CasePosition,
  CrushWasher,
  DriveKind,
  Elastomer,
  Filter,
  IdentityFact,
  LimitedSlip,
  ReplaceWhen,
  Seal,
  Source,
  SourceRef,
  ThreadCondition,
} from '../spec/index.js'

/** The sections of a card, in order. */
export type CardSectionId =
  | 'due'
  | 'figures'
  | 'tightening'
  | 'ready'
  | 'steps'
  | 'waits'
  | 'missing'
  | 'record'
  | 'sources'

type Words<Names extends string> = Readonly<Record<Names, string>>
/** The words of a string as a union of names. */
type WordUnion<
  Text extends string,
  Union extends string = never,
> = Text extends `${infer First} ${infer Rest}` ? WordUnion<Rest, Union | First> : Union | Text

/**
 * All words on a card that do not come from the plan. They contain no digits: every figure comes from the
 * plan.
 */
export interface CardWords {
  /** The heading above the machine's name. */
  readonly title: string
  readonly shortTitle: string
  readonly sections: Words<CardSectionId>
  readonly captions: Words<'tightening'>
  /** The machine's manual and the local codes have priority, and licensed work needs licensed people. */
  readonly authority: readonly string[]
  readonly columns: Words<
    WordUnion<'by limit since used left dueAt state part manual alsoPrinted wrench setting trueBand'>
  >
  readonly labels: Words<CardLabel>
  readonly wrenchHabits: readonly string[]
  /** Blank lines to write on. */
  readonly blanks: Words<
    | WordUnion<'date initials hours distance drained refilled oil magnet filter oilLooks level leaks'>
    | WordUnion<'tightened seals notDone workingTime usedOil notes sample'>
    | WordUnion<'photos batch partNumber certificate signature'>
  >
  /** Choices to tick instead of writing. */
  readonly choices: Readonly<
    Record<'magnet' | 'filter' | 'seals' | 'oil' | 'level' | 'leaks', readonly string[]>
  >
  /** What stands between two texts, with its spaces: French has one before the sign. */
  readonly signs: Words<'colon' | 'semicolon'>
  readonly notStated: string
  /** States that a figure is not known, and the missing facts. */
  readonly cannotTell: (missing: readonly string[]) => string
  /** Gives the number of further missing facts in a short answer. */
  readonly moreMissing: (count: number) => string
  /** Marks every figure that is not printed in the manual. */
  readonly computedMark: string
  readonly identityFacts: Words<IdentityFact>
  readonly tasks: Words<'check' | 'change'>
  readonly dueStates: Words<DueState | 'not tracked'>
  readonly dueBy: Words<'hours' | 'distance' | 'period' | 'event'>
  readonly severities: Words<'normal' | 'severe'>
  readonly roles: Words<FigureRole>
  /** The faces of a gearcase, and the points on them. */
  readonly caseFaces: Words<CaseFace>
  readonly casePoints: Words<NonNullable<CasePosition['across' | 'height']>>
  /** From where the reader sees a gearcase. */
  readonly caseViews: Words<'front' | 'rear' | 'left' | 'right'>
  /** The names of the level figures, by measure. */
  readonly levels: Words<'duration' | 'length' | 'temperature'>
  readonly seals: Words<Seal['kind']>
  readonly filters: Words<Filter['kind']>
  readonly sealForms: Words<CrushWasher['form'] | 'profile ring'>
  readonly sealMaterials: Words<CrushWasher['material'] | Elastomer>
  readonly replace: Words<ReplaceWhen | 'cannot tell'>
  readonly threadConditions: Words<ThreadCondition>
  readonly limitedSlip: Words<LimitedSlip>
  readonly drives: Words<DriveKind>
  readonly tools: Words<PlannedTool['kind']>
  readonly toolVerdicts: Words<PlannedTool['verdict']>
  readonly tighteningVerdicts: Words<PlannedTightening['verdict']>
  readonly waits: Words<PlannedWait['kind']>
  readonly missingKinds: Words<PlannedMissing['kind']>
  readonly documents: Words<Source['document']>
  readonly confidences: Words<SourceRef['confidence']>
  /** Descriptions of the pictures, for readers who cannot see them. */
  readonly pictures: Words<'washer' | 'wheel marks' | 'pour'>
  /** Names of the bars and the pointer in a torque drawing. */
  readonly legend: Words<'allowed' | 'trueBand' | 'setting'>
  /** `6 months`: a period of whole years, months, weeks and days. */
  readonly period: (parts: {
    readonly years: number
    readonly months: number
    readonly weeks: number
    readonly days: number
  }) => string
  /** `3 min 20 s`, exact to the second. */
  readonly duration: (seconds: number) => string
  /** The amount past the limit, without a minus sign. */
  readonly past: (amount: string) => string
  readonly remaining: (amount: string) => string
  /** The state of a service that another service of this visit includes. */
  readonly coveredBy: (service: string) => string
}

type CardLabel =
  | WordUnion<'about additive ambient before buy candidates caution consumables decides distance each edition'>
  | WordUnion<'filters findings fromMiddle fromPour hours houseEstimate inFull machine market maximum modelYear mustHold otherServices ownRecords supersedes notToScale nothingMissing'>
  | WordUnion<'noService oil opened or overdueAfter ownSteps page pan permitted revision seals serial set sheet take'>
  | WordUnion<'thenAngle thenStage thread today tools turnsFromContact turnsPast untilDry use usedOil variant workingTime'>
