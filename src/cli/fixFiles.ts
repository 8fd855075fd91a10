import { FILE_HEADERS_ONLY, formatPatch, structuredPatch } from 'diff'
import type { DocumentKind, Finding } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import { checkDocuments } from '../rules/index.js'
import { cleanLine } from './cleanLine.js'
import type { CliIo } from './cliIo.js'
import { editText } from './editText.js'
import type { FoundFiles } from './findFiles.js'
import { readFoundFiles } from './readDocuments.js'

/** A file with its old and its corrected text. */
export interface FixedFile {
  readonly path: string
  readonly before: string
  readonly after: string
  /** The number of corrected findings. */
  readonly count: number
}

/**
 * Logs and records are history and are never changed; procedures have `repair`, which looks at the whole
 * order.
 */
const FIXED_KINDS: readonly DocumentKind[] = ['spec-sheet', 'toolbox', 'stock']

/**
 * Besides those of the documents' shape and names (`spec/`): two values that are in the wrong order, and a spelling.
 */
const FIXED_CODES: readonly string[] = [
  'torque/turns-reversed',
  'torque/unknown-class',
  'stock/viscosities-swapped',
  'toolbox/declared-range-reversed',
]

/**
 * Whether a fix only corrects the spelling of a key, name or figure, or the order of two figures. Other fixes
 * decide what the manual means, and a person must look at it.
 */
function isSafe({ code, cures, document, waived }: Finding): boolean {
  // Several fixes of one text are alternatives.
  const isOnlyOne = code !== 'spec/bad-notation' || cures?.length === 1
  const isSpelling = code.startsWith('spec/') || FIXED_CODES.includes(code)
  return cures !== undefined && !waived && isOnlyOne && isSpelling && FIXED_KINDS.includes(document.kind)
}

/**
 * Corrects files by the safe fixes of their findings. A fix is kept only if its finding goes away and the set
 * has no new one. Nothing is written.
 */
export async function fixFiles(
  { files, folders }: Pick<FoundFiles, 'files' | 'folders'>,
  io: CliIo,
  today: DateText,
): Promise<readonly FixedFile[]> {
  const fixedFiles: FixedFile[] = []
  const fixAll = async (found: Pick<FoundFiles, 'files' | 'folders'>) =>
    fixedFiles.push(...(await fixSet(found, io, today)))
  if (files.length > 0) await fixAll({ files, folders: new Map() })
  for (const [folder, folderFiles] of folders)
    await fixAll({ files: [], folders: new Map([[folder, folderFiles]]) })
  return fixedFiles
}

/** The texts of a set, and its findings. */
interface Reading {
  readonly texts: ReadonlyMap<string, string>
  readonly findings: readonly Finding[]
  /** The number of reading errors by file. */
  readonly errors: ReadonlyMap<string, number>
}

/** The corrected text of a file, and the keys of the findings that it corrects. */
interface Attempt {
  readonly text: string
  readonly keys: readonly string[]
}

const nameOf = ({ document }: Finding): string => document.name ?? ''
const keyOf = (finding: Finding): string => JSON.stringify([nameOf(finding), finding.code, finding.path])

/** First tries all fixes of each file together; if they cause new findings in a file, tries them one at a time. */
async function fixSet(
  found: Pick<FoundFiles, 'files' | 'folders'>,
  io: CliIo,
  today: DateText,
): Promise<readonly FixedFile[]> {
  const edited = new Map<string, string>()
  const counts = new Map<string, number>()
  const refusedKeys = new Set<string>()
  const filesToFixOneByOne = new Set<string>()
  let reading = await readSet(found, edited, io, today)
  const first = reading
  for (let attempts = listAttempts(); attempts.size > 0; attempts = listAttempts()) {
    const next = await readSet(
      found,
      new Map([...edited, ...[...attempts].map(([name, { text }]) => [name, text] as const)]),
      io,
      today,
    )
    const harmful = [...attempts].filter(([name, attempt]) =>
      isHarmful(name, attempt, attempts, reading, next),
    )
    for (const [name, { keys }] of harmful) {
      attempts.delete(name)
      if (keys.length > 1) filesToFixOneByOne.add(name)
      else for (const key of keys) refusedKeys.add(key)
    }
    for (const [name, { text, keys }] of attempts) {
      edited.set(name, text)
      counts.set(name, (counts.get(name) ?? 0) + keys.length)
    }
    reading = harmful.length === 0 ? next : await readSet(found, edited, io, today)
  }
  return [...edited].map(([path, after]) => ({
    path,
    before: first.texts.get(path) ?? '',
    after,
    count: counts.get(path) ?? 0,
  }))

  function listAttempts(): Map<string, Attempt> {
    const attempts = new Map<string, Attempt>()
    for (const finding of reading.findings) {
      const name = nameOf(finding)
      const text = reading.texts.get(name)
      const attempt = attempts.get(name)
      const key = keyOf(finding)
      const mustWait = attempt !== undefined && filesToFixOneByOne.has(name)
      if (text === undefined || mustWait || refusedKeys.has(key) || !isSafe(finding)) continue
      const fixedText = editText(attempt?.text ?? text, finding.cures ?? [], /\.json$/i.test(name))
      if (fixedText !== undefined)
        attempts.set(name, { text: fixedText, keys: [...(attempt?.keys ?? []), key] })
      else if (attempt === undefined) refusedKeys.add(key)
    }
    return attempts
  }
}

/** Whether a finding stays, or the file or its set has a new one that the file's errors did not hide. */
function isHarmful(
  name: string,
  { keys }: Attempt,
  attempts: ReadonlyMap<string, Attempt>,
  before: Reading,
  after: Reading,
): boolean {
  const keysAfter = new Set(after.findings.map(keyOf))
  if (keys.some((key) => keysAfter.has(key))) return true
  const errorCount = before.errors.get(name) ?? 0
  if (errorCount > 0) return (after.errors.get(name) ?? 0) >= errorCount
  const wasAnyHidden = [...attempts.keys()].some((file) => before.errors.has(file))
  const knownKeys = new Set(before.findings.map(keyOf))
  return after.findings.some(
    (finding) =>
      !knownKeys.has(keyOf(finding)) &&
      (nameOf(finding) === name || (!wasAnyHidden && !attempts.has(nameOf(finding)))),
  )
}

async function readSet(
  found: Pick<FoundFiles, 'files' | 'folders'>,
  edited: ReadonlyMap<string, string>,
  io: CliIo,
  today: DateText,
): Promise<Reading> {
  const texts = new Map<string, string>()
  const readText = async (path: string) => {
    const text = edited.get(path) ?? (await io.readText(path))
    texts.set(path, text)
    return text
  }
  const sets = await readFoundFiles(found, { ...io, readText })
  const errors = new Map<string, number>()
  for (const finding of sets.flatMap(({ findings }) => findings))
    if (finding.severity === 'error') errors.set(nameOf(finding), (errors.get(nameOf(finding)) ?? 0) + 1)
  const findings = sets.flatMap(({ set, findings }) => [...findings, ...checkDocuments(set, { today })])
  return { texts, findings, errors }
}

/** The changes as a unified diff, which `patch` can read. */
export function renderChanges(files: readonly FixedFile[]): string {
  const patches = files.map(({ path, before, after }) => {
    const patch = structuredPatch(path, path, before, after, undefined, undefined, { context: 1 })
    return formatPatch(patch, FILE_HEADERS_ONLY)
  })
  return patches.join('').split('\n').map(cleanLine).join('\n')
}
