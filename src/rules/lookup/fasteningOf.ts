import type { JsonPointer } from '../../base/index.js'
import type { DriveOnPart, Opening } from '../../spec/index.js'
import type { PartAt } from './sheetParts.js'

interface Fastening {
  readonly thread?: string
  readonly propertyClass?: string
  readonly drive?: DriveOnPart
  /** Of an opening alone. */
  readonly uses?: Opening['uses']
}

/**
 * What is tightened at a part, with its place: an opening itself, the bolts of a cover, the fasteners of a shield, the
 * thread of a filter. A filter behind a plug or cover has nothing of its own.
 */
export function fasteningOf(on: PartAt): {
  readonly path: JsonPointer
  readonly fastening: Fastening
} {
  if (on.kind === 'opening') return { path: on.path, fastening: on.part }
  if (on.kind === 'cover') return { path: `${on.path}/bolts`, fastening: on.part.bolts }
  if (on.kind === 'filter')
    return { path: `${on.path}/held`, fastening: on.part.held.kind === 'screwed' ? on.part.held : {} }
  return { path: `${on.path}/fasteners`, fastening: on.part.fasteners }
}
