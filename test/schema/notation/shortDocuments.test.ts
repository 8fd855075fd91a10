import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { readPointer } from '../../../src/base/pointers.js'
import { parseDocument, parseServiceRecord, writeShort } from '../../../src/schema/index.js'
import type { AnyDocument, DocumentName } from '../../../src/spec/documents.js'
import { findWritten } from '../../../src/spec/findWritten.js'
import type { MachineLog } from '../../../src/spec/machineLog.js'
import type { ServiceRecord } from '../../../src/spec/serviceRecord.js'
import { cases, law } from '../../support/law.js'
import { anyDocument } from './support/anyDocument.js'

const head = { kind: 'service-record', version: '1.0', id: 'r', machine: 'station-2', date: '2023-10-06' }
const sheet = { id: 'hallbrekka-tind-4', revision: '2023-03' }

describe('a service record', () => {
  const shortSheet = {
    ...head,
    sheet: 'hallbrekka-tind-4, revision 2023-03',
    readings: '512.8 h, 4411 km',
    entries: [
      'gear-oil-check of hub left',
      {
        service: 'gear-oil-change',
        gearcase: 'rear',
        drained: 'not judged',
        refilled: '1 1/2 US qt',
        oil: 'gear oil from the old shelf from quart-80w-90',
        opened: ['/gearcases/rear/openings/fill'],
        tightened: {
          '/gearcases/rear/openings/fill': '9.5 lbf·ft with click-quarter at mark down',
          '/gearcases/rear/openings/drain': '1.25 turns',
          '/gearcases/rear/covers/pan': 'by the manual',
        },
        seals: { '/gearcases/rear/openings/fill/seals/0': 'new, part HB-2024' },
        filters: { '/gearcases/rear/filters/return': 'cleaned, found fine paste' },
      },
    ],
    shields: { '/shields/skid-plate': '12 N·m with small-click' },
  }

  test('in short notation is the full record', () => {
    const read = parseServiceRecord(shortSheet)
    expect(read.findings).toEqual([])
    // Typed by hand from docs/notation.md.
    expect(read.ok && read.value).toEqual({
      ...head,
      sheet,
      detail: 'full',
      readings: { hours: { value: 512.8, unit: 'h' }, distance: { value: 4411, unit: 'km' } },
      entries: [
        {
          service: 'gear-oil-check',
          gearcase: 'hub',
          instance: 'left',
          opened: [],
          tightened: [],
          seals: [],
        },
        {
          service: 'gear-oil-change',
          gearcase: 'rear',
          drained: 'not judged',
          refilled: { value: 1.5, unit: 'qt_us' },
          oil: { name: 'gear oil from the old shelf', container: 'quart-80w-90' },
          opened: ['/gearcases/rear/openings/fill'],
          tightened: [
            {
              kind: 'torque set',
              on: '/gearcases/rear/openings/fill',
              torque: { value: 9.5, unit: 'lbf.ft' },
              tool: 'click-quarter',
              wheelMark: 'mark down',
            },
            { kind: 'turns', on: '/gearcases/rear/openings/drain', turns: 1.25 },
            { kind: 'by the manual', on: '/gearcases/rear/covers/pan' },
          ],
          seals: [{ on: '/gearcases/rear/openings/fill/seals/0', done: 'new', partNumber: 'HB-2024' }],
          filters: [{ on: '/gearcases/rear/filters/return', done: 'cleaned', found: 'fine paste' }],
        },
      ],
      shields: [
        {
          kind: 'torque set',
          on: '/shields/skid-plate',
          torque: { value: 12, unit: 'N.m' },
          tool: 'small-click',
        },
      ],
    })
  })

  test('of which no entry says what was done is history', () => {
    for (const entries of [['change of rear'], 'change of rear', [{ service: 'change', gearcase: 'rear' }]]) {
      const read = parseServiceRecord({ ...head, sheet, readings: {}, entries })
      expect(read.ok && read.value).toMatchObject({
        detail: 'date and meters only',
        entries: [{ service: 'change', gearcase: 'rear', opened: [], tightened: [], seals: [] }],
      })
    }
  })

  test('an entry with details is one text, and back', () => {
    const tindSheet = JSON.parse(
      readFileSync('schemas/v1/vectors/bases/tind-4/record.json', 'utf8'),
    ) as ServiceRecord
    const withoutPartNumber = ({ partNumber: _none, ...seal }: ServiceRecord['entries'][0]['seals'][0]) =>
      seal
    const entries = tindSheet.entries.map((entry) => ({
      ...entry,
      seals: entry.seals.map(withoutPartNumber),
    }))
    const record = { ...tindSheet, entries }
    const shortRecord = writeShort(record)
    expect(shortRecord.entries).toHaveLength(2)
    const read = parseServiceRecord(shortRecord)
    expect(read.ok && read.value).toEqual(record)
  })

  test('without an id it is named by its machine and day; one with details is no history', () => {
    const { id: _none, ...rest } = head
    const read = parseServiceRecord({
      ...rest,
      sheet,
      readings: {},
      entries: ['change of rear, 1 L refilled'],
    })
    expect(read.ok && read.value).toMatchObject({ detail: 'full', id: `${head.machine}-${head.date}` })
  })

  test('a mistake in a text is found at the place and characters where it was written', () => {
    const [, entry] = shortSheet.entries
    const tightened = { '/gearcases/rear/openings/fill': '9.5 lbf-ft with click-quarter' }
    const wrongRecord = { ...shortSheet, entries: [{ ...(entry as object), tightened, refilled: '470 cc' }] }
    expect(parseServiceRecord(wrongRecord).findings).toMatchObject([
      {
        code: 'spec/bad-notation',
        path: '/entries/0/refilled',
        params: { range: [0, 6] },
        cures: [{ op: 'replace', path: '/entries/0/refilled', value: '470 mL' }],
      },
      {
        code: 'spec/bad-notation',
        path: '/entries/0/tightened/~1gearcases~1rear~1openings~1fill',
        cures: [{ value: '9.5 lbf·ft with click-quarter' }],
      },
    ])
    const read = parseServiceRecord(shortSheet)
    const torque = findWritten(read.places ?? [], '/entries/1/tightened/0/torque')
    expect(torque).toEqual({
      path: '/entries/1/tightened/~1gearcases~1rear~1openings~1fill',
      range: [0, 10],
    })
  })

  test('a value under a pointer that is no text, and a key that is no pointer, are findings', () => {
    const found = (tightened: object) =>
      parseServiceRecord({
        ...head,
        sheet,
        readings: {},
        entries: [{ service: 'a', gearcase: 'b', tightened }],
      }).findings
    expect(found({ '/a': { kind: 'turns', turns: 1 } })).toMatchObject([
      { code: 'spec/wrong-type', path: '/entries/0/tightened/~1a', params: { expected: 'text' } },
    ])
    expect(found({ drain: '1 turn' })).toMatchObject([
      { code: 'spec/bad-pointer', path: '/entries/0/tightened/drain' },
    ])
  })
})

