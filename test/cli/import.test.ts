import { describe, expect, it } from 'vitest'
import { addReadings } from '../../src/cli/addReadings.js'
import { runCommand } from '../../src/cli/runCommand.js'
import type { MachineLog } from '../../src/v1/spec.js'
import { memoryIo } from '../support/memoryIo.js'
import { TODAY } from '../support/planExample.js'
import { readExample } from '../support/readExample.js'

const TIND = 'examples/tind-4'
const DAY = ['--today', TODAY]
const log = readExample('tind-4', 'log')

async function run(words: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const io = memoryIo(files)
  const code = await runCommand(words, io)
  return { code, out: io.out.join('\n'), err: io.err.join('\n'), written: io.written }
}

/** One machine of a telematics answer. */
const equipment = (
  header: object,
  hours: readonly (readonly [string, number])[],
  km: readonly (readonly [string, number])[] = [],
) => ({
  EquipmentHeader: header,
  CumulativeOperatingHours: hours.map(([day, Hour]) => ({ datetime: `${day}T06:30:00Z`, Hour })),
  Distance: km.map(([day, Odometer]) => ({
    datetime: `${day}T06:30:00Z`,
    OdometerUnits: 'kilometre',
    Odometer,
  })),
})

const SERIAL = log.identity.serial ?? ''
const last = log.meters.hours?.readings.at(-1)
// The log's last reading is of 4 October 2023, at 512.6 h.
const NEW_DAY = '2023-10-05'

