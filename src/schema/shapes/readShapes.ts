import * as z from 'zod/mini'
import { buildLeafShapes } from './leafShapes.js'
import { buildMachineLogShape } from './machineLogShape.js'
import { buildProcedureShape } from './procedureShape.js'
import { buildQuantityShapes } from './quantityShapes.js'
import { buildServiceRecordShape } from './serviceRecordShape.js'
import { buildSpecSheetShape } from './specSheetShape.js'
import { buildStockShape } from './stockShape.js'
import { buildTextShapes, type PartRegistry } from './textShapes.js'
import { buildToolboxShape } from './toolboxShape.js'

let built: Shapes | undefined

export type Shapes = ReturnType<typeof buildShapes>

/**
 * The shapes of the six documents, built at first use and kept. While they are built, zod's setting `jitless` is on, so
 * that it neither compiles code nor tries whether it could (pages with a strict content policy report even the try);
 * the setting is back before anyone else can run.
 */
export function readShapes(): Shapes {
  if (built !== undefined) return built
  const config = z.config()
  const before = Object.getOwnPropertyDescriptor(config, 'jitless')
  config.jitless = true
  try {
    built = buildShapes()
  } finally {
    if (before === undefined) delete config.jitless
    else Object.defineProperty(config, 'jitless', before)
  }
  return built
}

function buildShapes() {
  // A registry of our own: two copies of this library in one process never meet in it.
  const parts: PartRegistry = z.registry()
  const text = buildTextShapes(parts)
  const leaf = buildLeafShapes(text, parts)
  const quantity = buildQuantityShapes(parts)
  const record = buildServiceRecordShape(text, quantity, parts)
  return {
    parts,
    documents: {
      'spec-sheet': buildSpecSheetShape(text, leaf, parts),
      'machine-log': buildMachineLogShape(text, leaf, quantity, record),
      toolbox: buildToolboxShape(text, quantity, parts),
      stock: buildStockShape(text, leaf, quantity, parts),
      procedure: buildProcedureShape(text, leaf, record),
      'service-record': record.serviceRecord,
    },
  }
}
