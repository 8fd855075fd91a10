import { isSameJson } from '../../base/index.js'
import { type AnyDocument, DOCUMENT_NAMES } from '../../spec/index.js'
import type { DocumentSet, Named } from '../rule.js'
import { documentRule } from '../ruleMakers.js'

/**
 * Two documents of one kind with the same id in one set. A reference to this id could mean either of them.
 * Revisions of one sheet may share a set.
 * Judges: Compares documents of one kind by `id`, sheets also by `revision`. Records inside logs are
 * included, after the other records. Finds each document after the first, unless the two are equal.
 * Place: `/id`
 * Params: kind: the kind of document; id: as written
 * Harm: job
 * House rule.
 */
export const rule = documentRule(...DOCUMENT_NAMES)(
  'spec/id-used-twice',
  'error',
  ({ document, log, set }) => {
    const first = findFirstById(document, set)
    // A record that was corrected differs from the one in its log.
    const recordsInLog = log?.records.filter(({ id }) => id === document.id)
    if (recordsInLog?.length === 1 && recordsInLog[0] === first) return []
    if (first === undefined || first === document || isSameJson(first, document)) return []
    return [{ path: '/id', params: { kind: document.kind, id: document.id } }]
  },
)

function findFirstById(document: AnyDocument, set: DocumentSet): AnyDocument | undefined {
  const { id, kind } = document
  if (kind === 'service-record')
    return set.records.find((record) => record.document.id === id)?.document ?? findFirstInLogs(id, set)
  const lists = {
    'spec-sheet': set.sheets,
    'machine-log': set.logs,
    toolbox: set.toolboxes,
    stock: set.stocks,
    procedure: set.procedures,
  }
  const revision = kind === 'spec-sheet' ? document.revision : undefined
  const documentsOfKind: readonly Named<AnyDocument & { readonly revision?: string }>[] = lists[kind]
  return documentsOfKind.find((other) => other.document.id === id && other.document.revision === revision)
    ?.document
}

function findFirstInLogs(id: string, { logs }: DocumentSet): AnyDocument | undefined {
  for (const { document } of logs) {
    const found = document.records.find((record) => record.id === id)
    if (found !== undefined) return found
  }
  return undefined
}
