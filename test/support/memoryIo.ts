import { readFile } from 'node:fs/promises'
import { Readable, Writable } from 'node:stream'
import type { CliIo, FolderEntry } from '../../src/cli/cliIo.js'
import { makeNodeIo } from '../../src/cli/makeNodeIo.js'

export interface MemoryIo extends CliIo {
  /** The files that would have been written, by path. */
  readonly written: Map<string, string>
  readonly out: string[]
  readonly err: string[]
}

/** The name of standard input in `files`. */
export const PIPED = '<stdin>'

/** Real files for reading, memory for writing, a fixed clock; `files` are read before the disk. */
export function memoryIo(files: Readonly<Record<string, string>> = {}): MemoryIo {
  const written = new Map<string, string>()
  const out: string[] = []
  const err: string[] = []
  const own = (path: string): string | undefined => (Object.hasOwn(files, path) ? files[path] : undefined)
  const inMemory = (path: string): boolean =>
    Object.keys(files).some((file) => path === '.' || file.startsWith(`${path}/`))
  const nodeIo = makeNodeIo()
  return {
    written,
    out,
    err,
    readText: async (path) => own(path) ?? readFile(path, 'utf8'),
    openInput: async (path = PIPED) => Readable.from([Buffer.from(own(path) ?? (await readFile(path)))]),
    openOutput: () =>
      new Writable({
        decodeStrings: false,
        write: (text, _encoding, done) => {
          out.push(String(text).replace(/\n$/, ''))
          done()
        },
      }),
    sizeOf: async (path) => own(path)?.length ?? nodeIo.sizeOf(path),
    kindOf: async (path) =>
      own(path) !== undefined ? 'file' : inMemory(path) ? 'folder' : nodeIo.kindOf(path),
    listFolder: async (path) => {
      if (!inMemory(path)) return nodeIo.listFolder(path)
      const folderEntries = Object.keys(files)
        .filter((file) => path === '.' || file.startsWith(`${path}/`))
        .map((file) => (path === '.' ? file : file.slice(path.length + 1)).split('/'))
      const kinds = new Map(
        folderEntries.map(([name = '', ...rest]) => [name, rest.length > 0 ? 'folder' : 'file']),
      )
      return [...kinds].sort().map(([name, kind]) => ({ name, kind }) as FolderEntry)
    },
    saveText: async (path, makeText) => {
      const text = await makeText(own(path) ?? written.get(path))
      if (text !== undefined) written.set(path, text)
    },
    print: (text) => void out.push(text),
    printError: (text) => void err.push(text),
    today: () => '2023-10-06',
  }
}
