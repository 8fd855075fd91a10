/** The version in package.json, as a test checks; reading the file would slow every start. */
export const VERSION = '0.1.0'
