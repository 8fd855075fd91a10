import { writeHistory } from '../schema/index.js'
import type { MachineLog } from '../spec/index.js'

/** Adds the new entries of a log to its history, one line each, and deletes an incomplete last line. */
export function addToHistory(text: string, before: MachineLog, after: MachineLog): string {
  const lines = text.split('\n').filter((line) => line.trim() !== '')
  if (!isCompleteLine(lines.at(-1))) lines.pop()
  const knownLines = new Set(writeHistory(before))
  // The first line has an empty list for each list of the log; the file keeps its own first line.
  const [, ...additions] = writeHistory(after)
  return [...lines, ...additions.filter((line) => !knownLines.has(line)), ''].join('\n')
}

function isCompleteLine(line = '{}'): boolean {
  try {
    JSON.parse(line)
    return true
  } catch {
    return false
  }
}
