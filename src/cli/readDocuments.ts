import { join } from 'node:path'
import type { Finding, Result } from '../base/index.js'
import type { DocumentSet, Named } from '../rules/index.js'
import { parseDocument, parseDocumentText } from '../schema/index.js'
import type { AnyDocument, SheetReference, SpecSheet } from '../spec/index.js'
import { type CliIo, UsageError } from './cliIo.js'
import { readYaml } from './readYaml.js'

/** A closed set of documents read from files, with every finding of reading them. */
export interface ReadSet {
  /** As named on the command line: a folder, or the files as one set. */
  readonly name: string
  readonly set: DocumentSet
  readonly findings: readonly Finding[]
  /** The texts as read, by the name that findings carry; for lines and columns. */
  readonly texts: ReadonlyMap<string, string>
}

const READABLE = /\.(json|ya?ml)$/i

/**
 * Reads files and folders. All files named make one closed set; every folder is a closed set of its own, of the
 * JSON and YAML files right in it.
 */
export async function readDocuments(paths: readonly string[], io: CliIo): Promise<readonly ReadSet[]> {
  const files: string[] = []
  const sets: ReadSet[] = []
  for (const path of paths) {
    if (await orUnreadable(path, io.isFolder(path))) {
      const names = (await io.listFolder(path)).filter((name) => READABLE.test(name))
      if (names.length === 0) throw new UsageError(`${path}: no .json or .yaml file in this folder`)
      const inside = names.map((name) => join(path, name))
      sets.push(await readSet(path, inside, io))
    } else files.push(path)
  }
  if (files.length > 0) sets.unshift(await readSet(files.join(' '), files, io))
  return sets
}

/** The error for a file that cannot be read. */
export function unreadable(path: string, error: unknown): UsageError {
  const code = (error as { code?: unknown }).code
  if (code === 'ENOENT') return new UsageError(`${path}: no such file or folder`)
  if (code === 'EISDIR') return new UsageError(`${path}: expected a file, found a folder`)
  if (code === 'EACCES') return new UsageError(`${path}: no permission to read`)
  return new UsageError(`${path}: cannot be read (${error instanceof Error ? error.message : String(error)})`)
}

/** What is read from a file that the caller named; a file that cannot be read is a usage error. */
export async function orUnreadable<T>(path: string, reading: Promise<T>): Promise<T> {
  try {
    return await reading
  } catch (error) {
    throw unreadable(path, error)
  }
}

async function readSet(name: string, files: readonly string[], io: CliIo): Promise<ReadSet> {
  const texts = new Map<string, string>()
  const findings: Finding[] = []
  const documents: Named<AnyDocument>[] = []
  for (const file of files) {
    const text = await orUnreadable(file, io.readText(file))
    texts.set(file, text)
    const read = /\.ya?ml$/i.test(file)
      ? readYamlDocument(text, file)
      : parseDocumentText('any', text, { name: file })
    findings.push(...read.findings)
    if (read.ok) documents.push({ name: file, document: read.value })
  }
  const ofKind = <Kind extends AnyDocument['kind']>(kind: Kind) =>
    documents.filter((one): one is Named<Extract<AnyDocument, { kind: Kind }>> => one.document.kind === kind)
  const set = {
    sheets: ofKind('spec-sheet'),
    logs: ofKind('machine-log'),
    toolboxes: ofKind('toolbox'),
    stocks: ofKind('stock'),
    procedures: ofKind('procedure'),
    records: ofKind('service-record'),
  }
  return { name, set, findings, texts }
}

function readYamlDocument(text: string, file: string): Result<AnyDocument> {
  const yaml = readYaml(text, file)
  if (!yaml.ok) return yaml
  const parsed = parseDocument('any', yaml.value, { name: file })
  const findings = [...yaml.findings, ...parsed.findings]
  const failed = findings.some(({ severity }) => severity === 'error')
  return parsed.ok && !failed ? { ...parsed, findings } : { ok: false, findings }
}

/** The documents of one kind in all sets. */
export function documentsOf<Document>(
  sets: readonly ReadSet[],
  ofKind: (set: DocumentSet) => readonly Named<Document>[],
): readonly Document[] {
  return sets.flatMap(({ set }) => ofKind(set).map(({ document }) => document))
}

/** The sheet that a document names by id and revision. */
export function findSheet(
  sheets: readonly SpecSheet[],
  { id, revision }: SheetReference,
): SpecSheet | undefined {
  return sheets.find((sheet) => sheet.id === id && sheet.revision === revision)
}