describe('import: readings that a maker sends, into a log', () => {
  it('says how it is used', async () => {
    expect(await run(['import', '--help'])).toMatchObject({
      code: 0,
      out: expect.stringContaining('drivetrain-service import'),
    })
  })

  const importing = (
    answer: unknown,
    words: readonly string[] = [],
    files: Readonly<Record<string, string>> = {},
  ) =>
    run(['import', 'answer.json', `${TIND}/log.yaml`, ...DAY, ...words], {
      'answer.json': typeof answer === 'string' ? answer : JSON.stringify(answer),
      ...files,
    })
  const ownMachine = equipment({ SerialNumber: SERIAL }, [[NEW_DAY, 513.1]], [[NEW_DAY, 4415]])

  it('adds the days that the log does not have, and writes it to --out', async () => {
    expect(last).toEqual({ date: '2023-10-04', value: 512.6 })
    const { code, out, written } = await importing({ Equipment: [ownMachine] }, ['--out', 'new.json'])
    expect({ code, out }).toEqual({
      code: 0,
      out: [
        '1 reading of hours and 1 reading of distance added; 0 skipped, already in the log.',
        'Written: new.json',
      ].join('\n'),
    })
    const after = JSON.parse(written.get('new.json') ?? '') as MachineLog
    expect(after.meters.hours?.readings).toEqual([
      ...(log.meters.hours?.readings ?? []),
      { date: NEW_DAY, value: 513.1 },
    ])
    expect(after.meters.distance?.readings.at(-1)).toEqual({ date: NEW_DAY, value: 4415 })
    expect({ ...after, meters: log.meters }).toEqual(log)
  })

  it('without --out says what it would add, and writes nothing', async () => {
    const { code, out, written } = await importing(ownMachine)
    expect(code).toBe(0)
    expect(out).toMatch(/Nothing is written: name the file for the log with --out LOG/)
    expect(written.size).toBe(0)
  })

  it('with a byte order mark, and as JSON with the words on the other stream', async () => {
    const { code, out, err } = await importing(`\uFEFF${JSON.stringify(ownMachine)}`, ['--format', 'json'])
    expect(code).toBe(0)
    expect(JSON.parse(out)).toEqual({ kind: 'findings', version: '1.0', findings: [] })
    expect(err).toMatch(/1 reading of hours/)
  })

  it('takes the machine with the log’s serial number, or the one that is named by any number', async () => {
    const otherAnswers = [
      equipment({ EquipmentID: 'fleet-1', SerialNumber: 'TS00001' }, [[NEW_DAY, 9]]),
      ownMachine,
      equipment({ PIN: 'PIN-3' }, [[NEW_DAY, 514]]),
    ]
    const hours = async (words: readonly string[]) => {
      const { written } = await importing({ Equipment: otherAnswers }, [...words, '--out', 'new.json'])
      const after = JSON.parse(written.get('new.json') ?? 'null') as MachineLog | null
      return after?.meters.hours?.readings.at(-1)?.value
    }
    expect(await hours([])).toBe(513.1)
    expect(await hours(['--equipment', 'PIN-3'])).toBe(514)
    // 9 h after 512.6 h: a meter that falls.
    expect(await hours(['--equipment', 'fleet-1'])).toBeUndefined()
  })

  it('guesses no machine', async () => {
    const strangeMachine = equipment({ SerialNumber: 'TS00001' }, [[NEW_DAY, 600]])
    const wrongImport = await importing(strangeMachine)
    expect(wrongImport).toMatchObject({ code: 2, out: '' })
    expect(wrongImport.err).toMatch(
      new RegExp(`no machine has the number ${SERIAL} \\(TS00001\\); choose one`),
    )
    expect((await importing({ Equipment: [ownMachine, ownMachine] })).err).toMatch(
      /2 machines have the number/,
    )
    const nameless = JSON.stringify({ ...log, identity: {} })
    const files = { 'nameless.json': nameless, 'answer.json': JSON.stringify(strangeMachine) }
    const namelessRun = await run(['import', 'answer.json', 'nameless.json', ...DAY], files)
    expect(namelessRun.err).toMatch(/the log has no serial number \(TS00001\)/)
    const silentMachine = {
      'nameless.json': nameless,
      'answer.json': JSON.stringify(equipment({}, [[NEW_DAY, 513]])),
    }
    expect((await run(['import', 'answer.json', 'nameless.json', ...DAY], silentMachine)).code).toBe(0)
    const twoMachines = {
      'nameless.json': nameless,
      'answer.json': JSON.stringify([equipment({}, []), equipment({}, [])]),
    }
    expect((await run(['import', 'answer.json', 'nameless.json', ...DAY], twoMachines)).err).toMatch(
      /\(no number, no number\)/,
    )
  })

  it('writes nothing where a meter would fall; what was wrong before is not reported again', async () => {
    const fallingMeter = await importing(equipment({ SerialNumber: SERIAL }, [[NEW_DAY, 12]]), [
      '--out',
      'new.json',
    ])
    expect(fallingMeter.code).toBe(1)
    expect(fallingMeter.out).toMatch(/error: [\s\S]*Nothing is written\./)
    expect(fallingMeter.written.size).toBe(0)
  })

  it('reports what it could not read, and adds the rest', async () => {
    const answer = {
      ...ownMachine,
      Distance: [{ datetime: `${NEW_DAY}T06:30:00Z`, OdometerUnits: 'furlong', Odometer: 3 }],
    }
    const { code, out, written } = await importing(answer, ['--out', 'new.json'])
    expect(code).toBe(1)
    expect(out).toMatch(/^answer\.json: error: [\s\S]*interval\/import-unit/)
    expect(out).toMatch(/1 reading of hours and 0 readings of distance added/)
    expect(written.size).toBe(1)
  })

  it.each([
    ['nothing of a machine', '{"weather": "fine"}', 1, /interval\/import-no-machines/],
    ['no JSON', '{', 2, /answer\.json: not JSON/],
    ['no file', undefined, 2, /no such file/],
  ])('%s', async (_what, answer, code, message) => {
    const found = await run(['import', 'answer.json', `${TIND}/log.yaml`, ...DAY], {
      ...(answer === undefined ? {} : { 'answer.json': answer }),
    })
    expect(found.code).toBe(code)
    expect(found.out + found.err).toMatch(message)
  })

  it.each([
    [['import'], /name the telematics file and the log/],
    [['import', 'a'], /name the telematics file and the log/],
    [['import', 'a', 'b', 'c'], /name the telematics file and the log/],
  ])('%j', async (words, message) => {
    const found = await run(words)
    expect(found.code).toBeGreaterThan(0)
    expect(found.err + found.out).toMatch(message)
  })

  it('a log that is not a log is reported', async () => {
    const found = await importing(ownMachine, [], {})
    expect(found.code).toBe(0)
    const files = { 'answer.json': JSON.stringify(ownMachine), 'bad.json': '{}' }
    expect((await run(['import', 'answer.json', 'bad.json', ...DAY], files)).out).toMatch(
      /Nothing is written/,
    )
    expect((await run(['import', 'answer.json', `${TIND}/stock.yaml`, ...DAY], files)).err).toMatch(
      /expected a machine log, found .*stock\.yaml/,
    )
  })
})

