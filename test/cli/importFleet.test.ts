import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { en as words } from '../../src/cli/message/en/index.js'
import { runCommand } from '../../src/cli/runCommand.js'
import { readReadingTable } from '../../src/cli/tables/readReadingTable.js'
import { writeReadingTable } from '../../src/cli/tables/writeReadingTable.js'
import type { MachineLog } from '../../src/v1/spec.js'
import { law } from '../support/law.js'
import { memoryIo } from '../support/memoryIo.js'

const makeLog = (id: string, serial: string, meters: MachineLog['meters'] = {}): MachineLog => ({
  kind: 'machine-log',
  version: '1.0',
  id,
  name: `Machine ${id}`,
  sheet: { id: 'hallbrekka-tind-4', revision: '2022-01' },
  identity: { serial },
  meters,
  records: [],
})
const LOGS = {
  'logs/a.json': JSON.stringify(
    makeLog('a', 'S-1', { hours: { unit: 'h', readings: [{ date: '2023-09-01', value: 10 }] } }),
  ),
  'logs/b.json': JSON.stringify(makeLog('b', 'S-2')),
}

async function run(words: readonly string[], files: Readonly<Record<string, string>>) {
  const io = memoryIo({ ...LOGS, ...files })
  const code = await runCommand(['import', ...words, '--today', '2023-10-06'], io)
  const logs = Object.fromEntries([...io.written].map(([path, text]) => [path, parse(text) as MachineLog]))
  return { code, out: io.out.join('\n'), err: io.err.join('\n'), logs }
}

