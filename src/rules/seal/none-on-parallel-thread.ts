import { parseThread } from '../../thread/index.js'
import { defineRule } from '../rule.js'

/**
 * A plug with a parallel thread and, by the sheet's own word, no seal: only a taper thread seals by itself.
 * The washer was taken for part of the plug, or the thread was misread. Waive it for a plug with a metal
 * cone. Common practice, no source.
 */
export const noneOnParallelThread = defineRule({
  code: 'seal/none-on-parallel-thread',
  severity: 'warning',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.parts.flatMap(({ kind, part, path, name }) => {
      if (kind !== 'opening' || part.thread === undefined || part.seals.length === 0) return []
      const thread = parseThread(part.thread)
      if (!thread.ok || thread.value.form === 'taper' || part.seals.some((seal) => seal.kind !== 'none'))
        return []
      return [{ path: `${path}/seals`, params: { part: name, thread: thread.value.designation } }]
    }),
})
