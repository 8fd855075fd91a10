import { requireDocument } from '../spec/index.js'
import type { DocumentSet } from './rule.js'

const LISTS = [
  ['sheets', 'spec-sheet'],
  ['logs', 'machine-log'],
  ['toolboxes', 'toolbox'],
  ['stocks', 'stock'],
  ['procedures', 'procedure'],
  ['records', 'service-record'],
] as const

/** Throws where a set lacks a list, or a document that was not parsed, or of another kind, stands in one. */
export function requireSet(set: DocumentSet): void {
  if (typeof set !== 'object' || set === null)
    throw new TypeError('set: an object with lists of documents is wanted')
  for (const [list, kind] of LISTS) {
    const documents: unknown = set[list]
    if (!Array.isArray(documents)) throw new TypeError(`set.${list}: a list of documents is wanted`)
    for (const [place, named] of documents.entries())
      requireDocument(`set.${list}[${place}].document`, named?.document, kind)
  }
}
