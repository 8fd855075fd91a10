import type { NumberedPart } from '../spec/index.js'

/** All numbers of a part: first the one to buy, then the manual's, then equivalents. */
export function partNumbersOf({
  partNumber,
  supersededBy,
  equivalents = [],
}: NumberedPart): readonly string[] {
  const numbers = [supersededBy?.partNumber, partNumber, ...equivalents.map((one) => one.partNumber)]
  return numbers.filter((one) => one !== undefined)
}
