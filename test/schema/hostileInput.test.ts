import { createContext, runInContext } from 'node:vm'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  MAX_DEPTH,
  MAX_KEYS,
  MAX_MISTAKES,
  MAX_STRING_LENGTH,
  MAX_TEXT_LENGTH,
  MAX_VALUES,
} from '../../src/base/documentLimits.js'
import type { Finding } from '../../src/base/finding.js'
import { scanJsonText } from '../../src/schema/scanJsonText.js'
import { parseDocument, parseDocumentText, parseStock } from '../../src/v1/spec.js'
import { readFixture } from '../support/fixtures.js'
import { law } from '../support/law.js'

const stock = () => readFixture('full.stock.json')
/** With the params of any code, to read them by name. */
const findingsOf = (input: unknown): readonly Finding[] => parseStock(input).findings
const found = (input: unknown) =>
  findingsOf(input).map(({ code, path, params }) => [
    code,
    path,
    params['found'] ?? params['key'] ?? params['limit'],
  ])
const withNote = (note: unknown) => Object.assign(stock(), { header: note })

describe('data that is not plain', () => {
  class Shelf {
    name = 'x'
  }
  const sparseList = ['a', 'b']
  delete sparseList[0]
  const listWithKey = Object.assign(['GL-4'], { more: 1 })
  const getter = Object.defineProperty({}, 'name', {
    enumerable: true,
    get: () => {
      throw new Error('a getter was run')
    },
  })
  const hiddenName = Object.defineProperty({}, 'name', { value: 'x' })
  const listGetter = Object.defineProperty(['a'], 0, {
    get: () => {
      throw new Error('a getter was run')
    },
  })
  const proxy = new Proxy(
    {},
    {
      ownKeys: () => {
        throw new Error('a trap was run')
      },
    },
  )
  test.each([
    ['undefined', undefined, 'undefined', '/header'],
    ['a function', () => 1, 'function', '/header'],
    ['a symbol', Symbol('s'), 'symbol', '/header'],
    ['a BigInt', 10n, 'bigint', '/header'],
    ['NaN', Number.NaN, 'not-finite', '/header'],
    ['Infinity', Number.POSITIVE_INFINITY, 'not-finite', '/header'],
    ['a date', new Date(0), 'class-instance', '/header'],
    ['a map', new Map(), 'class-instance', '/header'],
    ['an instance', new Shelf(), 'class-instance', '/header'],
    ['a boxed string', Object('x'), 'class-instance', '/header'],
    ['an heir of data', Object.create({ name: 'x' }), 'class-instance', '/header'],
    ['a sparse list', sparseList, 'sparse-list', '/header'],
    ['an endless sparse list', new Array(4_294_967_295), 'sparse-list', '/header'],
    ['a list with keys', listWithKey, 'list-with-keys', '/header'],
    ['a getter', getter, 'accessor', '/header/name'],
    ['a getter in a list', listGetter, 'accessor', '/header/0'],
    ['a hidden property', hiddenName, 'hidden-property', '/header/name'],
  ])('%s is a finding, and nothing of it is run', (_name, note, what, path) => {
    const shape = path === '/header' ? [] : [['spec/wrong-type', '/header', expect.anything()]]
    expect(found(withNote(note))).toEqual([['spec/not-plain-data', path, what], ...shape])
  })

  test('a proxy that throws, alone or inside', () => {
    expect(found(proxy)).toEqual([['spec/not-plain-data', '', 'unreadable']])
    expect(found(withNote(proxy))).toEqual([['spec/not-plain-data', '', 'unreadable']])
  })

  test('symbol keys', () => {
    expect(found(Object.assign(stock(), { [Symbol('s')]: 1 }))).toEqual([
      ['spec/not-plain-data', '', 'symbol-key'],
    ])
  })

  test('a document that contains itself', () => {
    const cyclic = stock()
    cyclic['containers'] = { ...(cyclic['containers'] as object), self: cyclic }
    expect(found(cyclic)).toEqual([['spec/not-plain-data', '/containers/self', 'cycle']])
  })

  test('the same part twice is no cycle', () => {
    const sharedStock = stock()
    const seals = sharedStock['seals'] as Record<string, unknown>
    seals['again'] = seals['odd']
    expect(parseStock(sharedStock).ok).toBe(true)
  })

  test('parts that unfold without end are refused before they are unfolded', () => {
    let part: unknown = 'x'
    for (let level = 0; level < 28; level++) part = { left: part, right: part }
    expect(found(withNote(part)).map(([code]) => code)).toEqual(['spec/too-large'])
  })

  test.each([
    ['undefined', undefined, 'spec/not-plain-data'],
    ['a function', () => stock(), 'spec/not-plain-data'],
    ['a list', [stock()], 'spec/wrong-type'],
    ['null', null, 'spec/wrong-type'],
    ['a number', 7, 'spec/wrong-type'],
    ['a text', 'stock', 'spec/wrong-type'],
  ])('%s instead of a document', (_name, input, code) => {
    expect(parseStock(input).findings.map((finding) => [finding.code, finding.path])).toEqual([[code, '']])
    expect(parseDocument('any', input).findings.map((finding) => [finding.code, finding.path])).toEqual([
      [code, ''],
    ])
  })

  test('plain data of another realm and without a prototype is plain', () => {
    const text = JSON.stringify(stock())
    const foreignValue: unknown = runInContext(`JSON.parse(${JSON.stringify(text)})`, createContext({}))
    expect(parseStock(foreignValue)).toMatchObject({ ok: true })
    expect(parseStock(Object.assign(Object.create(null), stock()))).toMatchObject({ ok: true })
  })
})

