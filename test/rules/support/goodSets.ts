import { readdirSync, readFileSync } from 'node:fs'
import { parse } from 'yaml'
import type { DocumentSet, Named } from '../../../src/rules/rule.js'
import { parseDocument } from '../../../src/schema/parseDocument.js'
import { exampleMachines } from '../../support/exampleMachines.js'

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

/** The folders of the example machines. Each has a good set. */
export function goodFolders(): readonly string[] {
  return exampleMachines().map((name) => `examples/${name}`)
}

/** The documents of one folder, in the order of their file names. */
export function readFolder(folder: string): readonly ReadDocument[] {
  return readdirSync(folder)
    .filter((file) => /\.(?:json|yaml)$/.test(file))
    .sort()
    .map((file) => ({
      name: `${folder}/${file}`,
      document: readText(file, readFileSync(`${folder}/${file}`, 'utf8')),
    }))
}

/** JSON unchanged; a sheet in short notation in its full form. */
function readText(file: string, text: string): ReadDocument['document'] {
  if (file.endsWith('.json')) return JSON.parse(text)
  const read = parseDocument('any', parse(text))
  if (!read.ok) throw new Error(JSON.stringify(read.findings))
  return read.value
}

/** A closed set of documents, sorted into the lists that the rules need. */
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
