import { listSealTasks } from '../../seal/index.js'
import { resolveLeaf, type Seal } from '../../spec/index.js'
import { entryRule } from '../ruleMakers.js'

/**
 * A seal that must be new or newly applied at every opening, but is not recorded, or is recorded as used
 * again. The new washer was not recorded, or not fitted. A loosened plug counts as opened.
 * Judges: Every judged entry: each seal of its opened openings and covers, and of its filters, that is stated
 * for this machine and is replaced at every opening or applied (sealant, liquid gasket). Finds a seal that no
 * entry for the same gearcase and instance records as `new`.
 * Place: the seal in this entry, `/entries/<place>/seals/<place>/done`; else `/entries/<place>/seals`
 * Params: part: the name of the part (see terms); seal: the kind of seal; usedAgain: whether it is recorded
 * as other than `new`
 * Harm: machine
 * Source: the judgement of `listSealTasks`, common practice, no source.
 */
export const rule = entryRule(
  'record/seal-not-new',
  'error',
  ({ path, entry, sheet, identity }, { document }) => {
    const recordedParts = [...entry.opened, ...(entry.filters ?? []).map(({ on }) => on)]
    const parts = sheet.parts.filter((part) => recordedParts.includes(part.path))
    const openedParts = parts.flatMap((part) => {
      if (part.kind === 'shield') return []
      const places =
        part.kind === 'cover' ? ['/seal'] : part.part.seals.map((_seal, place) => `/seals/${place}`)
      const seals = places.map((place): Seal => {
        const resolved = resolveLeaf(sheet.document, identity, 'seal', `${part.path}${place}`)
        return resolved.kind === 'stated' ? resolved.value : { kind: 'not stated' }
      })
      return [
        { path: part.path, seals, part: part.kind === 'cover' ? ('cover' as const) : ('opening' as const) },
      ]
    })
    return listSealTasks(openedParts)
      .filter(({ action }) => action === 'new' || action === 'apply')
      .flatMap((task) => {
        const sealNotes = document.entries
          .filter(({ gearcase, instance }) => gearcase === entry.gearcase && instance === entry.instance)
          .flatMap((sameCaseEntry) =>
            sameCaseEntry.seals.filter(({ on }) => on === task.path).map(({ done }) => done),
          )
        if (sealNotes.includes('new')) return []
        const noteIndex = entry.seals.findIndex(({ on }) => on === task.path)
        const part =
          parts.find((openedPart) => task.path.startsWith(`${openedPart.path}/`))?.name ?? task.path
        const params = { part, seal: task.seal.kind, usedAgain: sealNotes.length > 0 }
        return [{ path: noteIndex === -1 ? `${path}/seals` : `${path}/seals/${noteIndex}/done`, params }]
      })
  },
)
