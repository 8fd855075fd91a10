import { sealsToReplace } from '../../seal/index.js'
import { resolveLeaf, type Seal } from '../../spec/index.js'
import { defineRule } from '../rule.js'

/**
 * A seal that must be new or applied afresh at every opening, and of which the record says nothing, or that
 * it was used again: the washer was forgotten, on paper or on the plug. Cracking a plug loose counts as
 * opening it. Source: the judgement of `sealsToReplace`, common practice, no source.
 */
export const sealNotNew = defineRule({
  code: 'record/seal-not-new',
  severity: 'error',
  about: 'service-record',
  check: ({ document, record }) =>
    record.entries.flatMap(({ path, entry, sheet, identity }) => {
      const parts = sheet.parts.filter((part) => entry.opened.includes(part.path))
      const opened = parts.flatMap((part) => {
        if (part.kind === 'shield') return []
        const places =
          part.kind === 'cover' ? ['/seal'] : part.part.seals.map((_seal, place) => `/seals/${place}`)
        const seals = places.map((place): Seal => {
          const resolved = resolveLeaf(sheet.document, identity, 'seal', `${part.path}${place}`)
          return resolved.kind === 'stated' ? resolved.value : { kind: 'not stated' }
        })
        return [{ path: part.path, seals, part: part.kind }]
      })
      return sealsToReplace(opened)
        .filter(({ action }) => action === 'new' || action === 'apply')
        .flatMap((task) => {
          const noted = document.entries
            .filter(({ gearcase, instance }) => gearcase === entry.gearcase && instance === entry.instance)
            .flatMap((one) => one.seals.filter(({ on }) => on === task.path).map(({ done }) => done))
          if (noted.includes('new')) return []
          const own = entry.seals.findIndex(({ on }) => on === task.path)
          const part = parts.find((one) => task.path.startsWith(`${one.path}/`))?.name ?? task.path
          const params = { part, seal: task.seal.kind, usedAgain: noted.length > 0 }
          return [{ path: own === -1 ? `${path}/seals` : `${path}/seals/${own}/done`, params }]
        })
    }),
})
