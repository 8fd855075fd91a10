import { quoteValue, requireKnownKeys, requireNumber, requireObject, requireShape } from '../base/index.js'
import { type DateText, isDate } from '../calendar/index.js'
import type { DueOptions } from '../interval/index.js'
import { convert, type Quantity, type TemperatureUnit } from '../quantity/index.js'
import type { OpenFault } from '../record/index.js'
import type { Id, MachineLog, ProcedureDocument, SpecSheet, Stock, Toolbox } from '../spec/index.js'
import { requireDocument } from '../spec/index.js'
import { requireWorkOptions } from './requireWorkOptions.js'
import type { Money } from './visitPlan.js'

/** The documents and the day of a visit. */
export interface VisitFacts {
  readonly sheet: SpecSheet
  readonly log: MachineLog
  readonly toolbox?: Toolbox
  readonly stock?: Stock
  readonly today: DateText
  /**
   * A writer's procedure to use instead of a built one; its services are the work. If absent, one is built.
   */
  readonly procedure?: ProcedureDocument
  /** Logs of other machines with the same sheet; their records of the same work also show its duration. */
  readonly otherLogs?: readonly MachineLog[]
  /** For the choice of oil and the pouring time. */
  readonly ambient?: Quantity<TemperatureUnit>
  /** The open faults of the machine, from `openFaults`; with any, the plan says that it must not be used. */
  readonly faults?: readonly OpenFault[]
}

/** The choices of the caller; none has a default. */
export interface VisitOptions {
  /** Ids of services, due or not; `'due'`: all that are overdue, due or due soon. */
  readonly services: readonly Id[] | 'due'
  /** When a service is due soon, when a reading is stale, and whether use is severe. */
  readonly due: DueOptions
  /** Edition of ISO 6789: a wrench's range starts at its lowest mark (2017) or 20 % of full scale (2003). */
  readonly iso6789: '2017' | '2003'
  /** A tolerance in per cent for torques that the manual prints without one; absent: not stated. */
  readonly tolerancePercent?: number
  /**
   * The way to raise the machine; absent: ramps if the toolbox has no stands and the manual permits ramps,
   * else stands.
   */
  readonly raiseOn?: 'stands' | 'ramps'
  /** The cost of an hour of work; if absent, the plan has no cost. */
  readonly labourRate?: Money
}

const FACT_KEYS: readonly (keyof VisitFacts)[] = [
  'sheet',
  'log',
  'toolbox',
  'stock',
  'procedure',
  'today',
  'ambient',
  'faults',
  'otherLogs',
]
const OPTION_KEYS: readonly (keyof VisitOptions)[] = [
  'services',
  'due',
  'iso6789',
  'tolerancePercent',
  'labourRate',
  'raiseOn',
]

type DueFacts = Pick<VisitFacts, 'sheet' | 'log' | 'today'>

/** Throws for an invalid sheet, log or day, and for an unknown key. */
export function requireDueFacts(facts: DueFacts, known: readonly (keyof VisitFacts)[]): void {
  requireKnownKeys('facts', facts, known)
  requireDocument('facts.sheet', facts.sheet, 'spec-sheet')
  requireDocument('facts.log', facts.log, 'machine-log')
  if (typeof facts.today !== 'string' || !isDate(facts.today))
    throw new RangeError(`facts.today must be a date YYYY-MM-DD, got ${quoteValue(facts.today)}`)
}

/** Throws for misuse by the programmer; mistakes in documents give findings. */
export function requireVisit(facts: VisitFacts, options: VisitOptions): void {
  requireDueFacts(facts, FACT_KEYS)
  const { toolbox, stock, procedure, ambient } = facts
  if (toolbox !== undefined) requireDocument('facts.toolbox', toolbox, 'toolbox')
  if (stock !== undefined) requireDocument('facts.stock', stock, 'stock')
  if (procedure !== undefined) requireDocument('facts.procedure', procedure, 'procedure')
  if (ambient !== undefined) requireAmbient(ambient)
  requireShape('facts', facts, { 'faults?': [{ date: 'string', finding: { code: 'string', params: {} } }] })
  requireShape('facts', facts, { 'otherLogs?': [] })
  for (const [place, log] of (facts.otherLogs ?? []).entries())
    requireDocument(`facts.otherLogs[${place}]`, log, 'machine-log')
  requireKnownKeys('options', options, OPTION_KEYS)
  const { services, due, labourRate } = options
  if (services !== 'due' && !(Array.isArray(services) && services.every((id) => typeof id === 'string')))
    throw new TypeError("options.services must be 'due' or a list of service ids")
  requireObject('options.due', due)
  requireWorkOptions(options)
  if (labourRate !== undefined) requireRate(labourRate)
}

function requireRate(rate: Money): void {
  requireKnownKeys('options.labourRate', rate, ['amount', 'currency'])
  requireNumber('options.labourRate.amount', rate.amount, { min: 0 })
  if (typeof rate.currency !== 'string' || !/^[A-Z]{3}$/.test(rate.currency))
    throw new RangeError(
      `options.labourRate.currency must be a code such as EUR, got ${quoteValue(rate.currency)}`,
    )
}

function requireAmbient(ambient: NonNullable<VisitFacts['ambient']>): void {
  if (typeof ambient !== 'object' || ambient === null || typeof ambient.value !== 'number')
    throw new TypeError('facts.ambient must be a temperature { value, unit } with a number')
  const { value, unit } = ambient
  if (unit !== 'degC' && unit !== 'degF' && unit !== 'K')
    throw new RangeError(`facts.ambient.unit must be degC, degF or K, got ${quoteValue(unit)}`)
  const kelvin = Number.isFinite(value) ? convert(ambient, 'K').value : Number.NaN
  if (!(kelvin > 0 && kelvin < 1000))
    throw new RangeError(`facts.ambient must be above 0 K and below 1000 K, got ${value} ${unit}`)
}
