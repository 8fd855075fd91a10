import type { Cure, JsonPointer } from '../../base/index.js'

type KeyValue = readonly [key: string, value: unknown]

/** Cures that swap two values of one object. */
export const swapCures = (at: JsonPointer, [one, its]: KeyValue, [other, their]: KeyValue): Cure[] => [
  { op: 'replace', path: `${at}/${one}`, value: their },
  { op: 'replace', path: `${at}/${other}`, value: its },
]
