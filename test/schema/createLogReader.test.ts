import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import * as z from 'zod/v4/core'
import { createKeyCounter } from '../../src/schema/createKeyCounter.js'
import { createLogReader } from '../../src/schema/createLogReader.js'
import { machineLogShape } from '../../src/schema/shapes/machineLogShape.js'
import { list, object, positiveNumber, wholeNumber } from '../../src/schema/shapes/makeShape.js'
import { serviceRecordShape } from '../../src/schema/shapes/serviceRecordShape.js'
import { parseDocumentText } from '../../src/v1/spec.js'
import { law } from '../support/law.js'
import { readExample } from '../support/readExample.js'

type Json = null | boolean | number | string | Json[] | { [key: string]: Json }

const record = readExample('tind-4', 'record')
const logs: readonly Json[] = [
  ...['tind-4', 'acre-26', 'bud-3', 'kvist-2', 'reach-55'].map((name) => readExample(name, 'log')),
  {
    ...readExample('acre-26', 'log', 'log-rebuilt'),
    topUps: [{ date: '2023-01-04', gearcase: 'axle', volume: { value: 50, unit: 'mL' }, oil: '80W-90' }],
    pauses: [{ from: '2022-11-01', to: '2023-03-31' }],
  },
  {
    ...readExample('tind-4', 'log'),
    records: [record],
    events: [{ kind: 'meter rollover', date: '2023-01-01', meter: 'hours' }],
  },
].map((log) => JSON.parse(JSON.stringify(log)))

/** All places of a value, as a list of the holders and keys. */
function listPlaces(
  value: Json,
  found: { holder: Json[] | Record<string, Json>; key: string | number }[] = [],
) {
  if (typeof value !== 'object' || value === null) return found
  const holder = value as Record<string, Json>
  for (const key of Array.isArray(value) ? value.keys() : Object.keys(value)) {
    found.push({ holder, key })
    listPlaces(holder[key] as Json, found)
  }
  return found
}

const strayValue: fc.Arbitrary<Json> = fc.oneof(
  fc.constantFrom<Json>(
    null,
    true,
    0,
    -1,
    0.5,
    1e9,
    1e9 + 1,
    1e300,
    '',
    'x',
    [],
    {},
    '2023-02-29',
    '2024-02-29',
    'h',
    'km',
    'mi',
    'not judged',
    'severe',
    'full',
    'constructor',
    '50 mL',
    '512.6 h on 2023-10-06',
  ),
  fc.string({ maxLength: 4 }),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
)
const change = fc.record({
  at: fc.nat(),
  kind: fc.constantFrom('set', 'remove', 'add', 'copy', 'rename'),
  value: strayValue,
  key: fc.constantFrom(
    'note',
    'unit',
    'rollover',
    'use',
    'detail',
    'header',
    '__proto__',
    'instance',
    'kind',
    'x',
  ),
})

function applyChange(
  log: Json,
  { at, kind, value, key }: { at: number; kind: string; value: Json; key: string },
): void {
  const places = listPlaces(log)
  const place = places[at % places.length]
  const other = places[(at * 7 + 3) % places.length]
  if (place === undefined || other === undefined) return
  const holder = place.holder as Record<string, Json>
  if (kind === 'set') holder[place.key] = value
  else if (kind === 'copy')
    holder[place.key] = structuredClone((other.holder as Record<string, Json>)[other.key] as Json)
  else if (Array.isArray(holder)) holder.splice(Number(place.key), 1)
  else if (kind === 'remove') delete holder[place.key]
  else Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true })
}

const read = createLogReader()
const changedLog = fc
  .record({ log: fc.constantFrom(...logs), changes: fc.array(change, { maxLength: 2 }) })
  .map(({ log, changes }) => {
    const copy = structuredClone(log)
    for (const one of changes) applyChange(copy, one)
    return copy
  })

describe('the reader of logs on lines', () => {
  it('gives what parseDocumentText gives', () => {
    let good = 0
    let bad = 0
    law(1500, changedLog, fc.boolean(), (log, spaced) => {
      const text = JSON.stringify(log, null, spaced ? 1 : 0)
      const expected = parseDocumentText('machine-log', text, { name: 'line 1' })
      expect(read(text, { name: 'line 1' })).toEqual(expected)
      if (expected.ok) good += 1
      else bad += 1
    })
    expect(Math.min(good, bad)).toBeGreaterThan(50)
  })

  it('sees a repeated key, text that is not JSON and short notation as parseDocumentText does', () => {
    const text = JSON.stringify(logs[0])
    for (const changed of [
      text.replace('"name":', '"name":"a","name":'),
      text.replace('"name":', '"name" : "a:b", "name":'),
      text.replace('"name"', '"\\u006eame"'),
      text.replace('"readings":[', '"readings":[{"date":"2021-04-18","date":"2021-04-18","value":1},'),
      text.slice(1),
      `\uFEFF${text}`,
      '',
      '[]',
      'null',
      '{"kind":"machine-log","version":"1.0","id":"a","sheet":"b revision 1","meters":["3 h on 2023-01-01"]}',
    ]) {
      expect(read(changed, {})).toEqual(parseDocumentText('machine-log', changed))
    }
  })
})

describe('the counter of keys', () => {
  it('accepts what zod accepts, for every check of a shape', () => {
    const shapes = [
      machineLogShape(),
      serviceRecordShape(),
      object({ a: list('x'), 'b?': wholeNumber(), 'c?': positiveNumber(5) }),
    ]
    const value = fc.oneof(
      changedLog,
      fc.constant(JSON.parse(JSON.stringify(record))),
      fc.record(
        {
          a: fc.array(fc.constantFrom('x', 'y'), { maxLength: 2 }),
          b: fc.constantFrom(1, 1.5, -3, 2 ** 53, '1'),
          c: fc.constantFrom(0, 0.1, 5, 5.1),
        },
        { requiredKeys: [] },
      ),
    )
    law(1500, fc.constantFrom(...shapes), value, (shape, candidate) => {
      const counted = createKeyCounter(shape)(candidate)
      expect(!Number.isNaN(counted)).toBe(z.safeParse(shape, candidate).success)
      if (!Number.isNaN(counted))
        expect(counted).toBe(
          listPlaces(candidate as Json).filter(({ key }) => typeof key === 'string').length,
        )
    })
  })
})
