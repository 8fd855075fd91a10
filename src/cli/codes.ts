/** Codes that only the command line can give. */
export interface CliCodes {
  'cli/not-yaml': { problem: string }
}