describe('import of a table', () => {
  const table = `machine,date,hours,distance [km]
a,2023-09-01,11,
a,2023-10-01,20.5,130
S-2,2023-10-02,,77.25
`

  it('adds readings to the logs by id or serial number, and adds the meters that they lack', async () => {
    const { code, out, logs } = await run(['t.csv', 'logs', '--out', 'new'], { 't.csv': table })
    expect(code).toBe(0)
    expect(out).toContain(
      '2 logs: 1 reading of hours and 2 readings of distance added; 1 skipped, already in the logs; 0 records added.',
    )
    expect(logs['new/a.json']?.meters).toEqual({
      hours: {
        unit: 'h',
        readings: [
          { date: '2023-09-01', value: 10 },
          { date: '2023-10-01', value: 20.5 },
        ],
      },
      distance: { unit: 'km', readings: [{ date: '2023-10-01', value: 130 }] },
    })
    expect(logs['new/b.json']?.meters.distance?.readings).toEqual([{ date: '2023-10-02', value: 77.25 }])
  })

  it('reads units from a second header row, a semicolon and a decimal comma', async () => {
    const text = '\uFEFFid;date;hours;distance\r\n;;h;mi\r\na;2023-10-01;20,5;1,25\r\n'
    const { code, logs } = await run(['t.csv', 'logs', '--out', 'new', '--decimal', 'comma'], {
      't.csv': text,
    })
    expect(code).toBe(0)
    expect(logs['new/a.json']?.meters.distance).toEqual({
      unit: 'mi',
      readings: [{ date: '2023-10-01', value: 1.25 }],
    })
  })

  it('reports each bad cell with its line and column, and writes nothing', async () => {
    const text = `machine,date,hours,distance [km],driver
a,1.10.2023,20,
a,2023-10-01,"20,5",x
,2023-10-01,1,
a,2023-10-02,5,6,7,8
`
    const { code, out, logs } = await run(['t.csv', 'logs', '--out', 'new'], { 't.csv': text })
    expect(code).toBe(1)
    expect(out.match(/^t\.csv.*$/gm)).toEqual([
      't.csv:1:1: info: Column driver: the column is not used',
      't.csv:2:1: error: Column date: expected a date such as 2023-10-06, found "1.10.2023"',
      't.csv:3:1: error: Column hours: expected a number with a decimal point, found "20,5"',
      't.csv:3:1: error: Column distance [km]: expected a number with a decimal point, found "x"',
      't.csv:4:1: error: Column machine: which machine is this?',
      't.csv:5:1: error: "8" is in no named column',
    ])
    expect(out).toContain('Nothing is written.')
    expect(logs).toEqual({})
  })

  it.each([
    ['machine,date,distance\na,2023-10-01,5\n', /Column distance: expected a unit/],
    ['machine,hours\na,5\n', /Column date: expected a column date/],
    ['machine,date\na,2023-10-01\n', /expected a column hours, distance \[km\], entry or sheet/],
    ['date,hours\n2023-10-01,5\n', /Column machine: expected a column machine/],
    ['machine,date,hours\na,"2023-10-01,5\n', /not a table/],
    ['machine,date,hours,hours\na,2023-10-01,5,6\n', /the column appears more than once/],
    ['machine,date,distance [km],distance [mi]\na,2023-10-01,5,6\n', /a has distances in km and mi/],
  ])('refuses %j', async (text, message) => {
    const { code, out } = await run(['t.csv', 'logs', '--out', 'new'], { 't.csv': text })
    expect(out).toMatch(message)
    expect(code).toBe(1)
  })

  it('warns of a machine without a log, with the number of its readings', async () => {
    const { code, out, logs } = await run(['t.csv', 'logs', '--out', 'new'], {
      't.csv': `${table}zz,2023-10-01,5,6\n`,
    })
    expect(out).toMatch(/warning: zz: no log has this number; 2 readings not added/)
    expect(Object.keys(logs)).toHaveLength(2)
    expect(code).toBe(1)
  })

  it('adds records: the entries of one day are one record, once', async () => {
    const text = `machine,date,hours,by,entry
a,2023-09-20,18,A. Skarn,gear-oil-change of front
a,2023-09-20,,,"gear-oil-change of rear, 930 mL drained, 960 mL refilled, magnet clean"
S-2,2023-09-21,5,,gear-oil-change of rear
`
    const { code, out, logs } = await run(['t.csv', 'logs', '--out', 'new'], { 't.csv': text })
    expect({ code, out }).toMatchObject({ code: 0, out: expect.stringContaining('2 records added.') })
    const [record] = logs['new/a.json']?.records ?? []
    expect(record).toMatchObject({
      id: 'a-2023-09-20',
      by: 'A. Skarn',
      detail: 'full',
      readings: { hours: { value: 18, unit: 'h' } },
      entries: [
        { service: 'gear-oil-change', gearcase: 'front' },
        { gearcase: 'rear', drained: { value: 930, unit: 'mL' }, magnet: 'clean' },
      ],
    })
    expect(logs['new/b.json']?.records[0]?.detail).toBe('date and meters only')
    const files = { 't.csv': text, 'logs/a.json': JSON.stringify(logs['new/a.json']) }
    expect((await run(['t.csv', 'logs'], files)).out).toContain('1 record added.')
  })

  it('reports a bad entry with its line, and two names for one day', async () => {
    const text = `machine,date,by,entry
a,2023-09-20,A. Skarn,gear-oil-change
a,2023-09-20,B. Vik,gear-oil-change of rear
b,2023-09-21,B. Vik,
`
    const { code, out, logs } = await run(['t.csv', 'logs', '--out', 'new'], { 't.csv': text })
    expect({ code, logs }).toEqual({ code: 1, logs: {} })
    expect(out).toMatch(/:2:1: error: Record of 2023-09-20: /)
    expect(out).toContain('t.csv:3:1: error: Column by: "B. Vik" contradicts "A. Skarn" in line 2')
    expect(out).toContain('t.csv:4:1: error: Column by: this row has no entry and no reading')
  })

  it('makes a log for a machine whose sheet it names', async () => {
    const text = `machine,name,sheet,revision,variant,commissioned,date,hours
c,Station 3,hallbrekka-tind-4,2022-01,short,2023-01-05,2023-10-01,5.5
c,,,,,,2023-10-02,6
`
    const { code, logs, out } = await run(['t.csv', '--out', 'new'], { 't.csv': text })
    expect({ code, out }).toMatchObject({
      code: 0,
      out: expect.stringContaining('1 log: 2 readings of hours'),
    })
    expect(logs['new/c.yaml']).toMatchObject({
      id: 'c',
      name: 'Station 3',
      sheet: { id: 'hallbrekka-tind-4', revision: '2022-01' },
      identity: { variant: 'short' },
      commissioned: '2023-01-05',
      meters: { hours: { readings: [{ value: 5.5 }, { value: 6 }] } },
    })
  })
})

