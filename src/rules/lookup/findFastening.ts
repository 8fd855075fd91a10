import type { JsonPointer } from '../../base/index.js'
import type { DriveOnPart, Opening } from '../../spec/index.js'
import type { SheetPart } from './listSheetParts.js'

interface Fastening {
  readonly thread?: string
  readonly propertyClass?: string
  readonly drive?: DriveOnPart
  /** Only for an opening. */
  readonly uses?: Opening['uses']
}

/**
 * The object that describes the fastening of a part, with its pointer: the opening, the bolts of a cover, the
 * fasteners of a shield, the thread of a filter. Empty for a filter behind a plug or cover.
 */
export function findFastening(on: SheetPart): {
  readonly path: JsonPointer
  readonly fastening: Fastening
} {
  if (on.kind === 'opening') return { path: on.path, fastening: on.part }
  if (on.kind === 'cover') return { path: `${on.path}/bolts`, fastening: on.part.bolts }
  if (on.kind === 'filter')
    return { path: `${on.path}/held`, fastening: on.part.held.kind === 'screwed' ? on.part.held : {} }
  return { path: `${on.path}/fasteners`, fastening: on.part.fasteners }
}
