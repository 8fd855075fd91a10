import { open, readdir, readFile, stat } from 'node:fs/promises'
import { join } from 'node:path'
import type { CliIo, PathKind } from './cliIo.js'
import type { SaveOptions } from './saveFile.js'

/** The real files, streams and clock. */
export function makeNodeIo(saveOptions: SaveOptions = {}): CliIo {
  return {
    readText: (path) => readFile(path, 'utf8'),
    openInput: async (path) => (path === undefined ? process.stdin : (await open(path)).createReadStream()),
    openOutput: () => process.stdout,
    sizeOf: async (path) => (await stat(path)).size,
    kindOf: async (path) => kindOf(await stat(path)),
    listFolder: async (path) => {
      const entries = await readdir(path, { withFileTypes: true })
      const folderEntries = entries.map(async (entry) => {
        const { name } = entry
        return { name, kind: entry.isSymbolicLink() ? await kindOfLink(join(path, name)) : kindOf(entry) }
      })
      return (await Promise.all(folderEntries)).sort((first, second) => (first.name < second.name ? -1 : 1))
    },
    saveText: async (path, makeText) => {
      const { saveFile } = await import('./saveFile.js')
      await saveFile(path, makeText, saveOptions)
    },
    print: (text) => void process.stdout.write(text.endsWith('\n') ? text : `${text}\n`),
    printError: (text) => void process.stderr.write(text.endsWith('\n') ? text : `${text}\n`),
    ...(process.stdout.columns > 0 && { columns: process.stdout.columns }),
    today: () => {
      const now = new Date()
      const padToTwo = (value: number): string => String(value).padStart(2, '0')
      return `${now.getFullYear()}-${padToTwo(now.getMonth() + 1)}-${padToTwo(now.getDate())}`
    },
  }
}

function kindOf(stats: { isDirectory: () => boolean; isFile: () => boolean }): PathKind {
  return stats.isDirectory() ? 'folder' : stats.isFile() ? 'file' : 'other'
}

/** A broken link is treated as a file, so that reading it fails. */
async function kindOfLink(path: string): Promise<PathKind> {
  try {
    const kind = kindOf(await stat(path))
    return kind === 'folder' ? 'folder link' : kind
  } catch {
    return 'file'
  }
}