describe('import of telematics for a fleet', () => {
  const page = (serial: string, hours: number, km: number, date = '2023-10-01') => ({
    EquipmentHeader: { SerialNumber: serial },
    CumulativeOperatingHours: { datetime: `${date}T06:30:00Z`, Hour: hours },
    Distance: { datetime: `${date}T06:30:00Z`, OdometerUnits: 'kilometre', Odometer: km },
  })

  it('adds the machines of several pages to their logs', async () => {
    const files = {
      'p1.json': JSON.stringify({ Equipment: [page('S-1', 20, 130), page('S-9', 1, 1)] }),
      'p2.json': JSON.stringify({ Equipment: [page('S-2', 7, 70), page('S-1', 21, 131, '2023-10-02')] }),
    }
    const { code, out, logs } = await run(['p1.json', 'p2.json', 'logs', '--out', 'new'], files)
    expect(out).toContain('2 logs: 3 readings of hours and 3 readings of distance added')
    expect(out).toContain('S-9: no log has this number; 2 readings not added')
    expect(code).toBe(1)
    expect(logs['new/a.json']?.meters.hours?.readings.map(({ value }) => value)).toEqual([10, 20, 21])
    expect(logs['new/b.json']?.meters.distance?.readings.map(({ value }) => value)).toEqual([70])
  })

  it('a serial number in two logs is an error, and nothing is written', async () => {
    const files = {
      'logs/c.json': JSON.stringify(makeLog('c', 'S-1')),
      'p1.json': JSON.stringify({ Equipment: [page('S-1', 20, 130)] }),
    }
    const { code, out, logs } = await run(['p1.json', 'logs', '--out', 'new'], files)
    expect(out).toContain('S-1: several logs have this number: a, c')
    expect({ code, logs }).toEqual({ code: 1, logs: {} })
  })

  it('of 2,000 machines fills 2,000 logs', async () => {
    const ids = Array.from({ length: 2000 }, (_nothing, index) => index)
    const files = Object.fromEntries(
      ids.map((id) => [`fleet/${id}.json`, JSON.stringify(makeLog(`m-${id}`, `N-${id}`))]),
    )
    const answer = JSON.stringify({ Fleet: { Equipment: ids.map((id) => page(`N-${id}`, id, id)) } })
    const { out } = await run(['p1.json', 'fleet'], { ...files, 'p1.json': answer })
    expect(out).toContain('2000 logs: 2000 readings of hours and 2000 readings of distance added')
  })
})

describe('the table of readings', () => {
  const day = fc
    .integer({ min: 0, max: 3000 })
    .map((days) => new Date(Date.UTC(2015, 0, 1) + days * 864e5).toISOString().slice(0, 10))
  const value = fc.integer({ min: 0, max: 9_999_999 }).map((thousandths) => thousandths / 1000)
  const readings = fc.uniqueArray(fc.record({ date: day, value }), {
    selector: ({ date }) => date,
    minLength: 1,
    maxLength: 6,
  })
  const id = fc.constantFrom('a', 'b-2', 'c')
  const unit = fc.constantFrom('km' as const, 'mi' as const)
  const log = fc
    .record({ id, hours: readings, distance: readings, unit })
    .map(({ id, hours, distance, unit }) =>
      makeLog(id, '', { hours: { unit: 'h', readings: hours }, distance: { unit, readings: distance } }),
    )

  it('written and read back has the same readings', () => {
    law(100, fc.uniqueArray(log, { selector: ({ id }) => id, minLength: 1, maxLength: 3 }), (logs) => {
      const { machines, findings } = readReadingTable(
        writeReadingTable(logs),
        't.csv',
        'point',
        words.reports,
      )
      expect(findings).toEqual([])
      const byDate = <T extends { date: string }>(list: readonly T[]) =>
        list.toSorted((first, second) => (first.date < second.date ? -1 : 1))
      for (const { id, meters } of logs) {
        const machine = machines.find(({ header }) => header.equipmentId === id)
        expect(byDate(machine?.hours ?? [])).toEqual(byDate(meters.hours?.readings ?? []))
        expect(machine?.distance?.unit).toBe(meters.distance?.unit)
        expect(byDate(machine?.distance?.readings ?? [])).toEqual(byDate(meters.distance?.readings ?? []))
      }
    })
  })

  it('is what history --format csv prints', async () => {
    const io = memoryIo()
    expect(await runCommand(['history', 'examples/tind-4', '--format', 'csv'], io)).toBe(0)
    expect(io.out.join('')).toMatch(
      /^machine,date,hours \[h\],distance \[\w+\]\r\n[\w-]+,20\d\d-\d\d-\d\d,\d/,
    )
  })
})
