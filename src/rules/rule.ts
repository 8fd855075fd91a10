import type { Cure, JsonPointer, Params, Place, Severity } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import type {
  Documents,
  MachineLog,
  ProcedureDocument,
  ServiceRecord,
  SpecSheet,
  Stock,
  Toolbox,
  WrittenPlaces,
} from '../spec/index.js'
import type { DocumentCodes } from './codes.js'
import type { RecordIndex } from './lookup/indexRecord.js'
import type { SheetIndex } from './lookup/indexSheet.js'

/** A closed set of documents, each with the caller's own name for it. */
export interface DocumentSet {
  readonly sheets: readonly Named<SpecSheet>[]
  readonly logs: readonly Named<MachineLog>[]
  readonly toolboxes: readonly Named<Toolbox>[]
  readonly stocks: readonly Named<Stock>[]
  readonly procedures: readonly Named<ProcedureDocument>[]
  readonly records: readonly Named<ServiceRecord>[]
}

export interface Named<T> {
  readonly name?: string
  readonly document: T
  /** Where a sheet in short notation was written, as the parse function gave it: findings then point there. */
  readonly places?: WrittenPlaces
}

/** What the caller knows besides the documents. */
export interface Circumstances {
  /** Absent: nothing is judged against the calendar, such as a reading in the future. */
  readonly today?: DateText
}

/** What a rule may use besides its document and the set. */
export interface RuleFacts extends Circumstances {
  /** Places in the sheet's `waivers` that waived nothing; known only to the rule that runs last. */
  readonly unusedWaivers?: readonly number[]
}

/** What a rule finds at one place; the runner adds code, severity and document. */
export interface RuleFinding<Own = Params> {
  readonly path: JsonPointer
  readonly params: Own
  readonly related?: readonly Place[]
  readonly cures?: readonly Cure[]
  /** A milder or graver severity than the rule's own, where the rule's comment says when. */
  readonly severity?: Severity
}

/** The documents that a rule can be about, by kind; service records both of their own and of a log. */
export type RuleSubjects = Documents

export type SubjectKind = keyof RuleSubjects

/** The params that a code's text needs; a code of another room may carry any. */
export type RuleParams<Code> = Code extends keyof DocumentCodes ? DocumentCodes[Code] : Params

/** The codes of house rules; their params may be anything. */
export type HouseCodes<House extends AnyRule> = { readonly [Rule in House as Rule['code']]: Params }

/** What a rule is given: one document and what belongs to it, looked up once for all rules. */
export interface RuleInput<Kind extends SubjectKind = SubjectKind> {
  readonly document: RuleSubjects[Kind]
  /** The sheet itself, or the one that the document names by id and revision, if it is in the set. */
  readonly sheet: [Kind] extends ['spec-sheet'] ? SheetIndex : SheetIndex | undefined
  /** Entries and tightenings of a record, each with what the sheet says of it. */
  readonly record: [Kind] extends ['service-record'] ? RecordIndex : RecordIndex | undefined
  /** The log of a record's machine, if it is in the set. */
  readonly log: MachineLog | undefined
  /** Every document given. */
  readonly set: DocumentSet
  readonly facts: RuleFacts
}

/**
 * One check over documents as written. The file `rules/<room>/<kebab-name>.ts` holds the rule whose code is
 * `<room>/<kebab-name>` and nothing else.
 */
export interface Rule<Kind extends SubjectKind = SubjectKind, Code extends string = string> {
  readonly code: Code
  readonly severity: Severity
  /** Which kind of document it reads; it runs once for each of that kind. */
  readonly about: Kind | readonly Kind[]
  /** All findings, one per mistake. */
  check(input: RuleInput<Kind>): readonly RuleFinding<RuleParams<Code>>[]
}

/** A rule of any kind and code, as the lists hold it. */
export interface AnyRule {
  readonly code: string
  readonly severity: Severity
  readonly about: SubjectKind | readonly SubjectKind[]
  check(input: never): readonly RuleFinding[]
}

/**
 * Types a rule by the kind it is about and by the params that its code's text needs; it does nothing else.
 * To write a rule of your own, start here and hand it to {@link checkDocuments} in its third argument.
 *
 * @param rule - code `room/kebab-name`, severity, what it is about, and the check itself
 * @returns the same rule
 *
 * Source: house rule.
 *
 * @example
 * ```ts
 * import { defineRule } from 'drivetrain-service/v1/rules'
 * const named = defineRule({
 *   code: 'house/log-without-name',
 *   severity: 'info',
 *   about: 'machine-log',
 *   check: ({ document }) => (document.name === '' ? [{ path: '/name', params: {} }] : []),
 * })
 * // What is the code of this house rule?
 * named.code // => 'house/log-without-name'
 * ```
 */
export function defineRule<
  Kind extends SubjectKind,
  const Code extends `${string}/${string}` = `${string}/${string}`,
>(rule: Rule<Kind, Code>): Rule<Kind, Code> {
  return rule
}
