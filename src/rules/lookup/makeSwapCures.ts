import type { Cure, JsonPointer } from '../../base/index.js'

type KeyValue = readonly [key: string, value: unknown]

/** Cures that swap two values of one object. */
export const makeSwapCures = (
  at: JsonPointer,
  [key, value]: KeyValue,
  [otherKey, otherValue]: KeyValue,
): Cure[] => [
  { op: 'replace', path: `${at}/${key}`, value: otherValue },
  { op: 'replace', path: `${at}/${otherKey}`, value },
]
