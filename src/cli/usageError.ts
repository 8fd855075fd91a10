/** Something the caller must change in the command line or its files; exit code 2. */
export class UsageError extends Error {
  override readonly name = 'UsageError'
}
