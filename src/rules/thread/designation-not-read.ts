import type { JsonPointer } from '../../base/index.js'
import type { SpecSheet } from '../../spec/index.js'
import { parseThread } from '../../thread/index.js'
import { sheetParts } from '../lookup/sheetParts.js'
import { defineRule } from '../rule.js'

/**
 * A thread designation that cannot be read, such as a decimal comma or a size that does not exist: neither
 * the washer nor the torque can be judged against it. House rule; write it as the thread standards do.
 */
export const designationNotRead = defineRule({
  code: 'thread/designation-not-read',
  severity: 'warning',
  about: 'spec-sheet',
  check: (sheet) =>
    threadsOf(sheet).flatMap(({ path, thread, part }) => {
      const read = parseThread(thread)
      if (read.ok) return []
      const [why] = read.findings
      const because = why === undefined ? null : { code: why.code, params: why.params }
      return [{ path, params: { thread: thread.slice(0, 64), part, because } }]
    }),
})

function threadsOf(
  sheet: SpecSheet,
): readonly { readonly path: JsonPointer; readonly thread: string; readonly part: string }[] {
  return sheetParts(sheet).flatMap((at) => {
    const [thread, holder] =
      at.kind === 'opening'
        ? [at.part.thread, '']
        : at.kind === 'cover'
          ? [at.part.bolts.thread, '/bolts']
          : [at.part.fasteners.thread, '/fasteners']
    return thread === undefined ? [] : [{ path: `${at.path}${holder}/thread`, thread, part: at.name }]
  })
}
