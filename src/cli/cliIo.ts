import type { Readable, Writable } from 'node:stream'
import type { DateText } from '../calendar/index.js'
import type { Catalogue } from '../message/index.js'

/**
 * `other`: a pipe, a socket or a device. A link has the kind of its target. The exception is a link inside a
 * folder to another folder, because such links may form a cycle.
 */
export type PathKind = 'file' | 'folder' | 'folder link' | 'other'

export interface FolderEntry {
  readonly name: string
  readonly kind: PathKind
}

export type MakeText = (oldText: string | undefined) => string | undefined | Promise<string | undefined>

/** The files, streams and clock that a command uses; tests pass their own. */
export interface CliIo {
  readonly readText: (path: string) => Promise<string>
  /** A file as a stream; without a path, standard input. */
  readonly openInput: (path?: string) => Promise<Readable>
  /** The stream for answers. */
  readonly openOutput: () => Writable
  /** The kind of a path; links are followed. */
  readonly kindOf: (path: string) => Promise<PathKind>
  /** The size of a file in bytes. */
  readonly sizeOf: (path: string) => Promise<number>
  /** The entries of a folder, sorted by name. */
  readonly listFolder: (path: string) => Promise<readonly FolderEntry[]>
  /**
   * Replaces a file completely or not at all. `makeText` gets the old text (undefined if there is no file)
   * and is called again if another program has changed the file meanwhile; if it returns undefined, the file
   * is not changed. Creates the folder if needed.
   */
  readonly saveText: (path: string, makeText: MakeText) => Promise<void>
  readonly print: (text: string) => void
  /** Prints to standard error. */
  readonly printError: (text: string) => void
  /** The width of the terminal in characters; absent: not a terminal. */
  readonly columns?: number
  /** Today's date, read only without `--today`. */
  readonly today: () => DateText
}

/** What a command on documents uses: also the language of its answers. */
export interface CommandIo extends CliIo {
  readonly catalogue: Catalogue
}

/**
 * 0: no finding at or above `--level`; 1: findings; 2: usage error, or a file that cannot be read. For `due
 * --exit-code` also 3: a service is due; 4: no service is known to be due, but not all could be judged.
 */
export type ExitCode = 0 | 1 | 2 | 3 | 4

/** An error in the command line or a file; exit code 2. */
export class UsageError extends Error {
  override readonly name = 'UsageError'
}

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
