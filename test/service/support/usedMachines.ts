import fc from 'fast-check'
import { dropUndefined } from '../../../src/base/dropUndefined.js'
import type { DueFacts } from '../../../src/v1/service.js'
import type { LogEvent, MachineLog, ServiceRecord, SpecSheet } from '../../../src/v1/spec.js'
import { addDays } from '../../support/addDays.js'
import { readExample } from '../../support/readExample.js'

export const FOLDERS = ['tind-4', 'acre-26', 'bud-3', 'kvist-2', 'reach-55'] as const
const BEGAN = '2029-01-10'
/** The sheet with another `countFrom`, and without some optional parts of its intervals. */
const sheets = fc
  .record({
    folder: fc.constantFrom(...FOLDERS),
    countFrom: fc.constantFrom('completion', 'schedule', 'schedule inside window'),
    without: fc.subarray(['first', 'window', 'severe'] as const),
  })
  .map(({ folder, countFrom, without }): SpecSheet => {
    const sheet = readExample(folder, 'sheet')
    const services = Object.entries(sheet.services).map(([id, service]) => {
      const keptIntervals = Object.entries(service.intervals).filter(
        ([key]) => !without.some((candidate) => candidate === key),
      )
      return [id, { ...service, intervals: { ...Object.fromEntries(keptIntervals), countFrom } }]
    })
    return { ...sheet, services: Object.fromEntries(services) }
  })

const visits = fc.array(
  fc.record({
    days: fc.oneof(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 200 })),
    hours: fc.oneof(
      fc.constantFrom(0, 50, 100, 200, 250),
      fc.integer({ min: 0, max: 2000 }).map((n) => n / 10),
    ),
    km: fc.oneof(
      fc.constantFrom(0, 500, 2000),
      fc.integer({ min: 0, max: 9000 }).map((n) => n / 10),
    ),
    does: fc.constantFrom('reading', 'record', 'record without readings', 'submersion', 'rebuild', 'swap'),
    service: fc.nat({ max: 9 }),
  }),
  { minLength: 1, maxLength: 9 },
)

/** A machine with some years of use, readings and services. */
export const usedMachines: fc.Arbitrary<DueFacts> = fc
  .record({
    sheet: sheets,
    visits,
    isCommissioned: fc.boolean(),
    meters: fc.subarray(['hours', 'distance'] as const),
    unit: fc.constantFrom('km' as const, 'mi' as const),
    after: fc.integer({ min: 0, max: 400 }),
    paused: fc.option(fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 60 })), {
      nil: undefined,
    }),
  })
  .map(({ sheet, visits, isCommissioned, meters, unit, after, paused }) => {
    let [date, hours, distance] = [BEGAN, 0, 0]
    const head = { kind: 'machine-log', version: '1.0', id: 'drawn', name: 'Drawn' } as const
    const reference = { id: sheet.id, revision: sheet.revision }
    const readings = { hours: [{ date, value: 0 }], distance: [{ date, value: 0 }] }
    const events: LogEvent[] = []
    const records: ServiceRecord[] = []
    const services = Object.keys(sheet.services)
    for (const [place, visit] of visits.entries()) {
      date = addDays(date, visit.days)
      hours += Math.min(visit.hours, (visit.days + 1) * 10)
      distance += Math.min(visit.km, (visit.days + 1) * 300)
      readings.hours.push({ date, value: hours })
      readings.distance.push({ date, value: distance })
      const service = services[visit.service % services.length] ?? ''
      if (visit.does.startsWith('record'))
        records.push({
          kind: 'service-record',
          version: '1.0',
          id: `r-${place}`,
          machine: 'drawn',
          sheet: reference,
          detail: 'date and meters only',
          date,
          readings:
            visit.does === 'record'
              ? { hours: { value: hours, unit: 'h' }, distance: { value: distance, unit } }
              : {},
          entries: (sheet.services[service]?.gearcases ?? []).map((gearcase) => ({
            service,
            gearcase,
            opened: [],
            tightened: [],
            seals: [],
          })),
        })
      else if (visit.does === 'swap') {
        events.push({ kind: 'meter swap', date, meter: 'hours', oldReading: hours, newReading: 0 })
        hours = 0
      } else if (visit.does === 'submersion' || visit.does === 'rebuild')
        events.push({ kind: visit.does, date })
    }
    const today = addDays(date, after)
    const log: MachineLog = dropUndefined({
      ...head,
      sheet: reference,
      identity: {},
      commissioned: isCommissioned ? BEGAN : undefined,
      meters: {
        ...(meters.includes('hours') ? { hours: { unit: 'h' as const, readings: readings.hours } } : {}),
        ...(meters.includes('distance') ? { distance: { unit, readings: readings.distance } } : {}),
      },
      events,
      records,
      pauses: paused && [{ from: addDays(date, paused[0]), to: addDays(date, paused[0] + paused[1]) }],
    })
    return { sheet, log, today }
  })
