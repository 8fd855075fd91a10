import type { Condition } from '../../spec/index.js'

export type SerialMistake = 'prefix repeated' | 'not a number' | 'different widths' | 'ends before it starts'

/** The mistake in a serial range that no serial can fall in. */
export function findSerialMistake(serials: Condition['serials']): SerialMistake | undefined {
  const { prefix = '', from, to } = serials ?? {}
  const ends = [from, to].filter((end) => end !== undefined)
  if (prefix !== '' && ends.some((end) => end.startsWith(prefix))) return 'prefix repeated'
  if (ends.some((end) => !/^[0-9]+$/.test(end))) return 'not a number'
  if (from === undefined || to === undefined) return undefined
  if (from.length !== to.length) return 'different widths'
  return from > to ? 'ends before it starts' : undefined
}
