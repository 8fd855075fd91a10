import { randomUUID } from 'node:crypto'
import { mkdir, open, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises'
import { dirname } from 'node:path'
import type { CliIo } from './cliIo.js'

/** The real files, streams and clock. */
export function nodeIo(): CliIo {
  return {
    readText: (path) => readFile(path, 'utf8'),
    openInput: async (path) => (path === undefined ? process.stdin : (await open(path)).createReadStream()),
    openOutput: () => process.stdout,
    isFolder: async (path) => (await stat(path)).isDirectory(),
    listFolder: async (path) => (await readdir(path)).sort(),
    writeText: async (path, text) => {
      await mkdir(dirname(path), { recursive: true })
      // Written under another name first, so that a half-written file is never read.
      const draft = `${path}.${randomUUID()}.part`
      try {
        await writeFile(draft, text, 'utf8')
        await rename(draft, path)
      } catch (error) {
        await rm(draft, { force: true })
        throw error
      }
    },
    print: (text) => void process.stdout.write(text.endsWith('\n') ? text : `${text}\n`),
    printError: (text) => void process.stderr.write(text.endsWith('\n') ? text : `${text}\n`),
    today: () => {
      const now = new Date()
      const two = (value: number): string => String(value).padStart(2, '0')
      return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
    },
  }
}
