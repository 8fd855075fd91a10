import { join } from 'node:path'
import type { Finding, Result } from '../base/index.js'
import type { DocumentSet, Named } from '../rules/index.js'
import { parseDocument, parseDocumentText } from '../schema/index.js'
import type {
  AnyDocument,
  MachineLog,
  ProcedureDocument,
  ServiceRecord,
  SpecSheet,
  Stock,
  Toolbox,
} from '../spec/index.js'
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
    if (await isFolder(path, io)) {
      const names = (await io.listFolder(path)).filter((name) => READABLE.test(name))
      if (names.length === 0) throw new UsageError(`${path}: no .json or .yaml file in this folder`)
      sets.push(
        await readSet(
          path,
          names.map((name) => join(path, name)),
          io,
        ),
      )
    } else files.push(path)
  }
  if (files.length > 0) sets.unshift(await readSet(files.join(' '), files, io))
  return sets
}

async function isFolder(path: string, io: CliIo): Promise<boolean> {
  try {
    return await io.isFolder(path)
  } catch (error) {
    throw unreadable(path, error)
  }
}

/** The error for a file that cannot be read. */
export function unreadable(path: string, error: unknown): UsageError {
  const code = (error as { code?: unknown }).code
  if (code === 'ENOENT') return new UsageError(`${path}: no such file or folder`)
  if (code === 'EISDIR') return new UsageError(`${path}: expected a file, found a folder`)
  if (code === 'EACCES') return new UsageError(`${path}: no permission to read`)
  return new UsageError(`${path}: cannot be read (${error instanceof Error ? error.message : String(error)})`)
}

/** The text of one file that the caller named. */
export async function readFileText(path: string, io: CliIo): Promise<string> {
  try {
    return await io.readText(path)
  } catch (error) {
    throw unreadable(path, error)
  }
}

async function readSet(name: string, files: readonly string[], io: CliIo): Promise<ReadSet> {
  const texts = new Map<string, string>()
  const findings: Finding[] = []
  const sheets: Named<SpecSheet>[] = []
  const logs: Named<MachineLog>[] = []
  const toolboxes: Named<Toolbox>[] = []
  const stocks: Named<Stock>[] = []
  const procedures: Named<ProcedureDocument>[] = []
  const records: Named<ServiceRecord>[] = []
  for (const file of files) {
    const text = await readFileText(file, io)
    texts.set(file, text)
    const read = /\.ya?ml$/i.test(file)
      ? readYamlDocument(text, file)
      : parseDocumentText('any', text, { name: file })
    findings.push(...read.findings)
    if (!read.ok) continue
    const document = read.value
    switch (document.kind) {
      case 'spec-sheet':
        sheets.push({ name: file, document })
        break
      case 'machine-log':
        logs.push({ name: file, document })
        break
      case 'toolbox':
        toolboxes.push({ name: file, document })
        break
      case 'stock':
        stocks.push({ name: file, document })
        break
      case 'procedure':
        procedures.push({ name: file, document })
        break
      case 'service-record':
        records.push({ name: file, document })
        break
    }
  }
  return { name, set: { sheets, logs, toolboxes, stocks, procedures, records }, findings, texts }
}

function readYamlDocument(text: string, file: string): Result<AnyDocument> {
  const yaml = readYaml(text, file)
  if (!yaml.ok) return yaml
  const parsed = parseDocument('any', yaml.value, { name: file })
  const findings = [...yaml.findings, ...parsed.findings]
  const failed = findings.some(({ severity }) => severity === 'error')
  return parsed.ok && !failed ? { ...parsed, findings } : { ok: false, findings }
}
