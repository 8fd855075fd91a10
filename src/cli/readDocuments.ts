import type { Finding } from '../base/index.js'
import type { DocumentSet, Named } from '../rules/index.js'
import { parseHistory, readTableHead } from '../schema/index.js'
import type { AnyDocument, ProcedureDocument, SheetReference, SpecSheet } from '../spec/index.js'
import { type CliIo, INPUT_NAME, requireReadable, UsageError, type WordIo } from './cliIo.js'
import { type FoundFiles, findFiles, STANDARD_INPUT } from './findFiles.js'
import { readJsonDocument, readYamlDocument, replaceTabs } from './readDocumentText.js'

/** A closed set of documents read from files, with the findings of the parser. */
export interface FileSet {
  /** The folder or files, as on the command line. */
  readonly name: string
  readonly set: DocumentSet
  readonly findings: readonly Finding[]
  /** Texts by file name, to find lines and columns. */
  readonly texts: ReadonlyMap<string, string>
}

/**
 * Reads files and folders. All named files form one closed set; the JSON and YAML files directly in a folder
 * form another.
 */
export async function readDocuments(paths: readonly string[], io: WordIo): Promise<readonly FileSet[]> {
  return readFoundFiles(await findFiles(paths, io), io)
}

/** Reads the found files as closed sets, one after the other. */
export async function* readSets(
  { files, folders }: Pick<FoundFiles, 'files' | 'folders'>,
  io: CliIo,
): AsyncGenerator<FileSet> {
  if (files.length > 0) yield readFileSet(files.join(' '), files, io)
  for (const [folder, folderFiles] of folders) yield readFileSet(folder, folderFiles, io)
}

/** Reads all found files. */
export async function readFoundFiles(
  found: Pick<FoundFiles, 'files' | 'folders'>,
  io: CliIo,
): Promise<readonly FileSet[]> {
  const sets: FileSet[] = []
  for await (const one of readSets(found, io)) sets.push(one)
  return sets
}

/** The whole text of a file, or of standard input. */
export async function readWholeText(path: string, io: CliIo): Promise<string> {
  if (path !== STANDARD_INPUT) return requireReadable(path, io.readText(path))
  const readInput = async () => {
    const chunks: Buffer[] = []
    for await (const chunk of await io.openInput()) chunks.push(Buffer.from(chunk))
    return Buffer.concat(chunks).toString('utf8')
  }
  return requireReadable(INPUT_NAME, readInput())
}

async function readFileSet(name: string, files: readonly string[], io: CliIo): Promise<FileSet> {
  const texts = new Map<string, string>()
  const findings: Finding[] = []
  const documents: Named<AnyDocument>[] = []
  for (const path of files) {
    const text = await readWholeText(path, io)
    const isPiped = path === STANDARD_INPUT
    const file = isPiped ? INPUT_NAME : path
    // Standard input has no file name: text that does not start like JSON is YAML, unless it is a table.
    const isJson = /^[\s\uFEFF]*([[{]|$)/.test(text) || readTableHead(text) !== undefined
    const isYaml = isPiped ? !isJson : /\.ya?ml$/i.test(file)
    // Pointers into the log of a history do not fit its text.
    if (!isHistoryPath(file)) texts.set(file, isYaml ? replaceTabs(text) : text)
    const parsed = isHistoryPath(file)
      ? parseHistory(text.split('\n'), { name: file })
      : isYaml
        ? readYamlDocument(text, file)
        : readJsonDocument(text, file)
    findings.push(...parsed.findings)
    if (!parsed.ok) continue
    const { value: document, places } = parsed
    documents.push({ name: file, document, ...(places && { places }) })
  }
  const listOfKind = <Kind extends AnyDocument['kind']>(kind: Kind) =>
    documents.filter(
      (named): named is Named<Extract<AnyDocument, { kind: Kind }>> => named.document.kind === kind,
    )
  const set = {
    sheets: listOfKind('spec-sheet'),
    logs: listOfKind('machine-log'),
    toolboxes: listOfKind('toolbox'),
    stocks: listOfKind('stock'),
    procedures: listOfKind('procedure'),
    records: listOfKind('service-record'),
  }
  return { name, set, findings, texts }
}

/** The documents of one kind in all sets. */
export function listDocuments<Document>(
  sets: readonly FileSet[],
  selectKind: (set: DocumentSet) => readonly Named<Document>[],
): readonly Document[] {
  return sets.flatMap(({ set }) => selectKind(set).map(({ document }) => document))
}

/** The sheet that a document names by id and revision. */
export function findSheet(
  sheets: readonly SpecSheet[],
  { id, revision }: SheetReference,
): SpecSheet | undefined {
  return sheets.find((sheet) => sheet.id === id && sheet.revision === revision)
}

/**
 * Whether a file is the history of one machine: a log as lines. Other JSON Lines files are fleets with one
 * log on each line.
 */
export function isHistoryPath(path: string): boolean {
  return /\.history\.jsonl$/i.test(path)
}

/**
 * The procedure in the file of an option; undefined if it has errors, which are among the findings of the
 * set.
 */
export async function readProcedure(
  flag: string,
  path: string,
  io: WordIo,
): Promise<{ readonly sets: readonly FileSet[]; readonly procedure: ProcedureDocument | undefined }> {
  const sets = await readDocuments([path], io)
  const [procedure, ...others] = listDocuments(sets, (set) => set.procedures)
  const isReadable = sets.every(({ findings }) => findings.every(({ severity }) => severity !== 'error'))
  if (isReadable && (procedure === undefined || others.length > 0))
    throw new UsageError('oneProcedure', {
      given: `${flag} ${path}`,
      count: procedure === undefined ? 0 : others.length + 1,
    })
  return { sets, procedure: isReadable ? procedure : undefined }
}
