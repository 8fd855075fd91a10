import type { Readable, Writable } from 'node:stream'
import type { DateText } from '../calendar/index.js'
import type { Catalogue, Messages } from '../message/index.js'
import type { CliWords, TranslatedWords } from './message/cliWords.js'
import type { ErrorTexts } from './message/errorTexts.js'

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

/** What every command uses: also the words of the command line in one language. */
export interface WordIo extends CliIo {
  readonly words: CliWords | TranslatedWords
}

/** What a question uses: also the texts of reasons. */
export interface QuestionIo extends WordIo {
  readonly catalogue: Messages
}

/** What a command on documents uses: also the texts of findings and cards. */
export interface CommandIo extends WordIo {
  readonly catalogue: Catalogue
}

/**
 * 0: no finding at or above `--level`; 1: findings; 2: usage error, or a file that cannot be read. For `due
 * --exit-code` also 3: a service is due; 4: no service is known to be due, but not all could be judged.
 */
export type ExitCode = 0 | 1 | 2 | 3 | 4

/** The name of standard input in findings; its words are in the language. */
export const INPUT_NAME = 'standard input'

/** An error in the command line or a file; exit code 2. Its text is written last, in the language of the user. */
export class UsageError<Key extends keyof ErrorTexts = keyof ErrorTexts> extends Error {
  override readonly name = 'UsageError'
  readonly key: Key
  readonly values: Parameters<ErrorTexts[Key]>[0] | undefined
  constructor(key: Key, ...[values]: Parameters<ErrorTexts[Key]>) {
    super(`${key} ${JSON.stringify(values ?? {})}`)
    this.key = key
    this.values = values
  }
}

/** The error for a file that cannot be read. */
export function makeReadError(path: string, error: unknown): UsageError {
  const code = (error as { code?: unknown }).code
  if (code === 'ENOENT') return new UsageError('noSuchFile', { path })
  if (code === 'EISDIR') return new UsageError('folderNotFile', { path })
  if (code === 'EACCES') return new UsageError('mayNotRead', { path })
  return new UsageError('cannotRead', {
    path,
    problem: error instanceof Error ? error.message : String(error),
  })
}

/** Waits for a read; throws a usage error if it fails. */
export async function requireReadable<T>(path: string, readPromise: Promise<T>): Promise<T> {
  try {
    return await readPromise
  } catch (error) {
    throw makeReadError(path, error)
  }
}
