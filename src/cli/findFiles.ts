import { dirname, join, sep } from 'node:path'
import { cleanLine } from './cleanLine.js'
import {
  type CliIo,
  type FolderEntry,
  type PathKind,
  requireReadable,
  UsageError,
  type WordIo,
} from './cliIo.js'

/** The path that means standard input. */
export const STANDARD_INPUT = '-'

/** The files to read. */
export interface FoundFiles {
  /** Named files: one set. */
  readonly files: readonly string[]
  /** Files by folder: each folder is a set. */
  readonly folders: ReadonlyMap<string, readonly string[]>
  readonly skipped: {
    /** Neither .json nor .yaml. */
    readonly otherFiles: number
    readonly pipes: number
    readonly emptyFolders: number
    /** Hidden, `node_modules`, or a link. */
    readonly unsearchedFolders: number
  }
}

const DOCUMENT_NAME = /\.(json|ya?ml|history\.jsonl)$/i

/** The state of a search. */
interface FileSearch {
  readonly io: WordIo
  readonly below: boolean
  readonly files: string[]
  readonly folders: Map<string, Set<string>>
  readonly searchedFolders: Set<string>
  readonly skipped: { -readonly [Why in keyof FoundFiles['skipped']]: number }
  /** A message for each named folder without documents. */
  readonly emptyNotices: string[]
}

/**
 * Finds the JSON and YAML files of paths and patterns; with `below`, also in subfolders. A pipe is not
 * opened, because reading it could block for ever.
 */
export async function findFiles(paths: readonly string[], io: WordIo, below = false): Promise<FoundFiles> {
  const skipped = { otherFiles: 0, pipes: 0, emptyFolders: 0, unsearchedFolders: 0 }
  const search: FileSearch = {
    io,
    below,
    files: [],
    folders: new Map(),
    searchedFolders: new Set(),
    skipped,
    emptyNotices: [],
  }
  for (const path of paths) await addPath(search, path)
  const { files, folders, emptyNotices } = search
  if (paths.length > 0 && files.length === 0 && folders.size === 0)
    throw emptyNotices.length === 0
      ? new UsageError('noDocumentFile')
      : new UsageError('asWritten', { text: emptyNotices.join('; ') })
  for (const notice of emptyNotices) io.printError(cleanLine(io.words.reports.skippedNotice({ notice })))
  return {
    files,
    folders: new Map([...folders].map(([folder, folderFiles]) => [folder, [...folderFiles]])),
    skipped,
  }
}

async function addPath(search: FileSearch, path: string): Promise<void> {
  const { files } = search
  if (path === STANDARD_INPUT) {
    if (!files.includes(path)) files.push(path)
    return
  }
  const kind = await kindOf(path, search.io)
  if (kind === undefined) await addMatches(search, path)
  else if (kind === 'folder') await addFolder(search, path)
  else if (kind === 'other' && DOCUMENT_NAME.test(path)) throw new UsageError('pipe', { path })
  else files.push(path)
}

/** The files that match a pattern form one set. With `**` only files match, and each folder is a set. */
async function addMatches(search: FileSearch, pattern: string): Promise<void> {
  const matches = await matchPattern(pattern, search.io)
  if (matches.length === 0) throw new UsageError('noMatch', { pattern })
  const byFolder = pattern.includes('**')
  for (const { path, kind } of matches) {
    if (kind === 'folder' || kind === 'folder link') {
      if (!byFolder) await addFolder(search, path)
    } else if (kind === 'other' || !DOCUMENT_NAME.test(path)) skipFile(search, path, kind)
    else if (byFolder) addToFolder(search, dirname(path), path)
    else search.files.push(path)
  }
}

/** Adds a named folder and, with `below`, its subfolders. */
async function addFolder(search: FileSearch, path: string): Promise<void> {
  const { io, folders, below, emptyNotices } = search
  const { emptyFolder, emptyFolderBelow } = io.words.reports
  const folder = dirname(join(path, 'x'))
  await searchFolder(search, folder)
  const prefix = join(folder, 'x').slice(0, -1)
  if (![...folders.keys()].some((found) => found === folder || (below && found.startsWith(prefix))))
    emptyNotices.push(below ? emptyFolderBelow({ path }) : emptyFolder({ path }))
}

