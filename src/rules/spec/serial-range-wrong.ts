import type { Condition } from '../../spec/index.js'
import { defineRule } from '../rule.js'
import { sheetConditions } from '../walk/sheetConditions.js'

/**
 * A range of serial numbers that no serial can lie in: it ends before it starts, its ends have different widths, or an
 * end repeats the prefix or holds letters. Every machine would fall out of it, or be `cannot tell`, without a word.
 * House rule: a serial is a prefix and a number of fixed width, since `9` comes after `10` as text.
 */
export const serialRangeWrong = defineRule({
  code: 'spec/serial-range-wrong',
  severity: 'error',
  about: 'spec-sheet',
  check: (sheet) =>
    sheetConditions(sheet).flatMap(({ path, condition }) => {
      const { serials } = condition
      const what = serials === undefined ? undefined : nameMistake(serials)
      if (serials === undefined || what === undefined) return []
      return [{ path: `${path}/serials`, params: { what, ...serials } }]
    }),
})

type SerialMistake = 'prefix repeated' | 'not a number' | 'different widths' | 'ends before it starts'

function nameMistake(serials: NonNullable<Condition['serials']>): SerialMistake | undefined {
  const { prefix = '', from, to } = serials
  const ends = [from, to].filter((end) => end !== undefined)
  if (prefix !== '' && ends.some((end) => end.startsWith(prefix))) return 'prefix repeated'
  if (ends.some((end) => !/^[0-9]+$/.test(end))) return 'not a number'
  if (from === undefined || to === undefined) return undefined
  if (from.length !== to.length) return 'different widths'
  return from > to ? 'ends before it starts' : undefined
}
