import type { DocumentSet, Named, RuleSubjects, SubjectKind } from './rule.js'
import type { Subject } from './runRules.js'

/** Every document of a set in the order given, sheets first; the records of a log stand behind their log. */
export function setSubjects(set: DocumentSet): readonly Subject[] {
  return [
    ...set.sheets.map((named) => whole(named)),
    ...set.logs.flatMap((log): Subject[] => [
      whole(log),
      ...log.document.records.map(
        (record, place): Subject => ({
          kind: 'service-record',
          named: { document: record },
          prefix: `/records/${place}`,
          inside: log,
        }),
      ),
    ]),
    ...[set.toolboxes, set.stocks, set.procedures, set.records].flatMap((list) =>
      list.map((named) => whole(named)),
    ),
  ]
}

function whole(named: Named<RuleSubjects[SubjectKind]>): Subject {
  return { kind: named.document.kind, named, prefix: '', inside: named }
}
