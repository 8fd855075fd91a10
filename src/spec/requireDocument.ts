import { requireShape, type Shape } from '../base/index.js'
import type { DocumentName } from './documents.js'

const REFERENCE: Shape = { id: 'string', revision: 'string' }

/** The maps and lists that every room walks into without looking, and the names that it quotes. */
const SHAPES: Readonly<Record<DocumentName, Shape>> = {
  'spec-sheet': {
    id: 'string',
    revision: 'string',
    machine: { variants: { '*': {} }, axles: {}, supports: { '*': {} } },
    sources: {},
    gearcases: { '*': { access: {}, oilSpace: {}, openings: {}, emptying: [] } },
    'shields?': { '*': {} },
    services: { '*': { gearcases: [], intervals: {} } },
  },
  'machine-log': { id: 'string', sheet: REFERENCE, identity: {}, meters: {}, records: [] },
  toolbox: { wrenches: {}, sockets: {}, vessels: {}, pans: {}, fillers: {}, stands: {} },
  stock: { containers: { '*': {} }, seals: { '*': {} } },
  procedure: { sheet: REFERENCE, identity: {}, services: ['string'], 'only?': [{}], steps: [{}] },
  'service-record': { date: 'string', readings: {}, entries: [{}] },
}

/**
 * Throws TypeError, naming the place, for anything that is not a document of a kind: a programmer's slip, since documents are parsed
 * before they come here.
 */
export function requireDocument(place: string, document: unknown, kind: DocumentName): void {
  const isKind =
    typeof document === 'object' && document !== null && 'kind' in document && document.kind === kind
  if (!isKind) throw new TypeError(`${place} must be a ${kind.replace('-', ' ')}; parse the document first`)
  requireShape(place, document, SHAPES[kind])
}
