import { parseThread } from '../../thread/index.js'
import { defineRule } from '../rule.js'

/**
 * A thread designation that cannot be read, such as a decimal comma or a size that does not exist: neither
 * the washer nor the torque can be judged against it. House rule; write it as the thread standards do.
 */
export const designationNotRead = defineRule({
  code: 'thread/designation-not-read',
  severity: 'warning',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.parts.flatMap((at) => {
      const [holder, { thread }] =
        at.kind === 'opening'
          ? ['', at.part]
          : at.kind === 'cover'
            ? ['/bolts', at.part.bolts]
            : ['/fasteners', at.part.fasteners]
      const read = thread === undefined ? undefined : parseThread(thread)
      if (thread === undefined || read === undefined || read.ok) return []
      const [why] = read.findings
      const because = why === undefined ? null : { code: why.code, params: why.params }
      const params = { thread: thread.slice(0, 64), part: at.name, because }
      return [{ path: `${at.path}${holder}/thread`, params }]
    }),
})
