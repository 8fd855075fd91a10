import { partNumbersOf } from '../../seal/index.js'
import { resolveLeaf } from '../../spec/index.js'
import { normalizePartNumber } from '../lookup/normalizePartNumber.js'
import { entryRule } from '../ruleMakers.js'

/**
 * A new seal or filter whose part number differs from the number on the sheet for this machine. The washer of
 * another plug was fitted, or the maker has changed the number.
 * Judges: Every judged entry: each seal or filter of its gearcase recorded as `new` with a `partNumber`, if
 * the sheet states a number for this machine. Finds a number other than the stated one, its successor and its
 * equivalents. Spaces, hyphens, dots and upper case are ignored.
 * Place: `/entries/<place>/seals/<place>/partNumber` or `/entries/<place>/filters/<place>/partNumber`
 * Params: part: the name of the part (see terms); fitted: as recorded; stated: the number to buy according to
 * the sheet
 * Harm: job
 * House rule.
 */
export const rule = entryRule('record/other-part-number', 'warning', ({ path, entry, sheet, identity }) => {
  const isOnGearcase = (on: string) => on.startsWith(`/gearcases/${entry.gearcase}/`)
  const seals = entry.seals.map(({ on, ...done }, place) => {
    const part = sheet.seals.find((sheetSeal) => sheetSeal.path === on && isOnGearcase(on))?.on.name
    const seal = part === undefined ? undefined : resolveLeaf(sheet.document, identity, 'seal', on)
    const numbers = seal?.kind === 'stated' && 'replace' in seal.value ? partNumbersOf(seal.value) : []
    return { ...done, part, numbers, at: `seals/${place}` }
  })
  const filters = (entry.filters ?? []).map(({ on, ...done }, place) => {
    const filter = sheet.parts.find((part) => part.path === on && isOnGearcase(on))
    const numbers = filter?.kind === 'filter' ? partNumbersOf(filter.part) : []
    return { ...done, part: filter?.name, numbers, at: `filters/${place}` }
  })
  return [...seals, ...filters].flatMap(({ part, done, partNumber, numbers, at }) => {
    if (part === undefined || done !== 'new' || partNumber === undefined) return []
    const [stated] = numbers
    if (stated === undefined || numbers.map(normalizePartNumber).includes(normalizePartNumber(partNumber)))
      return []
    return [{ path: `${path}/${at}/partNumber`, params: { part, fitted: partNumber, stated } }]
  })
})