describe('names of built-ins', () => {
  test.each(['__proto__', 'constructor', 'prototype'])('the key %s is a finding wherever it is', (key) => {
    const text = JSON.stringify(stock())
    const placed = [
      [text.replace('"containers":{', `"containers":{"${key}":{},`), `/containers/${key}`],
      [text.replace('{', `{"${key}":{"polluted":true},`), `/${key}`],
      [text.replace('"oil":{', `"oil":{"${key}":1,`), `/containers/fjellgir-1l/oil/${key}`],
    ] as const
    for (const [badStock, path] of placed)
      expect(
        parseDocumentText('any', badStock).findings.map((finding) => [finding.code, finding.path]),
      ).toEqual([['spec/forbidden-key', path]])
    expect(({} as Record<string, unknown>)['polluted']).toBe(undefined)
  })

  test('names of methods are unknown keys like any other', () => {
    for (const key of ['toString', 'hasOwnProperty', 'valueOf'])
      expect(found({ ...stock(), [key]: 1 })).toEqual([['spec/unknown-key', `/${key}`, key]])
  })
})

describe('depth and length', () => {
  const nested = (levels: number, inner = '"x"') => `${'['.repeat(levels)}${inner}${']'.repeat(levels)}`
  const noteText = (note: string) => JSON.stringify(stock()).replace('{', `{"nested":${note},`)

  test('one level at the limit, one past it, and nine thousand', () => {
    // The document itself is the first level.
    const codes = (levels: number) =>
      parseDocumentText('any', noteText(nested(levels))).findings.map((finding) => finding.code)
    expect(codes(MAX_DEPTH - 2)).toEqual(['spec/unknown-key'])
    expect(codes(MAX_DEPTH - 1)).toEqual(['spec/unknown-key'])
    expect(codes(MAX_DEPTH)).toEqual(['spec/too-deep'])
    expect(codes(9000)).toEqual(['spec/too-deep'])
    expect(parseDocumentText('any', nested(9000)).findings.map((finding) => finding.code)).toEqual([
      'spec/too-deep',
    ])
    expect(parseDocumentText('any', '['.repeat(1_000_000)).findings[0]?.code).toBe('spec/too-deep')
  })

  test('the same handed in as data', () => {
    let deepNote: unknown = 'x'
    for (let level = 0; level < 9000; level++) deepNote = [deepNote]
    const below = `/nested${'/0'.repeat(MAX_DEPTH - 1)}`
    expect(found({ ...stock(), nested: deepNote })).toEqual([
      ['spec/too-deep', below, MAX_DEPTH],
      ['spec/unknown-key', '/nested', 'nested'],
    ])
  })

  test('a text at the limit, one character past it, and ten million', () => {
    const codes = (length: number) =>
      parseStock(withNote('a'.repeat(length))).findings.map((finding) => finding.code)
    expect(codes(MAX_STRING_LENGTH - 1)).toEqual([])
    expect(codes(MAX_STRING_LENGTH)).toEqual([])
    expect(codes(MAX_STRING_LENGTH + 1)).toEqual(['spec/too-long'])
    const hugeText = 'a'.repeat(10_000_000)
    const { findings } = parseDocumentText('any', JSON.stringify(withNote(hugeText)))
    expect(findings).toHaveLength(1)
    expect(findings[0]).toMatchObject({
      code: 'spec/too-long',
      path: '/header',
      params: { length: 10_000_000 },
    })
    expect(String(findingsOf(withNote(hugeText))[0]?.params['found']).length).toBeLessThanOrEqual(80)
    expect(parseDocumentText('any', hugeText).findings[0]?.code).toBe('spec/not-json')
    expect(parseDocument('any', hugeText).findings[0]?.code).toBe('spec/too-long')
    expect(parseStock({ ...stock(), [hugeText]: 1 }).findings.map((finding) => finding.code)).toEqual([
      'spec/too-long',
    ])
  })

  test('a whole text past the limit is not even scanned', () => {
    const text = ' '.repeat(MAX_TEXT_LENGTH + 1)
    expect(parseDocumentText('any', text).findings[0]).toMatchObject({
      code: 'spec/too-long',
      params: { length: MAX_TEXT_LENGTH + 1, limit: MAX_TEXT_LENGTH },
    })
  })

  test('foreign text is cut in findings, never through a character', () => {
    for (const size of [78, 79, 80, 81, 200]) {
      const shownText = String(findingsOf({ ...stock(), id: '😀'.repeat(size) })[0]?.params['found'])
      expect(shownText.length).toBeLessThanOrEqual(80)
      // A lone surrogate cannot be written in a URI.
      expect(() => encodeURIComponent(shownText)).not.toThrow()
    }
  })
})

