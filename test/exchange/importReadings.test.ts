import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { importReadings } from '../../src/v1/interval/meters.js'
import { ANYTHING } from '../interval/support/anything.js'
import { law } from '../support/law.js'

const EDITION = { edition: '2020' } as const
const codes = (input: unknown) =>
  importReadings(input, EDITION).findings.map(({ code, path }) => [code, path])

/** Field names as in public samples of ISO/TS 15143-3; the machine and its values are invented. */
const MACHINE = {
  EquipmentHeader: {
    OEMName: 'Hallbrekka',
    Model: 'Tind 4',
    EquipmentID: 'station-2',
    SerialNumber: 'TL00418',
    PIN: 'HBT4TL00418',
  },
  CumulativeOperatingHours: { datetime: '2031-01-12T06:30:00Z', Hour: 412.5 },
  Distance: { datetime: '2031-01-12T06:30:00Z', OdometerUnits: 'kilometre', Odometer: 3702.4 },
}
const READ = {
  header: {
    make: 'Hallbrekka',
    model: 'Tind 4',
    equipmentId: 'station-2',
    serial: 'TL00418',
    pin: 'HBT4TL00418',
  },
  hours: [{ date: '2031-01-12', value: 412.5 }],
  distance: { unit: 'km', readings: [{ date: '2031-01-12', value: 3702.4 }] },
}

describe('shapes', () => {
  test.each([
    ['a fleet', { Fleet: { Equipment: [MACHINE] } }, '/Fleet/Equipment/0'],
    ['a list under Equipment', { Equipment: [MACHINE], Links: [] }, '/Equipment/0'],
    ['one under Equipment', { equipment: MACHINE }, '/Equipment'],
    ['a bare list', [MACHINE], '/0'],
    ['one machine', MACHINE, ''],
  ])('%s', (_, input, path) => {
    expect(importReadings(input, EDITION)).toEqual({
      ok: true,
      value: { standard: 'ISO/TS 15143-3:2020', machines: [{ path, ...READ }] },
      findings: [],
    })
  })

  test('capitals and spelling vary', () => {
    const otherMachine = {
      equipmentHeader: {
        oemName: 'Hallbrekka',
        MODEL: 'Tind 4',
        equipmentId: 'station-2',
        serialNumber: 'TL00418',
        pin: 'HBT4TL00418',
      },
      cumulativeOperatingHours: { DateTime: '2031-01-12', hours: '412.5' },
      DISTANCE: { dateTime: '2031-01-12 06:30', odometerUnits: 'Kilometers', odometer: '3702.4' },
    }
    const read = importReadings(otherMachine, { edition: '2016' })
    expect(read).toEqual({
      ok: true,
      value: { standard: 'ISO/TS 15143-3:2016', machines: [{ path: '', ...READ }] },
      findings: [],
    })
  })

  test.each([
    ['kilometre', 'km'],
    ['KM', 'km'],
    ['kilometer', 'km'],
    ['mile', 'mi'],
    ['Miles', 'mi'],
    ['mi', 'mi'],
  ])('the unit %s is %s', (OdometerUnits, unit) => {
    const read = importReadings({ ...MACHINE, Distance: { ...MACHINE.Distance, OdometerUnits } }, EDITION)
    expect(read.ok && read.value.machines[0]?.distance?.unit).toBe(unit)
  })

  test('a series is sorted by date', () => {
    const series = [
      { datetime: '2031-02-01T00:00:00Z', Hour: 430 },
      { datetime: '2031-01-01T00:00:00Z', Hour: 400 },
      { datetime: '2031-02-01T23:00:00+02:00', Hour: 431 },
    ]
    const read = importReadings({ ...MACHINE, CumulativeOperatingHours: series }, EDITION)
    expect(read.ok && read.value.machines[0]?.hours).toEqual([
      { date: '2031-01-01', value: 400 },
      { date: '2031-02-01', value: 430 },
      { date: '2031-02-01', value: 431 },
    ])
  })

  test('a machine without meters has none', () => {
    const read = importReadings({ EquipmentHeader: MACHINE.EquipmentHeader }, EDITION)
    expect(read.ok && read.value.machines).toEqual([{ path: '', header: READ.header, hours: [] }])
  })
})

