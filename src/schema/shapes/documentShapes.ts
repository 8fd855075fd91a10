import { refuse } from '../../base/index.js'
import type { DocumentName } from '../../spec/index.js'
import { machineLogShape } from './machineLogShape.js'
import { procedureShape } from './procedureShape.js'
import { serviceRecordShape } from './serviceRecordShape.js'
import { specSheetShape } from './specSheetShape.js'
import { stockShape } from './stockShape.js'
import { toolboxShape } from './toolboxShape.js'

/**
 * The builder of each document's shape. A parser for one kind imports only its builder, so its bundle stays
 * small.
 */
export const DOCUMENT_SHAPES = {
  'spec-sheet': specSheetShape,
  'machine-log': machineLogShape,
  toolbox: toolboxShape,
  stock: stockShape,
  procedure: procedureShape,
  'service-record': serviceRecordShape,
} as const

/** The shapes for the given `kind`. */
export function chooseShapes(kind: DocumentName | 'any'): Partial<typeof DOCUMENT_SHAPES> {
  if (kind === 'any') return DOCUMENT_SHAPES
  if (typeof kind !== 'string' || !Object.hasOwn(DOCUMENT_SHAPES, kind))
    throw refuse('kind', kind, `any or one of ${Object.keys(DOCUMENT_SHAPES).join(', ')}`, 'string')
  return { [kind]: DOCUMENT_SHAPES[kind] }
}