test('any value gives findings or a document, and never throws', () => {
  law(
    200,
    fc.anything({
      withBigInt: true,
      withDate: true,
      withMap: true,
      withNullPrototype: true,
      withSparseArray: true,
    }),
    (input) => {
      const result = parseDocument('any', input)
      expect(result.ok || result.findings.length > 0).toBe(true)
    },
  )
})

describe('very much data', () => {
  const codesOf = (text: string) => parseDocumentText('any', text).findings.map(({ code }) => code)
  const textOf = (values: number) => `[${'1,'.repeat(values - 2)}1]`

  test('1,000,001 values are refused, and not 1,000,000', () => {
    expect(codesOf(textOf(MAX_VALUES))).toEqual(['spec/wrong-type'])
    expect(codesOf(textOf(MAX_VALUES + 1))).toEqual(['spec/too-large'])
    const items = new Array(MAX_VALUES - 1).fill(1)
    expect(found(items)).toEqual([['spec/wrong-type', '', 'list']])
    expect(found([...items, 1])).toEqual([['spec/too-large', '', MAX_VALUES]])
  })

  test('a list of 20 million items is refused where it gets too long', () => {
    const text = textOf(20_000_000)
    expect(scanJsonText(text)).toEqual({ repeatedKeys: [], tooLarge: MAX_VALUES })
    // What follows the limit is not read, so a syntax error there is not found.
    expect(codesOf(`${text}]`)).toEqual(['spec/too-large'])
    const items = new Array(20_000_000).fill(1)
    expect(found(items)).toEqual([['spec/too-large', '', MAX_VALUES]])
  })

  test('an object of 5001 keys is refused, and not one of 5000', () => {
    const keys = (count: number) =>
      `{"kind":"stock",${Array.from({ length: count - 1 }, (_, at) => `"k${at}":1`).join(',')}}`
    expect(codesOf(keys(MAX_KEYS))).not.toContain('spec/too-large')
    const above = keys(MAX_KEYS + 1)
    const refusal = { code: 'spec/too-large', params: { limit: MAX_KEYS } }
    expect(parseDocumentText('any', above).findings).toMatchObject([refusal])
    expect(parseDocument('any', JSON.parse(above)).findings).toMatchObject([refusal])
  })

  // A quadratic search would take many minutes: a bound that a slow machine keeps.
  test.each([
    ['records without keys', { records: new Array(200_000).fill({}) }],
    ['empty records', { records: new Array(200_000).fill(null) }],
    ['records with a wrong key', { records: new Array(100_000).fill({ dat: 1 }) }],
    ['lists in a list', { records: new Array(200_000).fill([]) }],
  ])(
    '%s give about 10,000 findings at most, and one about the others',
    { timeout: 60_000 },
    (_what, change) => {
      const log = { ...readFixture('full.machine-log.json'), ...change }
      const findings = parseDocument('any', log).findings
      const last = findings.at(-1)
      expect(last).toMatchObject({
        code: 'spec/more-mistakes',
        path: '',
        params: { shown: findings.length - 1 },
      })
      expect(findings.length).toBeGreaterThan(1000)
      expect(findings.length).toBeLessThan(1.1 * MAX_MISTAKES)
    },
  )

  test('10,000 findings are all listed', { timeout: 60_000 }, () => {
    const containers = Object.fromEntries(Array.from({ length: 2500 }, (_, at) => [`c${at}`, {}]))
    const findings = parseDocument('any', { ...stock(), containers }).findings
    expect(findings.every(({ code }) => code === 'spec/missing-key')).toBe(true)
    expect(new Set(findings.map(({ path }) => path)).size).toBe(2500)
  })

  test('a mistake after the first 5,000 records is found', () => {
    const log = readFixture('full.machine-log.json')
    const meters = log['meters'] as { hours: { readings: object[] } }
    const readings = [...meters.hours.readings, ...new Array(6000).fill({ date: '2031-01-01', value: 5 })]
    readings[5999] = { date: '2031-01-01', value: '5' }
    const data = { ...log, meters: { ...meters, hours: { ...meters.hours, readings } } }
    expect(parseDocument('any', data).findings.map(({ path }) => path)).toEqual([
      '/meters/hours/readings/5999/value',
    ])
  })
})
