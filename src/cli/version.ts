/** The version in package.json, as a test compares; reading the file would cost every start. */
export const VERSION = '0.1.0'
