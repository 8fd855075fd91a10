import type { Id, ProcedureDocument } from '../spec/index.js'
import type { CollectedFigures } from './collectFigures.js'
import type { VisitFacts } from './requireVisit.js'

/** What every part of a visit is planned from. */
export interface VisitContext extends VisitFacts {
  readonly procedure: Pick<ProcedureDocument, 'steps'>
  readonly figures: CollectedFigures
}

/** A gearcase that is worked on at a visit, and which of its instances; `[undefined]` where it is there once. */
export interface GearcaseInVisit {
  readonly gearcase: Id
  readonly task: 'check' | 'change'
  readonly instances: readonly (Id | undefined)[]
}