describe('addReadings', () => {
  const machine = (hours: readonly (readonly [string, number])[], distance?: 'km' | 'mi') => ({
    path: '',
    header: {},
    hours: hours.map(([date, value]) => ({ date, value })),
    ...(distance === undefined
      ? {}
      : { distance: { unit: distance, readings: [{ date: NEW_DAY, value: 10 }] } }),
  })
  const { hours: _hours, ...noHours } = log.meters

  it('takes the last reading of a day, keeps the log’s own, and sorts by day', () => {
    const added = addReadings(
      log,
      machine([
        ['2023-01-01', 350],
        ['2023-10-04', 512],
        [NEW_DAY, 513],
        [NEW_DAY, 514],
      ]),
    )
    expect(added).toMatchObject({ added: { hours: 2, distance: 0 }, keptDays: 1, newMeters: [] })
    const readings = added.log.meters.hours?.readings ?? []
    expect(readings.map(({ date }) => date)).toEqual(readings.map(({ date }) => date).sort())
    expect(readings.slice(-2)).toEqual([
      { date: '2023-10-04', value: 512.6 },
      { date: NEW_DAY, value: 514 },
    ])
  })

  it('turns miles into the log’s kilometres: 10 mi are 16.09344 km by definition', () => {
    expect(addReadings(log, machine([], 'mi')).log.meters.distance?.readings.at(-1)).toEqual({
      date: NEW_DAY,
      value: 16.09344,
    })
    expect(addReadings(log, machine([], 'km')).log.meters.distance?.readings.at(-1)?.value).toBe(10)
  })

  it('adds a meter that the log does not have, and says so', () => {
    const added = addReadings({ ...log, meters: noHours }, machine([[NEW_DAY, 1]]))
    expect(added).toMatchObject({ added: { hours: 1 }, keptDays: 0, newMeters: ['hours'] })
    expect(added.log.meters.hours).toEqual({ unit: 'h', readings: [{ date: NEW_DAY, value: 1 }] })
    const merged = addReadings({ ...log, meters: {} }, machine([[NEW_DAY, 1]], 'mi'))
    expect(merged).toMatchObject({
      newMeters: ['hours', 'distance'],
      log: { meters: { distance: { unit: 'mi' } } },
    })
    expect(addReadings({ ...log, meters: {} }, { hours: [] }).log.meters).toEqual({})
  })

  it('changes nothing that it is given', () => {
    const before = structuredClone(log)
    addReadings(log, machine([[NEW_DAY, 514]], 'mi'))
    expect(log).toEqual(before)
  })

  it('a new meter is reported on the command line', async () => {
    const files = {
      'log.json': JSON.stringify({ ...log, meters: noHours }),
      'answer.json': JSON.stringify(equipment({ SerialNumber: SERIAL }, [[NEW_DAY, 513]])),
    }
    const { out } = await run(['import', 'answer.json', 'log.json', ...DAY], files)
    expect(out).toMatch(/The log had no meter for hours: it is added/)
  })
})
