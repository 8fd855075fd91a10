import { UsageError } from './cliIo.js'

/** The error for a file that cannot be read. */
export function makeReadError(path: string, error: unknown): UsageError {
  const code = (error as { code?: unknown }).code
  if (code === 'ENOENT') return new UsageError(`${path}: no such file or folder`)
  if (code === 'EISDIR') return new UsageError(`${path}: expected a file, found a folder`)
  if (code === 'EACCES') return new UsageError(`${path}: no permission to read`)
  return new UsageError(`${path}: cannot be read (${error instanceof Error ? error.message : String(error)})`)
}

/** Waits for a read; throws a usage error if it fails. */
export async function requireReadable<T>(path: string, readPromise: Promise<T>): Promise<T> {
  try {
    return await readPromise
  } catch (error) {
    throw makeReadError(path, error)
  }
}
