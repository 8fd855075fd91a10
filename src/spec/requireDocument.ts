import { requireShape, type Shape } from '../base/index.js'
import type { DocumentName } from './documents.js'

const SHEET_REFERENCE: Shape = { id: 'string', revision: 'string' }

/** The maps and lists that other functions read unchecked, and the names that they quote. */
const REQUIRED_SHAPES: Readonly<Record<DocumentName, Shape>> = {
  'spec-sheet': {
    id: 'string',
    revision: 'string',
    machine: { variants: { '*': {} }, axles: {}, supports: { '*': {} } },
    sources: {},
    gearcases: { '*': { access: {}, oilSpace: {}, openings: {}, emptying: [] } },
    'shields?': { '*': {} },
    services: { '*': { gearcases: [], intervals: {} } },
  },
  'machine-log': { id: 'string', sheet: SHEET_REFERENCE, identity: {}, meters: {}, records: [] },
  toolbox: { wrenches: {}, sockets: {}, vessels: {}, pans: {}, fillers: {}, stands: {} },
  stock: { containers: { '*': {} }, seals: { '*': {} } },
  procedure: { sheet: SHEET_REFERENCE, identity: {}, services: ['string'], 'only?': [{}], steps: [{}] },
  'service-record': { date: 'string', readings: {}, entries: [{}] },
}

/**
 * Throws TypeError with the argument's name if the value is not a document of that kind: a programmer's
 * mistake, because documents are parsed first.
 */
export function requireDocument(place: string, document: unknown, kind: DocumentName): void {
  const isKind =
    typeof document === 'object' && document !== null && 'kind' in document && document.kind === kind
  if (!isKind) throw new TypeError(`${place} must be a ${kind.replace('-', ' ')}; parse the document first`)
  requireShape(place, document, REQUIRED_SHAPES[kind])
}
