import type { Readable, Writable } from 'node:stream'
import type { DateText } from '../calendar/index.js'

/**
 * `other`: a pipe, a socket or a device. A link has the kind of its target, except a link to a folder inside a folder,
 * since such links may form a circle.
 */
export type PathKind = 'file' | 'folder' | 'folder link' | 'other'

export interface FolderEntry {
  readonly name: string
  readonly kind: PathKind
}

export type MakeText = (oldText: string | undefined) => string | undefined | Promise<string | undefined>

/** All files, streams and the clock that a command may use; tests pass their own. */
export interface CliIo {
  readonly readText: (path: string) => Promise<string>
  /** A file as a stream; without a path: standard input. */
  readonly openInput: (path?: string) => Promise<Readable>
  /** The stream for answers. */
  readonly openOutput: () => Writable
  /** The kind of a path; links are followed. */
  readonly kindOf: (path: string) => Promise<PathKind>
  /** The entries of a folder, sorted by name. */
  readonly listFolder: (path: string) => Promise<readonly FolderEntry[]>
  /**
   * Replaces a file by a text made from the one that is there (undefined: there is none), wholly or not at all; creates the
   * folder if needed. The text is made again if another program wrote the file meanwhile; undefined leaves the file.
   */
  readonly saveText: (path: string, makeText: MakeText) => Promise<void>
  readonly print: (text: string) => void
  /** Prints on standard error. */
  readonly printError: (text: string) => void
  /** Today's date, read only without `--today`. */
  readonly today: () => DateText
}

/**
 * 0: no finding at or above `--level`; 1: findings; 2: usage error, or a file that cannot be read. With `--exit-code` of
 * `due` also 3: a service is due; 4: no service is known to be due, but not all could be judged.
 */
export type ExitCode = 0 | 1 | 2 | 3 | 4

/** An error in the command line or a file; exit code 2. */
export class UsageError extends Error {
  override readonly name = 'UsageError'
}
