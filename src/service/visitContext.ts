import type { JsonPointer } from '../base/index.js'
import type { Id, Identity, ProcedureDocument } from '../spec/index.js'
import type { CollectedFigures } from './collectFigures.js'
import type { VisitFacts } from './requireVisit.js'

/** The facts and figures from which all parts of a visit are planned. */
export interface VisitContext extends Pick<VisitFacts, 'sheet' | 'toolbox' | 'stock' | 'ambient'> {
  readonly identity: Identity
  readonly procedure: Pick<ProcedureDocument, 'steps'>
  /** Parts of gearcases of the visit that no step works on. */
  readonly partsWithoutSteps: readonly JsonPointer[]
  readonly figures: CollectedFigures
}

/** A gearcase of a visit, with the instances that are worked on; `[undefined]` if it has none. */
export interface GearcaseInVisit {
  readonly gearcase: Id
  readonly task: 'check' | 'change'
  readonly instances: readonly (Id | undefined)[]
}
