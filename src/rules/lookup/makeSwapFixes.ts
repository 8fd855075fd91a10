import type { Fix, JsonPointer } from '../../base/index.js'

type KeyValue = readonly [key: string, value: unknown]

/** Fixes that swap two values of one object. */
export const makeSwapFixes = (
  at: JsonPointer,
  [key, value]: KeyValue,
  [otherKey, otherValue]: KeyValue,
): Fix[] => [
  { op: 'replace', path: `${at}/${key}`, value: otherValue },
  { op: 'replace', path: `${at}/${otherKey}`, value },
]
