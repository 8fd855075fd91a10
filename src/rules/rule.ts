import type { Cure, Finding, JsonPointer, Params, Place, Severity } from '../finding.js'
import type {
  MachineLog,
  ProcedureDocument,
  ServiceRecord,
  SpecSheet,
  Stock,
  Toolbox,
} from '../spec/index.js'

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
}

/** What a rule says of one place; the runner adds code, severity and document. */
export interface Complaint {
  readonly path: JsonPointer
  readonly params: Params
  readonly related?: readonly Place[]
  readonly cures?: readonly Cure[]
  /** A milder or graver severity than the rule's own, where the rule's comment says when. */
  readonly severity?: Severity
}

/** The documents that a rule can be about, by kind. */
export interface RuleSubjects {
  readonly 'spec-sheet': SpecSheet
  readonly 'machine-log': MachineLog
  readonly toolbox: Toolbox
  readonly stock: Stock
  readonly procedure: ProcedureDocument
  readonly 'service-record': ServiceRecord
}

/**
 * One check over documents as written. The file `rules/<room>/<kebab-name>.ts` holds the rule whose code is
 * `<room>/<kebab-name>`; nothing else lives there.
 */
export interface Rule<Kind extends keyof RuleSubjects = keyof RuleSubjects> {
  readonly code: `${string}/${string}`
  readonly severity: Severity
  /** Which kind of document it reads; it is called once for each of that kind. */
  readonly about: Kind
  /** All complaints, one per mistake. `set` holds every document given, for rules that need a partner (a log's sheet). */
  readonly check: (document: RuleSubjects[Kind], set: DocumentSet) => readonly Complaint[]
}

/** Types a rule by the kind it is about. */
export function defineRule<Kind extends keyof RuleSubjects>(rule: Rule<Kind>): Rule<Kind> {
  return rule
}

export type { Finding }