describe('omitted values, each with a finding', () => {
  const hours = (CumulativeOperatingHours: unknown) => codes({ ...MACHINE, CumulativeOperatingHours })
  const distance = (change: object) => codes({ ...MACHINE, Distance: { ...MACHINE.Distance, ...change } })

  test('values, dates and units that cannot be used', () => {
    const at = '/CumulativeOperatingHours'
    const datetime = '2031-01-12T06:30:00Z'
    for (const Hour of [-1, Number.NaN, '1,234', '1e3', 'PT412H', null, {}, 1e10, undefined, true]) {
      expect(hours({ datetime, Hour })).toEqual([['interval/reading-out-of-bounds', at]])
    }
    for (const stamp of [undefined, '12.01.2031', '2031-02-30T00:00:00Z', '2031-01-123', 20310112, {}]) {
      expect(hours({ datetime: stamp, Hour: 1 })).toEqual([['interval/import-date-unreadable', at]])
    }
    for (const OdometerUnits of [undefined, '', 'm', 'league', 5, 'km '.repeat(1_000_000)]) {
      expect(distance({ OdometerUnits })).toEqual([['interval/import-unit-unknown', '/Distance']])
    }
  })

  test('a machine that changes its unit, and two keys that mean the same', () => {
    const mixedUnits = [MACHINE.Distance, { ...MACHINE.Distance, OdometerUnits: 'mile' }]
    expect(codes({ ...MACHINE, Distance: mixedUnits })).toEqual([
      ['interval/import-mixed-units', '/Distance'],
    ])
    expect(hours({ datetime: '2031-01-12', Hour: 5, hour: 6 })).toEqual([
      ['interval/import-ambiguous-key', '/CumulativeOperatingHours'],
      ['interval/reading-out-of-bounds', '/CumulativeOperatingHours'],
    ])
    expect(hours({ datetime: '2031-01-12', Hour: 5, hour: 5 })).toEqual([])
  })

  test('no machines', () => {
    for (const input of [
      null,
      undefined,
      5,
      'text',
      [],
      {},
      { Equipment: [] },
      { Fleet: {} },
      [[], 5, null].slice(1),
    ]) {
      expect(importReadings(input, EDITION)).toEqual({
        ok: false,
        findings: [
          {
            code: 'interval/import-no-machines',
            severity: 'error',
            document: { kind: 'text' },
            path: '',
            params: {},
          },
        ],
      })
    }
  })

  test('hostile input', () => {
    const cycle: Record<string, unknown> = { ...MACHINE }
    cycle['Fleet'] = cycle
    cycle['self'] = [cycle]
    expect(importReadings(cycle, EDITION).ok).toBe(true)
    let deepAnswer: unknown = MACHINE
    for (let level = 0; level < 9000; level++) deepAnswer = { Fleet: deepAnswer }
    expect(importReadings(deepAnswer, EDITION).ok).toBe(false)
    const proto = JSON.parse('{"__proto__": {"Equipment": [{}]}, "constructor": {}}')
    expect(importReadings(proto, EDITION).ok).toBe(false)
    expect(() => importReadings(MACHINE, { edition: '2018' as '2016' })).toThrow(
      "options.edition must be '2016' or '2020', got '2018'",
    )
    for (const [edition, shownValue] of ANYTHING)
      expect(() => importReadings(MACHINE, { edition } as { edition: '2016' })).toThrow(
        `options.edition must be '2016' or '2020', got ${shownValue}`,
      )
    expect(() => importReadings(MACHINE, null as unknown as typeof EDITION)).toThrow(
      'options must be an object, got null',
    )
  })

  test('any JSON gives a result and never throws', () => {
    law(50, fc.jsonValue(), (value) => {
      const keys = {
        Equipment: [{ CumulativeOperatingHours: value, Distance: value, EquipmentHeader: value }, value],
      }
      for (const input of [value, keys]) {
        const read = importReadings(input, EDITION)
        expect(JSON.parse(JSON.stringify(read))).toEqual(JSON.parse(JSON.stringify(read)))
        expect(read.ok || read.findings.length > 0).toBe(true)
      }
    })
  })

  // A copy of the list for each reading would take many minutes: a bound that a slow machine keeps.
  test('200,000 readings of a distance', { timeout: 60_000 }, () => {
    const readings = Array.from({ length: 200_000 }, (_, at) => ({
      datetime: '2031-01-12T06:30:00Z',
      odometer: at,
      odometerUnits: 'km',
    }))
    const read = importReadings({ Equipment: [{ Distance: readings }] }, EDITION)
    expect(read.ok && read.value.machines[0]?.distance?.readings).toHaveLength(200_000)
    expect(read.findings).toEqual([])
  })
})
