import { dropUndefined } from '../base/index.js'
import { compareDates, type DateText } from '../calendar/index.js'
import type { DueOptions } from '../interval/index.js'
import { compareQuantities, type DistanceUnit } from '../quantity/index.js'
import { describeMachine } from './describeMachine.js'
import { type DueFacts, listDue, type ServiceDue } from './listDue.js'
import type { PartName } from './names.js'
import type { PlannedMachine } from './visitPlan.js'

/** A service on a gearcase. */
export interface NamedService {
  readonly serviceName: string
  readonly part: PartName
}

/** The earliest due point of one kind, and the services that are due there. */
export interface NextPoint<Point> {
  readonly at: Point
  readonly services: readonly NamedService[]
}

/** The facts of a next-due label. */
export interface NextDue {
  readonly kind: 'next-due'
  readonly machine: PlannedMachine
  readonly today: DateText
  /** Services that are due or overdue. */
  readonly dueNow: readonly NamedService[]
  /** The earliest due points of all services; a kind without a limit is absent. */
  readonly hours?: NextPoint<{ readonly value: number; readonly unit: 'h' }>
  readonly distance?: NextPoint<{ readonly value: number; readonly unit: DistanceUnit }>
  readonly date?: NextPoint<DateText>
  /** Services whose due date is not known. */
  readonly notKnown: readonly NamedService[]
}

/**
 * Collects the facts for the next-due label of a machine: the earliest date and meter readings of all its services, as
 * `listDue` gives them. To write the label, use `paperModel`.
 *
 * @param facts - sheet, log and today
 * @param options - those of `computeDue`; none has a default
 * @throws the errors of {@link listDue}
 *
 * Source: house rule; the due points are those of `listDue`.
 * @example
 * ```ts
 * import { nextDue } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const log = { kind: 'machine-log', version: '1.0', id: 'one', name: 'One', sheet: { id: 'example', revision: '1' }, identity: {}, meters: {}, records: [] } as const
 * const options = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
 * // Which services of a machine without services are due?
 * nextDue({ sheet, log, today: '2031-10-06' }, options).dueNow // => []
 * ```
 */
export function nextDue(facts: DueFacts, options: DueOptions): NextDue {
  const due = listDue(facts, options)
  const nameServices = (verdicts: readonly ServiceDue['verdict'][]) =>
    due
      .filter(({ verdict }) => verdicts.includes(verdict))
      .map(({ serviceName, part }): NamedService => ({ serviceName, part }))
  return dropUndefined({
    kind: 'next-due' as const,
    machine: describeMachine(facts.sheet, facts.log),
    today: facts.today,
    dueNow: nameServices(['overdue', 'due']),
    hours: findEarliest(
      due,
      'hours',
      ({ meter }) => (meter?.unit === 'h' ? { ...meter, unit: meter.unit } : undefined),
      compareQuantities,
    ),
    distance: findEarliest(
      due,
      'distance',
      ({ meter }) => (meter === undefined || meter.unit === 'h' ? undefined : { ...meter, unit: meter.unit }),
      compareQuantities,
    ),
    date: findEarliest(due, 'period', ({ date }) => date, compareDates),
    notKnown: nameServices(['cannot tell']),
  })
}

type DuePoint = NonNullable<ServiceDue['lines'][number]['duePoint']>

function findEarliest<Point>(
  due: readonly ServiceDue[],
  by: 'hours' | 'distance' | 'period',
  readPoint: (duePoint: DuePoint) => Point | undefined,
  compare: (one: Point, other: Point) => number,
): NextPoint<Point> | undefined {
  const points = due.flatMap(({ lines, serviceName, part }) =>
    lines.flatMap((line) => {
      const at = line.by === by && line.duePoint !== undefined ? readPoint(line.duePoint) : undefined
      return at === undefined ? [] : [{ at, service: { serviceName, part } }]
    }),
  )
  const [first] = points.toSorted((point, other) => compare(point.at, other.at))
  if (first === undefined) return undefined
  const isEarliest = ({ at }: { readonly at: Point }) => compare(at, first.at) === 0
  return { at: first.at, services: points.filter(isEarliest).map(({ service }) => service) }
}
