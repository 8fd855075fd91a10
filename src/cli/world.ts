import type { Readable, Writable } from 'node:stream'
import type { DateText } from '../calendar/index.js'

/** All that a command may touch outside itself; tests hand in their own. */
export interface World {
  readonly readText: (path: string) => Promise<string>
  /** A file as a stream; without a path: what is piped in. */
  readonly openInput: (path?: string) => Promise<Readable>
  /** Where a stream of answers goes. */
  readonly openOutput: () => Writable
  readonly isFolder: (path: string) => Promise<boolean>
  /** Names in a folder, sorted. */
  readonly listFolder: (path: string) => Promise<readonly string[]>
  /** Writes the whole text or nothing; makes the folder first. */
  readonly writeText: (path: string, text: string) => Promise<void>
  readonly print: (text: string) => void
  readonly complain: (text: string) => void
  /** The clock, read only where `--today` is absent. */
  readonly today: () => DateText
}
