import type { DueIntervals, DueOptions, IntervalFacts } from '../../../src/v1/interval.js'
import type { Interval, IntervalStated, MachineLog, Resolved, ServiceRecord } from '../../../src/v1/spec.js'

const sheet = { id: 'skarnfell-tind', revision: '1' }

/** An interval that the manual states. */
export function stated(interval: Omit<IntervalStated, 'kind'>): Resolved<Interval> {
  return {
    kind: 'stated',
    value: { kind: 'interval', ...interval },
    trace: { path: '/services/change', reasons: [] },
  }
}

export interface DoneOn {
  readonly date: string
  readonly hours?: number
  readonly km?: number
  readonly service?: string
  readonly gearcase?: string
  readonly instance?: string
}

/** A record with `detail: date and meters only`. */
function record({ date, hours, km, service = 'change', gearcase = 'rear', instance }: DoneOn): ServiceRecord {
  return {
    kind: 'service-record',
    version: '1.0',
    id: `r-${date}`,
    machine: 'two',
    sheet,
    detail: 'date and meters only',
    date,
    readings: {
      ...(hours === undefined ? {} : { hours: { value: hours, unit: 'h' as const } }),
      ...(km === undefined ? {} : { distance: { value: km, unit: 'km' as const } }),
    },
    entries: [
      {
        service,
        gearcase,
        ...(instance === undefined ? {} : { instance }),
        opened: [],
        tightened: [],
        seals: [],
      },
    ],
  }
}

export interface LogParts {
  readonly commissioned?: string
  readonly hours?: readonly (readonly [string, number])[]
  readonly km?: readonly (readonly [string, number])[]
  readonly rollover?: number
  readonly records?: readonly DoneOn[]
  readonly events?: MachineLog['events']
  readonly pauses?: MachineLog['pauses']
}

/** A log of the rescue station's second machine. */
export function log({
  commissioned,
  hours,
  km,
  rollover,
  records = [],
  events,
  pauses,
}: LogParts): MachineLog {
  const readings = (list: readonly (readonly [string, number])[]) =>
    list.map(([date, value]) => ({ date, value }))
  return {
    kind: 'machine-log',
    version: '1.0',
    id: 'two',
    name: 'Station 2',
    sheet,
    identity: {},
    ...(commissioned === undefined ? {} : { commissioned }),
    meters: {
      ...(hours && {
        hours: { unit: 'h', readings: readings(hours), ...(rollover === undefined ? {} : { rollover }) },
      }),
      ...(km && { distance: { unit: 'km', readings: readings(km) } }),
    },
    ...(events && { events }),
    records: records.map(record),
    ...(pauses && { pauses }),
  }
}

export const OPTIONS: DueOptions = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' }

export function question(
  intervals: Partial<DueIntervals> & { readonly repeat: DueIntervals['repeat'] },
  machine: MachineLog,
  today: string,
  more: Partial<IntervalFacts> = {},
): IntervalFacts {
  return {
    intervals: { countFrom: 'completion', ...intervals },
    log: machine,
    service: 'change',
    gearcase: 'rear',
    today,
    ...more,
  }
}
