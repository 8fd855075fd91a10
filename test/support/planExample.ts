import { dropUndefined, type Finding } from '../../src/base/index.js'
import { cardModel } from '../../src/v1/card.js'
import { en } from '../../src/v1/message/en.js'
import type { Catalogue } from '../../src/v1/message.js'
import { planVisit, type VisitFacts, type VisitOptions, type VisitPlan } from '../../src/v1/service.js'
import type { Id, MachineLog, SpecSheet, Stock, Toolbox } from '../../src/v1/spec.js'
import { readExample } from './readExample.js'

/** All facts and options of planVisit in one object, so that a test can change any of them in one place. */
export type VisitRequest = VisitFacts & VisitOptions

/** The day of the examples. */
export const TODAY = '2023-10-06'

export interface Changes {
  readonly sheet?: (sheet: SpecSheet) => SpecSheet
  readonly log?: (log: MachineLog) => MachineLog
  readonly toolbox?: (toolbox: Toolbox) => Toolbox
  readonly stock?: (stock: Stock) => Stock
  readonly logFile?: string
  readonly services?: readonly Id[]
  readonly request?: Partial<VisitRequest>
}

/** The facts and options for one example machine: 6 °C, and the defaults of the command line. */
export function requestExample(folder: string, changes: Changes = {}): VisitRequest {
  const unchanged = <T>(value: T): T => value
  return {
    sheet: (changes.sheet ?? unchanged)(readExample(folder, 'sheet')),
    log: (changes.log ?? unchanged)(readExample(folder, 'log', changes.logFile)),
    toolbox: (changes.toolbox ?? unchanged)(readExample(folder, 'toolbox')),
    stock: (changes.stock ?? unchanged)(readExample(folder, 'stock')),
    services: changes.services ?? 'due',
    today: TODAY,
    ambient: { value: 6, unit: 'degC' },
    due: {
      soon: { hours: 10, distance: { value: 100, unit: 'km' }, days: 14 },
      staleAfter: { days: 30 },
      severity: 'normal',
    },
    iso6789: '2017',
    ...changes.request,
  }
}

/** {@link planVisit} of facts and options in one object. */
export function planRequest(request: VisitRequest) {
  const { services, due, iso6789, tolerancePercent, raiseOn, ...facts } = request
  return planVisit(facts, dropUndefined({ services, due, iso6789, tolerancePercent, raiseOn }))
}

/** A plan and its findings in one object, for the pointers of a card. */
export type JudgedPlan = VisitPlan & { readonly findings: readonly Finding[] }

/** The card of a plan and its findings. */
export function cardOf(plan: JudgedPlan, catalogue: Catalogue = en) {
  const { findings, ...value } = plan
  return cardModel({ value, findings }, catalogue)
}

export function planExample(folder: string, changes: Changes = {}): JudgedPlan {
  const planned = planRequest(requestExample(folder, changes))
  if (!planned.ok) throw new Error(JSON.stringify(planned.findings))
  return { ...planned.value, findings: planned.findings }
}
