import type { DateText } from '../calendar/index.js'

/** All that a command may touch outside itself; tests hand in their own. */
export interface World {
  readonly readText: (path: string) => Promise<string>
  readonly isFolder: (path: string) => Promise<boolean>
  /** Names in a folder, sorted. */
  readonly listFolder: (path: string) => Promise<readonly string[]>
  /** Writes the whole text or nothing; makes the folder first. */
  readonly writeText: (path: string, text: string) => Promise<void>
  readonly exists: (path: string) => Promise<boolean>
  readonly print: (text: string) => void
  readonly complain: (text: string) => void
  /** The clock, read only where `--today` is absent. */
  readonly today: () => DateText
}
