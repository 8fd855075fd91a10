import { findSerialMistake } from '../lookup/findSerialMistake.js'
import { conditionRule } from '../ruleMakers.js'

/**
 * A range of serial numbers that no serial can fall in. No machine would meet it, or the answer would be
 * `cannot tell`.
 * Judges: Every condition with `serials`. Finds, in this order: an end that starts with the prefix (`prefix
 * repeated`), an end with other characters than digits (`not a number`), two ends of different widths
 * (`different widths`), `from` above `to` as text (`ends before it starts`).
 * Place: `<condition>/serials`
 * Params: what: the mistake, as quoted above; prefix: as written; from: as written; to: as written
 * Harm: job
 * House rule: a serial is a prefix and a number of fixed width, because as text `9` comes after `10`.
 */
export const rule = conditionRule('spec/serial-range-wrong', 'error', ({ path, condition }) => {
  const { serials } = condition
  const what = findSerialMistake(serials)
  if (serials === undefined || what === undefined) return []
  return [{ path: `${path}/serials`, params: { what, ...serials } }]
})
