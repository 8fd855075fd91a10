import type { Readable, Writable } from 'node:stream'
import type { DateText } from '../calendar/index.js'

/** `other`: a pipe, a socket or a device. A link is what it leads to, but one in a folder to a folder, which may lead round. */
export type PathKind = 'file' | 'folder' | 'folder link' | 'other'

export interface FolderEntry {
  readonly name: string
  readonly kind: PathKind
}

/** Every file, stream and clock that a command may use; tests hand in their own. */
export interface CliIo {
  readonly readText: (path: string) => Promise<string>
  /** A file as a stream; without a path: standard input. */
  readonly openInput: (path?: string) => Promise<Readable>
  /** Where a stream of answers goes. */
  readonly openOutput: () => Writable
  /** What is at a path, through links. */
  readonly kindOf: (path: string) => Promise<PathKind>
  /** What is in a folder, sorted by name. */
  readonly listFolder: (path: string) => Promise<readonly FolderEntry[]>
  /** Writes the whole text or nothing; makes the folder first. */
  readonly writeText: (path: string, text: string) => Promise<void>
  readonly print: (text: string) => void
  /** Prints on the stream of errors. */
  readonly printError: (text: string) => void
  /** The clock, read only where `--today` is absent. */
  readonly today: () => DateText
}

/**
 * 0: nothing at or above `--level`; 1: findings; 2: usage, or a file that cannot be read. By `--exit-code` of `due` also 3:
 * something is due; 4: nothing is, as far as is known.
 */
export type ExitCode = 0 | 1 | 2 | 3 | 4

/** The caller must change the command line or a file; exit code 2. */
export class UsageError extends Error {
  override readonly name = 'UsageError'
}
