import { join, sep } from 'node:path'
import type { CliIo, FolderEntry, PathKind } from './cliIo.js'
import { failAsUnreadable } from './unreadable.js'

/** Folders that are not searched: hidden folders and installed packages. */
export const NOT_SEARCHED = /^(\.|node_modules$)/

interface Match {
  readonly path: string
  readonly kind: PathKind
}

/**
 * The files and folders that match a pattern, as in most shells: `*` and `?` within a name, `**` for any number of
 * folders. Hidden names match only a pattern that begins with a dot.
 */
export async function matchPattern(pattern: string, io: CliIo): Promise<readonly Match[]> {
  const parts = (sep === '\\' ? pattern.replaceAll('\\', '/') : pattern).split('/')
  let found: readonly Match[] = [{ path: parts[0] === '' ? sep : '', kind: 'folder' }]
  if (parts.at(-1) === '**') parts.push('*')
  for (const part of parts.filter((one) => one !== '' && one !== '.')) {
    const inside: Match[] = []
    for (const { path, kind } of found)
      if (kind === 'folder' || kind === 'folder link') inside.push(...(await step(path, part, io)))
    found = inside
  }
  return [...new Map(found.map((one) => [one.path, one])).values()]
}

async function step(folder: string, part: string, io: CliIo): Promise<readonly Match[]> {
  if (!/[*?]/.test(part)) {
    const path = join(folder, part)
    try {
      return [{ path, kind: await io.kindOf(path) }]
    } catch {
      return []
    }
  }
  const list = async (path: string): Promise<readonly FolderEntry[]> =>
    failAsUnreadable(path, io.listFolder(path === '' ? '.' : path))
  if (part !== '**') {
    const names = namePattern(part)
    return (await list(folder))
      .filter(({ name }) => names.test(name) && (part.startsWith('.') || !name.startsWith('.')))
      .map(({ name, kind }) => ({ path: join(folder, name), kind }))
  }
  const inside: Match[] = [{ path: folder, kind: 'folder' }]
  for (const { name, kind } of await list(folder))
    if (kind === 'folder' && !NOT_SEARCHED.test(name))
      inside.push(...(await step(join(folder, name), part, io)))
  return inside
}

function namePattern(part: string): RegExp {
  const literal = part.replace(/[\\^$.|+()[\]{}]/g, '\\$&')
  return new RegExp(`^${literal.replace(/\*+/g, '.*').replaceAll('?', '.')}$`, 'su')
}
