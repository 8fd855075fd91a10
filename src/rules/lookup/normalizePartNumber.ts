/** A part number as it is compared: spaces, hyphens, dots and capitals make no difference. */
export function normalizePartNumber(partNumber: string): string {
  return partNumber.replaceAll(/[ .-]/g, '').toUpperCase()
}
