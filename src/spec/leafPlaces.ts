import type { LeafKind } from './leaf.js'

/**
 * Where leaves stand in a sheet; `*` is any key or list place. What sits inside a leaf, such as the torque of a
 * tightening, is replaced with its leaf and is no leaf of its own.
 */
export const LEAF_PLACES: readonly { readonly kind: LeafKind; readonly place: readonly string[] }[] = [
  { kind: 'value', place: ['machine', 'mass'] },
  { kind: 'value', place: ['gearcases', '*', 'drainTemperature'] },
  { kind: 'value', place: ['gearcases', '*', 'oilSpace', 'portion'] },
  { kind: 'value', place: ['gearcases', '*', 'oilSpace', 'fill', 'drainAndRefill'] },
  { kind: 'value', place: ['gearcases', '*', 'oilSpace', 'fill', 'dryFill'] },
  { kind: 'value', place: ['gearcases', '*', 'oilSpace', 'fill', 'method', 'below'] },
  { kind: 'value', place: ['gearcases', '*', 'oilSpace', 'fill', 'level', 'temperature'] },
  { kind: 'value', place: ['gearcases', '*', 'oilSpace', 'fill', 'level', 'minutesAfterStop'] },
  { kind: 'oils', place: ['gearcases', '*', 'oilSpace', 'oils'] },
  { kind: 'tightening', place: ['gearcases', '*', 'openings', '*', 'tightening'] },
  { kind: 'tightening', place: ['gearcases', '*', 'covers', '*', 'bolts', 'tightening'] },
  { kind: 'tightening', place: ['shields', '*', 'fasteners', 'tightening'] },
  { kind: 'seal', place: ['gearcases', '*', 'openings', '*', 'seals', '*'] },
  { kind: 'seal', place: ['gearcases', '*', 'covers', '*', 'seal'] },
  { kind: 'place', place: ['gearcases', '*', 'openings', '*', 'place'] },
  { kind: 'place', place: ['gearcases', '*', 'covers', '*', 'place'] },
  { kind: 'place', place: ['gearcases', '*', 'breather', 'place'] },
  { kind: 'place', place: ['shields', '*', 'place'] },
  { kind: 'interval', place: ['services', '*', 'intervals', 'first'] },
  { kind: 'interval', place: ['services', '*', 'intervals', 'repeat'] },
  { kind: 'interval', place: ['services', '*', 'intervals', 'window'] },
  { kind: 'interval', place: ['services', '*', 'intervals', 'severe', 'interval'] },
]

/** The kind of leaf that a sheet has at a place; undefined where it has none. */
export function nameLeafKind(tokens: readonly string[]): LeafKind | undefined {
  return LEAF_PLACES.find(
    ({ place }) =>
      place.length === tokens.length && place.every((part, at) => part === '*' || part === tokens[at]),
  )?.kind
}
