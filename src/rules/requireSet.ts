import { refuse, requireKnownKeys, requireObject } from '../base/index.js'
import { isDate } from '../calendar/index.js'
import { requireDocument } from '../spec/index.js'
import type { CheckFacts, DocumentSet } from './rule.js'

const KIND_BY_LIST = {
  sheets: 'spec-sheet',
  logs: 'machine-log',
  toolboxes: 'toolbox',
  stocks: 'stock',
  procedures: 'procedure',
  records: 'service-record',
} as const

/** Throws if a list is missing, a document was not parsed or has the wrong kind, or `today` is not a date. */
export function requireSet(set: DocumentSet, facts: CheckFacts): void {
  requireObject('set', set)
  for (const [list, kind] of Object.entries(KIND_BY_LIST)) {
    const documents: unknown = set[list as keyof DocumentSet]
    if (!Array.isArray(documents)) throw refuse(`set.${list}`, documents, 'a list of documents')
    for (const [place, namedDocument] of documents.entries())
      requireDocument(`set.${list}[${place}].document`, namedDocument?.document, kind)
  }
  requireKnownKeys('facts', facts, ['today'])
  const { today } = facts
  if (today !== undefined && !isDate(today)) throw refuse('facts.today', today, 'a date YYYY-MM-DD', 'string')
}
