/** A part number for comparison: spaces, hyphens, dots and upper case are ignored. */
export function normalizePartNumber(partNumber: string): string {
  return partNumber.replaceAll(/[ .-]/g, '').toUpperCase()
}
