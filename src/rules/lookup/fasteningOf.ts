import type { JsonPointer } from '../../base/index.js'
import type { FastenerSet, Opening } from '../../spec/index.js'
import type { PartAt } from './sheetParts.js'

/** What is tightened at a part, with its place: an opening itself, the bolts of a cover, the fasteners of a shield. */
export function fasteningOf(on: PartAt): {
  readonly path: JsonPointer
  readonly fastening: Opening | FastenerSet
} {
  if (on.kind === 'opening') return { path: on.path, fastening: on.part }
  if (on.kind === 'cover') return { path: `${on.path}/bolts`, fastening: on.part.bolts }
  return { path: `${on.path}/fasteners`, fastening: on.part.fasteners }
}
