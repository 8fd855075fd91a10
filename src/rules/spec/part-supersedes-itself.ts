import type { NumberedPart } from '../../spec/index.js'
import { normalizePartNumber } from '../lookup/normalizePartNumber.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A part number superseded by itself, directly or through other parts of the sheet. There is no number to
 * buy.
 * Judges: Every seal and filter with a `partNumber` and `supersededBy`, including overrides. Finds each part
 * whose superseding numbers lead back to its own. Spaces, hyphens, dots and upper case are ignored.
 * Place: `<part>/supersededBy/partNumber`
 * Params: partNumber: as written; numbers: the circle of numbers
 * Harm: job
 * House rule.
 */
export const rule = sheetRule('spec/part-supersedes-itself', 'error', ({ sheet }) => {
  const parts: readonly { readonly path: string; readonly part: NumberedPart }[] = [
    ...sheet.seals.flatMap(({ path, seal }) => ('replace' in seal ? [{ path, part: seal }] : [])),
    ...sheet.parts.flatMap((sheetPart) =>
      sheetPart.kind === 'filter' ? [{ path: sheetPart.path, part: sheetPart.part }] : [],
    ),
  ]
  const supersedingNumbers = new Map<string, string>()
  for (const { part } of parts)
    if (part.partNumber !== undefined && part.supersededBy !== undefined)
      supersedingNumbers.set(normalizePartNumber(part.partNumber), part.supersededBy.partNumber)
  return parts.flatMap(({ path, part: { partNumber, supersededBy } }) => {
    if (partNumber === undefined || supersededBy === undefined) return []
    const numbers = [partNumber]
    const seenNumbers = new Set<string>()
    for (let at: string | undefined = supersededBy.partNumber; at !== undefined; ) {
      const normalNumber = normalizePartNumber(at)
      numbers.push(at)
      if (normalNumber === normalizePartNumber(partNumber))
        return [{ path: `${path}/supersededBy/partNumber`, params: { partNumber, numbers } }]
      if (seenNumbers.has(normalNumber)) return []
      seenNumbers.add(normalNumber)
      at = supersedingNumbers.get(normalNumber)
    }
    return []
  })
})
