import type { Fix, JsonPointer, Params, Place, Severity } from '../base/index.js'
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

/** A closed set of documents, each with an optional name from the caller. */
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
  /**
   * The written positions of a document in short notation, from the parse function. Findings then point
   * there.
   */
  readonly places?: WrittenPlaces
}

/** Facts besides the documents. */
export interface CheckFacts {
  /** Without it, no date counts as future. */
  readonly today?: DateText
}

/** Facts that a rule may use besides the documents. */
export interface RuleFacts extends CheckFacts {
  /** Indexes of the waivers without a finding; set only for the rule that runs last. */
  readonly unusedWaivers?: readonly number[]
}

/** A finding of a rule at one pointer; code, severity and document are added later. */
export interface RuleFinding<OwnParams = Params> {
  readonly path: JsonPointer
  readonly params: OwnParams
  readonly related?: readonly Place[]
  readonly cures?: readonly Fix[]
  /** Replaces the severity of the rule, in the cases named in its comment. */
  readonly severity?: Severity
}

/** The documents that a rule can check, by kind. Service records include those inside a log. */
export type RuleSubjects = Documents

export type SubjectKind = keyof RuleSubjects

/** The params that the text of a code needs. House rules may have any params. */
export type RuleParams<Code> = Code extends keyof DocumentCodes ? DocumentCodes[Code] : Params

/** The codes of house rules, with any params. */
export type HouseCodes<House extends AnyRule> = { readonly [Rule in House as Rule['code']]: Params }

/** The input of a rule: one document with its related documents. */
export interface RuleInput<Kind extends SubjectKind = SubjectKind> {
  readonly document: RuleSubjects[Kind]
  /** The sheet itself, or the sheet that the document names by id and revision, if it is in the set. */
  readonly sheet: [Kind] extends ['spec-sheet'] ? SheetIndex : SheetIndex | undefined
  /** Entries and tightenings of a record, with their parts on the sheet. */
  readonly record: [Kind] extends ['service-record'] ? RecordIndex : RecordIndex | undefined
  /** The log of a record's machine, if it is in the set. */
  readonly log: MachineLog | undefined
  readonly set: DocumentSet
  readonly facts: RuleFacts
}

/**
 * A check of documents. The file `rules/<topic>/<kebab-name>.ts` contains only the rule with the code
 * `<topic>/<kebab-name>`.
 */
export interface Rule<Kind extends SubjectKind = SubjectKind, Code extends string = string> {
  readonly code: Code
  readonly severity: Severity
  /** The kinds of document that the rule checks. It runs once for each document of these kinds. */
  readonly about: Kind | readonly Kind[]
  /** Returns one finding for each mistake. */
  check(input: RuleInput<Kind>): readonly RuleFinding<RuleParams<Code>>[]
}

/** A rule of any kind and code, for lists of rules. */
export interface AnyRule {
  readonly code: string
  readonly severity: Severity
  readonly about: SubjectKind | readonly SubjectKind[]
  check(input: never): readonly RuleFinding[]
}

/**
 * Returns a rule unchanged, with the types of its document and params. Pass your rules to {@link
 * checkDocuments} as its third argument.
 *
 * @param rule - its code `topic/kebab-name`, severity, kind of document, and check
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
