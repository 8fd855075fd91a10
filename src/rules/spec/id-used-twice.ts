import { isSameJson } from '../../base/index.js'
import { type DocumentSet, defineRule, type Named, type RuleSubjects, type SubjectKind } from '../rule.js'

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
  check: ({ document, set }) => {
    const first = firstOfId(document, set)
    if (first === undefined || first === document || isSameJson(first, document)) return []
    return [{ path: '/id', params: { kind: document.kind, id: document.id } }]
  },
})

function firstOfId(document: RuleSubjects[SubjectKind], set: DocumentSet): object | undefined {
  const { id } = document
  const { kind } = document
  if (kind === 'service-record') {
    const alone = set.records.find((record) => record.document.id === id)?.document
    return alone ?? firstInLogs(id, set)
  }
  const lists = {
    'spec-sheet': set.sheets,
    'machine-log': set.logs,
    toolbox: set.toolboxes,
    stock: set.stocks,
    procedure: set.procedures,
  }
  const revision = kind === 'spec-sheet' ? document.revision : undefined
  const twins: readonly Named<{ readonly id: string; readonly revision?: string }>[] = lists[kind]
  return twins.find((other) => other.document.id === id && other.document.revision === revision)?.document
}

function firstInLogs(id: string, { logs }: DocumentSet): object | undefined {
  for (const { document } of logs) {
    const found = document.records.find((record) => record.id === id)
    if (found !== undefined) return found
  }
  return undefined
}
