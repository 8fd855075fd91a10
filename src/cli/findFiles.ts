import { dirname, join } from 'node:path'
import { type CliIo, type PathKind, UsageError } from './cliIo.js'
import { matchPattern, NOT_SEARCHED } from './matchPattern.js'
import { safeLine } from './safeLine.js'
import { failAsUnreadable } from './unreadable.js'

/** The word for standard input among the paths. */
export const STANDARD_INPUT = '-'

/** The documents that paths name, not yet read. */
export interface FoundFiles {
  /** Files named one by one: one set. */
  readonly files: readonly string[]
  /** Files by their folder: each a set of its own. */
  readonly folders: ReadonlyMap<string, readonly string[]>
  readonly skipped: {
    /** Neither .json nor .yaml. */
    readonly others: number
    readonly pipes: number
    readonly emptyFolders: number
    /** Hidden, `node_modules`, or a link. */
    readonly notSearched: number
  }
}

const READABLE = /\.(json|ya?ml)$/i

/**
 * Finds the JSON and YAML files that paths and patterns name; with `below` in the folders of a folder too. A pipe among them
 * is not opened, since nothing may ever be written to it.
 */
export async function findFiles(paths: readonly string[], io: CliIo, below = false): Promise<FoundFiles> {
  const files: string[] = []
  const folders = new Map<string, Set<string>>()
  const skipped = { others: 0, pipes: 0, emptyFolders: 0, notSearched: 0 }
  const empty: string[] = []

  const addTo = (folder: string, file: string): void => {
    folders.set(folder, (folders.get(folder) ?? new Set()).add(file))
  }
  const skipFile = (path: string, kind: PathKind): void => {
    if (kind === 'other' && READABLE.test(path)) {
      skipped.pipes += 1
      io.printError(safeLine(`${path}: a pipe or device, skipped`))
    } else skipped.others += 1
  }
  const searched = new Set<string>()
  const searchFolder = async (folder: string): Promise<void> => {
    if (searched.has(folder)) return
    searched.add(folder)
    const inner: string[] = []
    for (const { name, kind } of await failAsUnreadable(folder, io.listFolder(folder))) {
      const path = join(folder, name)
      if (kind === 'file' && READABLE.test(name)) addTo(folder, path)
      else if (kind === 'file' || kind === 'other') skipFile(path, kind)
      else if (kind === 'folder' && !NOT_SEARCHED.test(name)) inner.push(path)
      else skipped.notSearched += 1
    }
    if (!folders.has(folder)) skipped.emptyFolders += 1
    if (below) for (const path of inner) await searchFolder(path)
  }
  const addFolder = async (path: string): Promise<void> => {
    const folder = dirname(join(path, 'x'))
    await searchFolder(folder)
    const inside = join(folder, 'x').slice(0, -1)
    if (![...folders.keys()].some((one) => one === folder || (below && one.startsWith(inside))))
      empty.push(`${path}: no .json or .yaml file in this folder${below ? ' or below' : ''}`)
  }

  for (const path of paths) {
    const named = path === STANDARD_INPUT ? 'file' : await kindOf(path, io)
    if (named === undefined) {
      const matches = await matchPattern(path, io)
      if (matches.length === 0) throw new UsageError(`${path}: no file or folder matches`)
      for (const { path: match, kind } of matches)
        if (kind === 'folder' || kind === 'folder link')
          await (path.includes('**') ? undefined : addFolder(match))
        else if (kind === 'other' || !READABLE.test(match)) skipFile(match, kind)
        else if (path.includes('**')) addTo(dirname(match), match)
        else files.push(match)
    } else if (named === 'folder') await addFolder(path)
    else if (named === 'other' && READABLE.test(path))
      throw new UsageError(`${path}: a pipe or device; to read it, write - < ${path}`)
    else if (path !== STANDARD_INPUT || !files.includes(path)) files.push(path)
  }
  if (paths.length > 0 && files.length === 0 && folders.size === 0)
    throw new UsageError(empty.length === 0 ? 'no .json or .yaml file found' : empty.join('; '))
  for (const note of empty) io.printError(safeLine(`${note}; skipped`))
  return {
    files,
    folders: new Map([...folders].map(([folder, inside]) => [folder, [...inside]])),
    skipped,
  }
}

/** Undefined: nothing has this name, and it is a pattern. */
async function kindOf(path: string, io: CliIo): Promise<PathKind | undefined> {
  try {
    return await io.kindOf(path)
  } catch (error) {
    if (/[*?]/.test(path)) return undefined
    return failAsUnreadable(path, Promise.reject(error))
  }
}
