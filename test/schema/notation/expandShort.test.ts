import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { readPointer } from '../../../src/base/pointers.js'
import { parseSpecSheet } from '../../../src/schema/index.js'
import { findWritten } from '../../../src/spec/findWritten.js'
import { checkDocuments } from '../../../src/v1/rules.js'
import { sheetHead } from './support/sheetHead.js'

const readShort = (name: string): unknown =>
  parse(
    readFileSync(
      existsSync(`examples/${name}`) ? `examples/${name}/sheet.yaml` : `test/fixtures/short/${name}.yaml`,
      'utf8',
    ),
  )
const readFull = (name: string): unknown =>
  JSON.parse(readFileSync(`schemas/v1/vectors/bases/${name}/sheet.json`, 'utf8'))

test.each(['acre-26', 'bud-3', 'kvist-2', 'reach-55', 'tind-4'])(
  '%s in short notation is the full sheet',
  (name) => {
    const read = parseSpecSheet(readShort(name))
    expect(read.findings).toEqual([])
    expect(read.ok && read.value).toEqual(readFull(name))
  },
)

test.each(['interval-only', 'three-figures', 'two-variants'])(
  '%s is a whole sheet: the rest is not stated',
  (name) => {
    expect(parseSpecSheet(readShort(name)).findings).toEqual([])
  },
)

test('the page of a drive has the source of the sheet', () => {
  const sheet = {
    ...sheetHead,
    gearcases: {
      rear: { type: 'final drive', openings: { drain: { drive: 'internal hex 10 mm [p. 62]' } } },
    },
  }
  const read = parseSpecSheet(sheet)
  expect(read.findings).toEqual([])
  expect(readPointer(read.ok && read.value, '/gearcases/rear/openings/drain/drive')).toEqual({
    kind: 'internal hex',
    size: '10 mm',
    source: { ref: 'manual', page: '62', confidence: 'read' },
  })
})

test('bolts without a torque keep the page of their own text', () => {
  const covers = {
    rear: { bolts: '10 x M8 [p. 3]' },
    pan: { bolts: '4 x M6 [p. 9]' },
    side: { bolts: '6 x M6' },
  }
  const read = parseSpecSheet({ ...sheetHead, gearcases: { rear: { type: 'final drive', covers } } })
  const pages = ['rear', 'pan', 'side'].map((cover) =>
    readPointer(read.ok && read.value, `/gearcases/rear/covers/${cover}/bolts/tightening/source/page`),
  )
  expect(pages).toEqual(['3', '9', undefined])
})

test('three figures become a sheet with everything else not stated', () => {
  const read = parseSpecSheet(readShort('three-figures'))
  const source = { ref: 'manual', page: '31', confidence: 'read' }
  const notStated = { kind: 'not stated' }
  // Typed by hand from docs/notation.md.
  expect(read.ok && read.value).toEqual({
    kind: 'spec-sheet',
    version: '1.0',
    id: 'nordli-ferd-2',
    revision: '2026-11',
    machine: {
      make: 'Nordli',
      model: 'Ferd 2',
      type: 'utility machine',
      variants: { standard: { name: 'Ferd 2' } },
      axles: {},
      supports: {},
    },
    sources: { manual: { title: "Ferd 2 owner's manual", document: 'other' } },
    gearcases: {
      rear: {
        name: 'rear final drive',
        type: 'final drive',
        access: notStated,
        oilSpace: {
          kind: 'own',
          oils: notStated,
          fill: { drainAndRefill: { kind: 'nominal', value: '300', unit: 'mL', source }, method: notStated },
        },
        openings: {
          drain: {
            name: 'drain plug',
            uses: [{ role: 'drain' }],
            drive: notStated,
            tightening: {
              kind: 'torque',
              torque: { kind: 'nominal', value: '25', unit: 'N.m' },
              threadCondition: 'not stated',
              source,
            },
            seals: [notStated],
            place: notStated,
          },
        },
        emptying: [{ kind: 'drain plug', opening: 'drain' }],
      },
    },
    services: {
      'rear-oil-change': {
        name: 'rear oil change',
        task: 'change',
        gearcases: ['rear'],
        intervals: {
          repeat: { kind: 'interval', hours: '200', period: 'P12M', source },
          countFrom: 'completion',
        },
      },
    },
  })
})

const drain = { drive: 'hand', seals: 'none' }
const gearcase = (openings: object, fill: unknown = '1 L, by quantity') => ({
  type: 'gearbox',
  access: 'from the ground',
  oilSpace: { oils: 'SAE 90', fill },
  openings,
})
const found = (sheet: object) =>
  parseSpecSheet({ ...sheetHead, ...sheet }).findings.map(({ code, path }) => [code, path])

