import { writeHistory } from '../schema/index.js'
import type { MachineLog } from '../spec/index.js'

/** Adds what a log has more than before to the text of its history, a line for each thing; an incomplete last line goes. */
export function addToHistory(text: string, before: MachineLog, after: MachineLog): string {
  const lines = text.split('\n').filter((line) => line.trim() !== '')
  if (!isCompleteLine(lines.at(-1))) lines.pop()
  const knownLines = new Set(writeHistory(before))
  // Its first line has an empty list for each list of the log; the file keeps its own, also if a list is new.
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
