import type { Finding } from '../base/index.js'
import type { DocumentSet, Named } from '../rules/index.js'
import { parseDocument, parseDocumentText, parseHistory, readTableHead } from '../schema/index.js'
import type { AnyDocument, SheetReference, SpecSheet } from '../spec/index.js'
import type { CliIo } from './cliIo.js'
import { type FoundFiles, findFiles, STANDARD_INPUT } from './findFiles.js'
import { isHistory } from './isHistory.js'
import { type ReadDocument, readAsMeant } from './readAsMeant.js'
import { readYaml } from './readYaml.js'
import { failAsUnreadable } from './unreadable.js'

/** A closed set of documents read from files, with the findings of the parser. */
export interface ReadSet {
  /** The folder or the files, as on the command line. */
  readonly name: string
  readonly set: DocumentSet
  readonly findings: readonly Finding[]
  /** The texts by the file name in findings, to find lines and columns. */
  readonly texts: ReadonlyMap<string, string>
}

/** The name of standard input in findings. */
const INPUT_NAME = 'standard input'

/**
 * Reads files and folders. All named files together form one closed set; each folder is a closed set of the JSON and YAML files
 * directly in it.
 */
export async function readDocuments(paths: readonly string[], io: CliIo): Promise<readonly ReadSet[]> {
  return readFound(await findFiles(paths, io), io)
}

/** Reads the found files, set by set. */
export async function readFound({ files, folders }: FoundFiles, io: CliIo): Promise<readonly ReadSet[]> {
  const sets: ReadSet[] = []
  if (files.length > 0) sets.push(await readSet(files.join(' '), files, io))
  for (const [folder, inside] of folders) sets.push(await readSet(folder, inside, io))
  return sets
}

/** The whole text of a file, or of standard input. */
export async function readWhole(path: string, io: CliIo): Promise<string> {
  if (path !== STANDARD_INPUT) return failAsUnreadable(path, io.readText(path))
  const read = async () => {
    const chunks: Buffer[] = []
    for await (const chunk of await io.openInput()) chunks.push(Buffer.from(chunk))
    return Buffer.concat(chunks).toString('utf8')
  }
  return failAsUnreadable(INPUT_NAME, read())
}

async function readSet(name: string, files: readonly string[], io: CliIo): Promise<ReadSet> {
  const texts = new Map<string, string>()
  const findings: Finding[] = []
  const documents: Named<AnyDocument>[] = []
  for (const path of files) {
    const text = await readWhole(path, io)
    const piped = path === STANDARD_INPUT
    const file = piped ? INPUT_NAME : path
    // Standard input has no file name: text that does not begin like JSON is YAML, unless it is a table.
    const isJson = /^[\s\uFEFF]*([[{]|$)/.test(text) || readTableHead(text) !== undefined
    const isYaml = piped ? !isJson : /\.ya?ml$/i.test(file)
    // A place in the log of a history is not one in its text.
    if (!isHistory(file)) texts.set(file, isYaml ? withoutTabs(text) : text)
    const read = isHistory(file)
      ? parseHistory(text.split('\n'), { name: file })
      : isYaml
        ? readYamlDocument(text, file)
        : readJsonDocument(text, file)
    findings.push(...read.findings)
    if (!read.ok) continue
    const { value: document, places } = read
    documents.push({ name: file, document, ...(places && { places }) })
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

function withoutTabs(text: string): string {
  return text.replaceAll(/^[ \t]+/gm, (indent) => indent.replaceAll('\t', '  '))
}

/** After these, the text is not data. */
const UNREADABLE: readonly string[] = ['spec/table', 'spec/not-json', 'spec/too-long', 'spec/too-deep']

function readJsonDocument(text: string, name: string): ReadDocument {
  const read = parseDocumentText('any', text, { name })
  const isJson = read.ok || !read.findings.some(({ code }) => UNREADABLE.includes(code))
  return isJson ? readAsMeant(JSON.parse(text.replace(/^\uFEFF/, '')), read, name) : read
}

function readYamlDocument(text: string, name: string): ReadDocument {
  const yaml = readYaml(text, name)
  if (!yaml.ok) {
    // Tabs are one mistake: the rest is read as if they were spaces.
    const spaced = withoutTabs(text)
    return spaced === text
      ? yaml
      : { ok: false, findings: [...yaml.findings, ...readYamlDocument(spaced, name).findings] }
  }
  const read = readAsMeant(yaml.value, parseDocument('any', yaml.value, { name }), name)
  const findings = [...yaml.findings, ...read.findings]
  const failed = findings.some(({ severity }) => severity === 'error')
  return read.ok && !failed ? { ...read, findings } : { ok: false, findings }
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