async function searchFolder(search: FileSearch, folder: string): Promise<void> {
  const { io, folders, searchedFolders, skipped } = search
  if (searchedFolders.has(folder)) return
  searchedFolders.add(folder)
  const subfolders: string[] = []
  for (const { name, kind } of await requireReadable(folder, io.listFolder(folder))) {
    const path = join(folder, name)
    if (kind === 'file' && DOCUMENT_NAME.test(name)) addToFolder(search, folder, path)
    else if (kind === 'file' || kind === 'other') skipFile(search, path, kind)
    else if (kind === 'folder' && !NOT_SEARCHED.test(name)) subfolders.push(path)
    else skipped.unsearchedFolders += 1
  }
  if (!folders.has(folder)) skipped.emptyFolders += 1
  if (search.below) for (const path of subfolders) await searchFolder(search, path)
}

function addToFolder({ folders }: FileSearch, folder: string, file: string): void {
  folders.set(folder, (folders.get(folder) ?? new Set()).add(file))
}

function skipFile({ io, skipped }: FileSearch, path: string, kind: PathKind): void {
  if (kind === 'other' && DOCUMENT_NAME.test(path)) {
    skipped.pipes += 1
    io.printError(cleanLine(io.words.reports.skippedPipe({ path })))
  } else skipped.otherFiles += 1
}

/** The kind of a path; undefined if it is a pattern. */
async function kindOf(path: string, io: CliIo): Promise<PathKind | undefined> {
  try {
    return await io.kindOf(path)
  } catch (error) {
    if (/[*?]/.test(path)) return undefined
    return requireReadable(path, Promise.reject(error))
  }
}

/** Folders that are not searched: hidden folders and installed packages. */
const NOT_SEARCHED = /^(\.|node_modules$)/

interface Match {
  readonly path: string
  readonly kind: PathKind
}

/**
 * The files and folders that match a pattern, as in most shells: `*` and `?` within a name, `**` for any
 * number of folders. Hidden names match only patterns that start with a dot.
 */
async function matchPattern(pattern: string, io: CliIo): Promise<readonly Match[]> {
  const parts = (sep === '\\' ? pattern.replaceAll('\\', '/') : pattern).split('/')
  let matches: readonly Match[] = [{ path: parts[0] === '' ? sep : '', kind: 'folder' }]
  if (parts.at(-1) === '**') parts.push('*')
  for (const part of parts.filter((segment) => segment !== '' && segment !== '.')) {
    const nextMatches: Match[] = []
    for (const { path, kind } of matches)
      if (kind === 'folder' || kind === 'folder link') nextMatches.push(...(await matchPart(path, part, io)))
    matches = nextMatches
  }
  return [...new Map(matches.map((match) => [match.path, match])).values()]
}

async function matchPart(folder: string, part: string, io: CliIo): Promise<readonly Match[]> {
  if (!/[*?]/.test(part)) {
    const path = join(folder, part)
    try {
      return [{ path, kind: await io.kindOf(path) }]
    } catch {
      return []
    }
  }
  const listEntries = async (path: string): Promise<readonly FolderEntry[]> =>
    requireReadable(path, io.listFolder(path === '' ? '.' : path))
  if (part !== '**') {
    const nameRegExp = makeNamePattern(part)
    return (await listEntries(folder))
      .filter(({ name }) => nameRegExp.test(name) && (part.startsWith('.') || !name.startsWith('.')))
      .map(({ name, kind }) => ({ path: join(folder, name), kind }))
  }
  const matches: Match[] = [{ path: folder, kind: 'folder' }]
  for (const { name, kind } of await listEntries(folder))
    if (kind === 'folder' && !NOT_SEARCHED.test(name))
      matches.push(...(await matchPart(join(folder, name), part, io)))
  return matches
}

function makeNamePattern(part: string): RegExp {
  const escaped = part.replace(/[\\^$.|+()[\]{}]/g, '\\$&')
  return new RegExp(`^${escaped.replace(/\*+/g, '.*').replaceAll('?', '.')}$`, 'su')
}
