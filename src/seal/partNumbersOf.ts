import type { NumberedPart } from '../spec/index.js'

/** All numbers under which a part is sold: the one to buy first, then the one of the manual, then equivalents. */
export function partNumbersOf({
  partNumber,
  supersededBy,
  equivalents = [],
}: NumberedPart): readonly string[] {
  const numbers = [supersededBy?.partNumber, partNumber, ...equivalents.map((one) => one.partNumber)]
  return numbers.filter((one) => one !== undefined)
}
