import type { JsonPointer } from '../base/index.js'
import type { Id, ProcedureDocument } from '../spec/index.js'
import type { CollectedFigures } from './collectFigures.js'
import type { VisitFacts } from './requireVisit.js'

/** What every part of a visit is planned from. */
export interface VisitContext extends VisitFacts {
  readonly procedure: Pick<ProcedureDocument, 'steps'>
  /** Parts of gearcases that the visit is about and that no step is about. */
  readonly withoutSteps: readonly JsonPointer[]
  readonly figures: CollectedFigures
}

/** A gearcase that is worked on at a visit, and which of its instances; `[undefined]` where it is there once. */
export interface GearcaseInVisit {
  readonly gearcase: Id
  readonly task: 'check' | 'change'
  readonly instances: readonly (Id | undefined)[]
}
