import { type CliIo, UsageError } from './cliIo.js'
import { requireSameDocument } from './requireSameDocument.js'

/** How to treat an existing file. */
interface WriteOptions {
  /** An existing file is an error. */
  readonly mustBeNew?: boolean
}

/**
 * Writes one file; a path that cannot be written is a usage error. A document replaces only the same document
 * (kind and id), no other file.
 */
export async function writeOut(
  path: string,
  makeText: string | ((old: string | undefined) => Promise<string | undefined>),
  io: CliIo,
  { mustBeNew: isNew = false }: WriteOptions = {},
): Promise<void> {
  try {
    await io.saveText(path, async (old) => {
      if (isNew && old !== undefined)
        throw new UsageError(`${path} exists; choose another name, or delete it first`)
      const text = typeof makeText === 'string' ? makeText : await makeText(old)
      if (old !== undefined && text !== undefined) requireSameDocument(path, old, text)
      return text
    })
  } catch (error) {
    const code: unknown = error instanceof Error && 'code' in error ? error.code : undefined
    if (typeof code !== 'string') throw error
    throw new UsageError(`${path}: cannot be written (${ERROR_TEXTS[code] ?? code})`)
  }
}

const ERROR_TEXTS: Readonly<Record<string, string>> = {
  EACCES: 'no permission',
  EPERM: 'no permission',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'your disk quota is used up',
  EFBIG: 'the file would be too large',
  EIO: 'disk error',
  EISDIR: 'it is a folder',
  ENOTDIR: 'expected a folder, found a file',
  EEXIST: 'expected a folder, found a file',
  ELOOP: 'its links form a cycle',
  ENAMETOOLONG: 'the name is too long',
}
