import type { JsonPointer } from '../base/index.js'
import { type ResolvedRecord, resolveRecords, type SheetReference, type SpecSheet } from '../spec/index.js'
import { indexRecord } from './lookup/indexRecord.js'
import { indexSheet, type SheetIndex } from './lookup/indexSheet.js'
import type { DocumentSet, Named, RuleFacts, RuleInput, RuleSubjects, SubjectKind } from './rule.js'

type NamedDocument = Named<RuleSubjects[SubjectKind]>

/** A document for the rules: one of the set, or a record inside a log. */
export interface Subject {
  readonly input: RuleInput
  /** The pointer of the subject inside the document `inside`. */
  readonly prefix: JsonPointer
  readonly inside: NamedDocument
  /** For a record with corrections: the corrected parts, with their pointers into the list of records. */
  readonly places?: ResolvedRecord['places']
}

/** Every document of a set in the given order, sheets first; the records of a log follow the log. */
export function listSubjects(set: DocumentSet, facts: RuleFacts): readonly Subject[] {
  const makeSubject = createSubjectMaker(set, facts)
  return [
    ...set.sheets.map((named) => makeSubject(named)),
    ...set.logs.flatMap((log) => [
      makeSubject(log),
      ...resolveRecords(log.document.records).map(({ record, places }, place) => ({
        ...makeSubject({ document: record }, `/records/${place}`, log),
        places,
      })),
    ]),
    ...[set.toolboxes, set.stocks, set.procedures, set.records].flatMap((list) =>
      list.map((named: NamedDocument) => makeSubject(named)),
    ),
  ]
}

/** Makes the subjects of one set, and indexes each sheet only once. */
export function createSubjectMaker(
  set: DocumentSet,
  facts: RuleFacts,
): (named: NamedDocument, prefix?: JsonPointer, inside?: NamedDocument) => Subject {
  const indexBySheet = new Map<SpecSheet, SheetIndex>()
  const getSheetIndex = (sheet: SpecSheet): SheetIndex => {
    const index = indexBySheet.get(sheet) ?? indexSheet(sheet)
    indexBySheet.set(sheet, index)
    return index
  }
  const findSheet = ({ id, revision }: SheetReference): SheetIndex | undefined => {
    const found = set.sheets.find(({ document }) => document.id === id && document.revision === revision)
    return found && getSheetIndex(found.document)
  }
  return (named, prefix = '', inside = named) => {
    const { document } = named
    const sheet =
      document.kind === 'spec-sheet'
        ? getSheetIndex(document)
        : 'sheet' in document
          ? findSheet(document.sheet)
          : undefined
    const isRecord = document.kind === 'service-record'
    const log = isRecord
      ? set.logs.find((namedLog) => namedLog.document.id === document.machine)?.document
      : undefined
    const record = isRecord ? indexRecord(document, sheet, log) : undefined
    return { input: { document, sheet, record, log, set, facts }, prefix, inside }
  }
}
