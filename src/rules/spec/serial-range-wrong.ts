import { serialMistake } from '../lookup/serialMistake.js'
import { defineRule } from '../rule.js'

/**
 * A range of serial numbers that no serial can lie in: it ends before it starts, its ends have different
 * widths, or an end repeats the prefix or holds letters. Every machine would fall out of it, or be `cannot
 * tell`, without a word. House rule: a serial is a prefix and a number of fixed width, since `9` comes after
 * `10` as text.
 */
export const serialRangeWrong = defineRule({
  code: 'spec/serial-range-wrong',
  severity: 'error',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.conditions.flatMap(({ path, condition }) => {
      const { serials } = condition
      const what = serialMistake(serials)
      if (serials === undefined || what === undefined) return []
      return [{ path: `${path}/serials`, params: { what, ...serials } }]
    }),
})
