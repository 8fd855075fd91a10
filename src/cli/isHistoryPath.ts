/** Whether a file holds the history of one machine: a log as lines. Other JSON Lines are a fleet, one log on each line. */
export function isHistoryPath(path: string): boolean {
  return /\.history\.jsonl$/i.test(path)
}
