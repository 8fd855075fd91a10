import type { Finding } from '../../src/base/index.js'
import type { CardModel } from '../../src/card/index.js'
import type { LineAnswer } from '../../src/cli/judgeLogLines.js'
import type { LocatedFinding } from '../../src/cli/makeLocator.js'
import type { VisitPlan } from '../../src/service/index.js'

/** What the library and the command line give, by the name of its JSON Schema. */
export interface ResultTypes {
  readonly 'visit-plan': VisitPlan
  readonly 'due-line': LineAnswer
  readonly 'service-card': CardModel
  /** From the command line with message and position. */
  readonly finding: Finding & Partial<Omit<LocatedFinding, keyof Finding>>
}

export type ResultName = keyof ResultTypes

export const RESULT_TITLES: { readonly [Name in ResultName]: string } = {
  'visit-plan': 'The plan of one visit, from planVisit and plan --format json',
  'due-line': 'The services of one machine, one line of due over logs as JSON Lines',
  'service-card': 'A card, from cardModel: lines of text with pointers into the plan',
  finding: 'A finding, from check --format json and every function that reads documents',
}
