import type { Cure, JsonPointer } from '../../base/index.js'

/** Cures that exchange two values of one object. */
export const exchange = (at: JsonPointer, [one, its]: Named, [other, their]: Named): readonly Cure[] => [
  { op: 'replace', path: `${at}/${one}`, value: their },
  { op: 'replace', path: `${at}/${other}`, value: its },
]
type Named = readonly [key: string, value: unknown]
