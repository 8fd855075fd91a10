import { readdirSync, readFileSync } from 'node:fs'
import type { DocumentSet, Named } from '../../../src/rules/rule.js'

const LIST_OF_KIND = {
  'spec-sheet': 'sheets',
  'machine-log': 'logs',
  toolbox: 'toolboxes',
  stock: 'stocks',
  procedure: 'procedures',
  'service-record': 'records',
} as const

type Kind = keyof typeof LIST_OF_KIND

export interface ReadDocument {
  readonly name: string
  readonly document: { readonly kind: Kind; readonly id: string }
}

/** The folders of `examples/` that hold a good set: all but the mistakes. */
export function goodFolders(): readonly string[] {
  return readdirSync('examples', { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && entry.name !== 'mistakes')
    .map((entry) => `examples/${entry.name}`)
    .sort()
}

/** The documents of one folder, in the order of their file names. */
export function readFolder(folder: string): readonly ReadDocument[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith('.json'))
    .sort()
    .map((file) => ({
      name: `${folder}/${file}`,
      document: JSON.parse(readFileSync(`${folder}/${file}`, 'utf8')),
    }))
}

/** A closed set of documents, sorted into the lists that the rules ask for. */
export function setOf(documents: readonly ReadDocument[]): DocumentSet {
  const lists: Record<string, Named<unknown>[]> = {
    sheets: [],
    logs: [],
    toolboxes: [],
    stocks: [],
    procedures: [],
    records: [],
  }
  for (const named of documents) lists[LIST_OF_KIND[named.document.kind]]?.push(named)
  return lists as unknown as DocumentSet
}
