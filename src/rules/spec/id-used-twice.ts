import { isSameJson } from '../../spec/isSameJson.js'
import type { DocumentSet } from '../rule.js'
import { defineRule, type RuleSubjects, type SubjectKind } from '../rule.js'

/**
 * Two documents of one kind with the same id in one set; of sheets, with the same revision too. Whoever names
 * it would get the one or the other by chance. House rule: ids are unique in a set, and revisions of one
 * sheet stand side by side. The later document gets the finding. Records that a log holds count as documents;
 * the same record, word for word, beside its log is no mistake.
 */
export const idUsedTwice = defineRule({
  code: 'spec/id-used-twice',
  severity: 'error',
  about: ['spec-sheet', 'machine-log', 'toolbox', 'stock', 'procedure', 'service-record'],
  check: (document, set) => {
    const twins = everyDocument(set).filter(
      (other) =>
        other.kind === document.kind &&
        other.id === document.id &&
        (document.kind !== 'spec-sheet' ||
          (other.kind === 'spec-sheet' && other.revision === document.revision)),
    )
    const [first] = twins
    if (first === undefined || first === document || isSameJson(first, document)) return []
    return [{ path: '/id', params: { kind: document.kind, id: document.id } }]
  },
})

function everyDocument(set: DocumentSet): readonly RuleSubjects[SubjectKind][] {
  const { sheets, logs, toolboxes, stocks, procedures, records } = set
  return [
    ...[sheets, logs, toolboxes, stocks, procedures, records].flatMap((kind) =>
      kind.map(({ document }): RuleSubjects[SubjectKind] => document),
    ),
    ...logs.flatMap(({ document }) => document.records),
  ]
}
