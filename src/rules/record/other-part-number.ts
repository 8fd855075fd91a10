import { resolveLeaf } from '../../spec/index.js'
import { entryRule } from '../ruleMakers.js'

/**
 * A new seal whose part number differs from that on the sheet for this machine: the washer of another plug was
 * fitted, or the maker has changed the number.
 * Judges: Every judged entry: each note of `new` with a `partNumber`, on a seal of its own gearcase that states one
 * for this machine. Finds where the two differ, but for spaces, hyphens, dots, and capitals.
 * Place: `/entries/<place>/seals/<place>/partNumber`
 * Params: part: the name of the part (see terms); fitted: as recorded; stated: as the sheet has it
 * Harm: job
 * House rule.
 */
export const rule = entryRule('record/other-part-number', 'warning', ({ path, entry, sheet, identity }) =>
  entry.seals.flatMap(({ on, done, partNumber }, place) => {
    const own = sheet.seals.find((one) => one.path === on && on.startsWith(`/gearcases/${entry.gearcase}/`))
    if (own === undefined || done !== 'new' || partNumber === undefined) return []
    const seal = resolveLeaf(sheet.document, identity, 'seal', on)
    const stated = seal.kind === 'stated' && 'partNumber' in seal.value ? seal.value.partNumber : undefined
    if (stated === undefined || plain(stated) === plain(partNumber)) return []
    return [
      {
        path: `${path}/seals/${place}/partNumber`,
        params: { part: own.on.name, fitted: partNumber, stated },
      },
    ]
  }),
)

const plain = (partNumber: string) => partNumber.replaceAll(/[ .-]/g, '').toUpperCase()