/** The full documents of the tests and examples, by kind; a log's records too. */
const fullDocument = (kind: DocumentName) =>
  ['test/fixtures', 'schemas/v1/vectors/bases'].flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.json') && !file.includes('frozen') && !file.includes('sets'))
      .flatMap((file) => {
        const data: unknown = JSON.parse(readFileSync(join(folder, file), 'utf8'))
        const records = (readPointer(data, '/records') ?? []) as readonly unknown[]
        return [data, ...records].flatMap((item) => {
          const read = readPointer(item, '/kind') === kind ? parseDocument(kind, item) : undefined
          return read?.ok ? [[file, read.value] as const] : []
        })
      }),
  )

const kinds = ['machine-log', 'toolbox', 'stock', 'service-record'] as const

describe.each(kinds)('%s', (kind) => {
  const documents = fullDocument(kind)

  test('there are some', () => {
    expect(documents.length).toBeGreaterThan(3)
  })

  test.each(documents)('%s is the same after short notation', (_file, document) => {
    expectSame(kind, document)
    // Parts in full form are read unchanged.
    expect(parseDocument(kind, document)).toEqual({ ok: true, value: document, findings: [] })
  })

  test('generated ones are the same after short notation', () => {
    let validCount = 0
    law(500, anyDocument(documents.map(([, document]) => document)), (generated) => {
      const read = parseDocument(kind, generated)
      if (!read.ok) return
      validCount += 1
      expectSame(kind, read.value)
    })
    expect(validCount).toBeGreaterThan(cases(200))
  })
})

function expectSame(kind: DocumentName, document: AnyDocument): void {
  const read = parseDocument(kind, writeShort(document as MachineLog))
  expect(read.findings).toEqual([])
  expect(read.ok && read.value).toEqual(document)
}

test('an example of a whole visit has one line for the head of each thing that was done', () => {
  const [, record] = fullDocument('service-record').find(([file]) => file === 'tind-4/record.json') ?? []
  const { entries, ...head } = writeShort(record as ServiceRecord)
  expect(head).toMatchObject({
    sheet: 'hallbrekka-tind-4, revision 2023-03',
    readings: '512.8 h, 4411 km',
    shields: { '/shields/skid-plate': '12 N·m with small-click' },
  })
  expect(entries).toMatchObject([
    {
      drained: '930 mL',
      oil: 'station gear oil 80W-90 from quart-80w-90',
      tightened: { '/gearcases/rear/openings/drain': '31 N·m with half-inch-click' },
      seals: { '/gearcases/rear/openings/drain/seals/0': 'new, part HB-1620' },
    },
    { seals: { '/gearcases/front/openings/fill/seals/0': 'inspected and used again' } },
  ])
})
