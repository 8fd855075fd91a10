import { join, sep } from 'node:path'
import type { CliIo, FolderEntry, PathKind } from './cliIo.js'
import { requireReadable } from './makeReadError.js'

/** Folders that are not searched: hidden folders and installed packages. */
export const NOT_SEARCHED = /^(\.|node_modules$)/

interface Match {
  readonly path: string
  readonly kind: PathKind
}

/**
 * The files and folders that match a pattern, as in most shells: `*` and `?` within a name, `**` for any
 * number of folders. Hidden names match only patterns that start with a dot.
 */
export async function matchPattern(pattern: string, io: CliIo): Promise<readonly Match[]> {
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
