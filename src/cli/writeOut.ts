import { type CliIo, UsageError } from './cliIo.js'

/** Writes one file; a path that cannot be written is a usage error. */
export async function writeOut(path: string, text: string, io: CliIo): Promise<void> {
  try {
    await io.writeText(path, text)
  } catch (error) {
    const code: unknown = error instanceof Error && 'code' in error ? error.code : undefined
    if (typeof code !== 'string') throw error
    throw new UsageError(`${path}: cannot be written (${WORDS[code] ?? code})`)
  }
}

const WORDS: Readonly<Record<string, string>> = {
  EACCES: 'no permission',
  EPERM: 'no permission',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EISDIR: 'it is a folder',
  ENOTDIR: 'expected a folder, found a file',
  EEXIST: 'expected a folder, found a file',
  ENAMETOOLONG: 'the name is too long',
}
