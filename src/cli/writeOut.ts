import { type CliIo, UsageError } from './cliIo.js'

/** Writes one file that the caller named; a place that takes no file is the caller's to change, not a fault of ours. */
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
  ENOTDIR: 'a file stands where a folder is wanted',
  EEXIST: 'a file stands where a folder is wanted',
  ENAMETOOLONG: 'the name is too long',
}