describe('what cannot be left out', () => {
  test('the use of an opening whose id is none', () => {
    expect(found({ gearcases: { rear: gearcase({ top: drain, fill: drain }) } })).toEqual([
      ['spec/missing-key', '/gearcases/rear/openings/top'],
    ])
  })

  test('an ambiguous opening of a fill method, at the text that needs it', () => {
    const openings = { fill: drain, upper: { ...drain, uses: 'fill' } }
    expect(found({ gearcases: { rear: gearcase(openings) } })).toEqual([
      ['spec/missing-key', '/gearcases/rear/oilSpace/fill'],
    ])
    expect(found({ gearcases: { rear: gearcase(openings, '1 L, by quantity at upper') } })).toEqual([])
  })

  test('a misspelled key is one mistake with a similar key, though the key was filled in', () => {
    const openings = { drain: { drive: 'hand', seal: 'none' } }
    const read = parseSpecSheet({ ...sheetHead, gearcases: { rear: gearcase(openings, '1 L') } })
    expect(read.findings).toMatchObject([
      {
        code: 'spec/unknown-key',
        path: '/gearcases/rear/openings/drain/seal',
        params: { key: 'seal', didYouMean: 'seals' },
      },
    ])
  })

  test('the gearcases of a service where the sheet has two', () => {
    const rear = gearcase({ fill: drain })
    expect(found({ gearcases: { rear, front: rear }, services: { change: '200 h' } })).toEqual([
      ['spec/missing-key', '/services/change'],
    ])
    expect(found({ gearcases: { rear }, services: { change: '200 h' } })).toEqual([])
  })

  test('the id of a source where the sheet has two and the section names none', () => {
    const sources = { manual: 'Ferd 2 manual', bulletin: 'Bulletin 7' }
    const sheet = { sources, gearcases: { rear: gearcase({ fill: drain }, '1 L [p. 3], by quantity') } }
    expect(found(sheet)).toEqual([['spec/bad-notation', '/gearcases/rear/oilSpace/fill']])
    expect(
      found({
        ...sheet,
        source: 'manual',
        gearcases: { rear: gearcase({ fill: drain }, '1 L, by quantity [p. 3]') },
      }),
    ).toEqual([])
  })

  test('an unknown source of an override, once', () => {
    const sources = { manual: 'Ferd 2 manual', bulletin: 'Bulletin 7' }
    const override = { when: 'model years 2019', source: 'p. 3', set: { '/machine/mass': '640 kg' } }
    expect(found({ sources, overrides: [override] })).toEqual([['spec/bad-notation', '/overrides/0/source']])
  })
})

describe('where it was written', () => {
  const read = (sheet: object) => {
    const result = parseSpecSheet({ ...sheetHead, ...sheet })
    if (!result.ok) throw new Error(JSON.stringify(result.findings))
    return result
  }
  const sheet = {
    source: 'p. 3',
    gearcases: {
      rear: gearcase({
        fill: { ...drain, tightening: '20 N·m then 30 N·m (22 lbf·ft), dry [p. 4]' },
        drain: { ...drain, tightening: '25 N·m' },
      }),
    },
    services: { change: '200 h, 12 months' },
    overrides: [{ when: 'market NO', set: { '/gearcases/rear/oilSpace/fill/drainAndRefill': '1.1 L' } }],
  }
  const opening = '/gearcases/rear/openings/fill'
  test.each([
    ['/machine/model', '/machine/model', undefined],
    [`${opening}/tightening/torque/printed/0`, `${opening}/tightening`, [20, 29]],
    [`${opening}/tightening/torque/value`, `${opening}/tightening`, [12, 30]],
    [`${opening}/tightening/stages/0`, `${opening}/tightening`, [0, 6]],
    [`${opening}/tightening/source/page`, `${opening}/tightening`, [37, 41]],
    [`${opening}/tightening/threadCondition`, `${opening}/tightening`, undefined],
    [`${opening}/seals/0`, `${opening}/seals`, undefined],
    [`${opening}/name`, opening, undefined],
    ['/gearcases/rear/emptying/0', '/gearcases/rear', undefined],
    ['/gearcases/rear/oilSpace/kind', '/gearcases/rear/oilSpace', undefined],
    ['/gearcases/rear/oilSpace/fill/drainAndRefill/value', '/gearcases/rear/oilSpace/fill', [0, 3]],
    ['/services/change/intervals/repeat/period', '/services/change', [7, 16]],
    ['/services/change/intervals/countFrom', '/services/change', undefined],
    [
      '/overrides/0/set/0/path',
      '/overrides/0/set/~1gearcases~1rear~1oilSpace~1fill~1drainAndRefill',
      undefined,
    ],
    [
      '/overrides/0/set/0/to/value',
      '/overrides/0/set/~1gearcases~1rear~1oilSpace~1fill~1drainAndRefill',
      undefined,
    ],
  ])('%s is at %s', (full, path, range) => {
    const { places = [], value } = read(sheet)
    expect(readPointer(value, full), 'the place is in the full form').toBeDefined()
    expect(findWritten(places, full)).toEqual(range === undefined ? { path } : { path, range })
    expect(readPointer({ ...sheetHead, ...sheet }, path), 'the place was written').toBeDefined()
  })

  test('a finding of a rule points there, and a full sheet has no such places', () => {
    const slip = { rear: gearcase({ fill: { ...drain, tightening: '30 N·m (60 lbf·ft)' } }) }
    const { value: document, places = [] } = read({ gearcases: slip })
    const set = {
      sheets: [{ document, places }],
      logs: [],
      toolboxes: [],
      stocks: [],
      procedures: [],
      records: [],
    }
    const disagreements = checkDocuments(set).filter(({ code }) => code.startsWith('quantity/'))
    expect(disagreements).toMatchObject([{ path: `${opening}/tightening`, range: [8, 17] }])
    expect(parseSpecSheet(readFull('tind-4'))).not.toHaveProperty('places')
  })
})
