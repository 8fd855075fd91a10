/**
 * Whether a file is the history of one machine: a log as lines. Other JSON Lines files are fleets with one
 * log on each line.
 */
export function isHistoryPath(path: string): boolean {
  return /\.history\.jsonl$/i.test(path)
}
