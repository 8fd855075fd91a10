import { type CliIo, UsageError } from './cliIo.js'
import { requireSameDocument } from './requireSameDocument.js'

/** How `--out` treats a file that is there. */
interface WriteOptions {
  /** It is an error. */
  readonly mustBeNew?: boolean
}

/**
 * Writes one file; a path that cannot be written is a usage error. A document is replaced only by the same document (kind and
 * id), and a document replaces no other file.
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
  EDQUOT: 'your share of the disk is full',
  EFBIG: 'the file would be too large',
  EIO: 'the disk has an error',
  EISDIR: 'it is a folder',
  ENOTDIR: 'expected a folder, found a file',
  EEXIST: 'expected a folder, found a file',
  ELOOP: 'its links form a circle',
  ENAMETOOLONG: 'the name is too long',
}
