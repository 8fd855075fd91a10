import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { applyPatch } from '../../src/base/applyPatch.js'
import type { Finding, Result } from '../../src/base/finding.js'
import {
  parseDocument,
  parseDocumentText,
  parseMachineLog,
  parseProcedure,
  parseServiceRecord,
  parseSpecSheet,
  parseStock,
  parseToolbox,
} from '../../src/v1/spec.js'
import { readFixture, readGoodDocuments } from '../support/fixtures.js'
import { law } from '../support/law.js'
import { SHAPE_MISTAKES } from './shapeMistakes.js'

const list = (result: Result<unknown>) => result.findings.map(({ code, path }) => [code, path])
const sorted = (pairs: readonly (readonly string[])[]) => pairs.map((pair) => pair.join(' ')).toSorted()

describe('good documents', () => {
  test.each(readGoodDocuments().map((goodDocument) => [goodDocument.file, goodDocument] as const))(
    '%s',
    (file, goodDocument) => {
      expect(parseDocumentText('any', goodDocument.text, { name: file })).toEqual({
        ok: true,
        value: goodDocument.value,
        findings: [],
      })
    },
  )
})

test('an override may state a temperature below zero', () => {
  const coldSheet = {
    kind: 'value',
    path: '/gearcases/rear/drainTemperature',
    to: { kind: 'limits', min: '-10', unit: 'degC', printed: [{ kind: 'limits', min: '14', unit: 'degF' }] },
  }
  const sheet = readFixture('cover-no-drain.sheet.json')
  expect(
    parseSpecSheet(applyPatch(sheet, [{ op: 'add', path: '/overrides/0/set/-', value: coldSheet }])).ok,
  ).toBe(true)
})

describe('one finding for one mistake', () => {
  test.each(
    SHAPE_MISTAKES.map((mistake) => [JSON.stringify([mistake.of, ...mistake.patch]), mistake] as const),
  )('%s', (_name, { of, patch, found }) => {
    const result = parseDocument('any', applyPatch(readFixture(of), patch))
    expect(result.ok).toBe(false)
    expect(sorted(list(result) as string[][])).toEqual(sorted(found))
  })

  test('every cure makes its own finding go away', () => {
    let curedCount = 0
    for (const { of, patch } of SHAPE_MISTAKES) {
      const badDocument = applyPatch(readFixture(of), patch)
      for (const finding of parseDocument('any', badDocument).findings) {
        if (finding.cures === undefined) continue
        const after = parseDocument('any', applyPatch(badDocument, finding.cures))
        expect(list(after)).not.toContainEqual([finding.code, finding.path])
        curedCount += 1
      }
    }
    expect(curedCount).toBeGreaterThan(10)
  })

  test('a similar valid name is suggested', () => {
    const meant = (of: string, path: string, value: unknown) => {
      const patched = applyPatch(readFixture(of), [{ op: 'replace', path, value }])
      const [first]: readonly Finding[] = parseDocument('any', patched).findings
      return first?.params['didYouMean']
    }
    const dryFillPath = '/gearcases/hub/oilSpace/fill/dryFill'
    expect(meant('hub-reduction.sheet.json', `${dryFillPath}/unit`, 'l')).toBe('L')
    expect(meant('hub-reduction.sheet.json', `${dryFillPath}/unit`, 'barrel')).toBe(undefined)
    expect(meant('hub-reduction.sheet.json', `${dryFillPath}/unit`, 'qt us')).toBe('qt_us')
    expect(meant('hub-reduction.sheet.json', `${dryFillPath}/value`, '0,80')).toBe('0.80')
    expect(meant('hub-reduction.sheet.json', `${dryFillPath}/value`, '0,125')).toBe('0.125')
    expect(meant('hub-reduction.sheet.json', `${dryFillPath}/value`, '1,250')).toBe(undefined)
    expect(meant('full.service-record.json', '/entries/0/leaks', 'weaping')).toBe('weeping')
    expect(meant('full.service-record.json', '/id', 'Visit 7')).toBe('visit-7')
  })
})

describe('the head of a document', () => {
  const parsers = [
    ['hub-reduction.sheet.json', parseSpecSheet, 'spec-sheet'],
    ['full.machine-log.json', parseMachineLog, 'machine-log'],
    ['full.toolbox.json', parseToolbox, 'toolbox'],
    ['full.stock.json', parseStock, 'stock'],
    ['full.procedure.json', parseProcedure, 'procedure'],
    ['full.service-record.json', parseServiceRecord, 'service-record'],
  ] as const

  test('each function takes its own kind and names it when another came', () => {
    for (const [file] of parsers)
      for (const [ownFile, parse, kind] of parsers) {
        const document = readFixture(file)
        const result = parse(document)
        expect(parseDocument(kind, document)).toEqual(result)
        expect(parseDocumentText(kind, JSON.stringify(document))).toEqual(result)
        if (file === ownFile) expect(result).toEqual({ ok: true, value: document, findings: [] })
        else {
          expect(list(result)).toEqual([['spec/wrong-kind', '/kind']])
          expect(result.findings[0]?.params).toMatchObject({ found: document['kind'] })
        }
      }
  })

  test('findings name the document, its id and the name of the caller', () => {
    const badToolbox = { ...readFixture('full.toolbox.json'), chocks: -1 }
    expect(parseToolbox(badToolbox, { name: 'box.json' }).findings[0]?.document).toEqual({
      kind: 'toolbox',
      id: 'station-box',
      name: 'box.json',
    })
    expect(parseToolbox({ ...badToolbox, id: 'No Id' }).findings[0]?.document).toEqual({ kind: 'toolbox' })
    expect(parseDocument('any', {}).findings[0]?.document).toEqual({ kind: 'text' })
  })

  test('a newer version is named with the one that can be read, and nothing else is complained of', () => {
    const newer = { ...readFixture('full.stock.json'), version: '1.7', shelf: 'new key of 1.7' }
    const { findings } = parseStock(newer)
    expect(findings).toHaveLength(1)
    expect(findings[0]).toMatchObject({
      code: 'spec/wrong-version',
      params: { found: '1.7', readable: ['1.0'] },
    })
  })

  test('a repeated key is a finding of the document that it is in', () => {
    const text = JSON.stringify(readFixture('full.stock.json')).replace('{', '{"name":"first",')
    expect(parseDocumentText('stock', text, { name: 'shelf.json' })).toEqual({
      ok: false,
      findings: [
        {
          code: 'spec/duplicate-key',
          severity: 'error',
          document: { kind: 'stock', id: 'station-shelf', name: 'shelf.json' },
          path: '/name',
          params: { key: 'name' },
        },
      ],
    })
  })

  test('a misspelled kind does not hide the rest', () => {
    const badStock = { ...readFixture('full.stock.json'), kind: 'stok', name: '' }
    expect(list(parseDocument('any', badStock))).toEqual([
      ['spec/wrong-kind', '/kind'],
      ['spec/empty-text', '/name'],
    ])
  })
})

describe('the argument is not changed', () => {
  test('the value is a copy, and the input is not changed', () => {
    const input = readFixture('full.stock.json')
    const before = JSON.stringify(input)
    const result = parseStock(input)
    expect(result.ok && result.value).not.toBe(input)
    expect(JSON.stringify(input)).toBe(before)
  })

  test('misuse throws', () => {
    expect(() => parseDocument('any', {}, null as never)).toThrow(TypeError)
    expect(() => parseDocument('any', {}, { name: 3 as never })).toThrow(/options.name/)
    expect(() => parseDocument('invoice' as never, {})).toThrow(RangeError)
    expect(() => parseDocument('toString' as never, {})).toThrow(RangeError)
    expect(() => parseDocumentText({} as never, '{}')).toThrow(TypeError)
    const misspeltField = { nam: 'sheet.json' }
    expect(() => parseSpecSheet({}, misspeltField as never)).toThrow('did you mean name?')
    expect(() => parseDocumentText('stock', '{', misspeltField as never)).toThrow('did you mean name?')
    expect(() => parseDocumentText('any', 3 as never)).toThrow(TypeError)
    expect(() => parseDocumentText('any', '{}', null as never)).toThrow(TypeError)
  })
})

describe('the parser of each kind', () => {
  const documents = readGoodDocuments().map(({ value }) => value)
  const paths = (value: unknown, path = ''): readonly string[] =>
    typeof value === 'object' && value !== null
      ? Object.entries(value).flatMap(([key, inner]) => {
          const at = `${path}/${key.replaceAll('~', '~0').replaceAll('/', '~1')}`
          return [at, ...paths(inner, at)]
        })
      : []

  test('says what parseDocument says of its kind, whatever one value is changed to (law)', () => {
    const changed = fc.constantFrom(...documents).chain((document) =>
      fc.record({
        kind: fc.constant(document['kind']),
        path: fc.constantFrom(...paths(document)),
        value: fc.oneof(fc.jsonValue({ maxDepth: 1 }), fc.constantFrom('0', 'x', '2023-10-06', 'mL', 1)),
        document: fc.constant(document),
      }),
    )
    let readCount = 0
    law(500, changed, ({ document, kind, path, value }) => {
      const data = applyPatch(document, [{ op: 'replace', path, value }])
      const readers = {
        'spec-sheet': parseSpecSheet,
        'machine-log': parseMachineLog,
        toolbox: parseToolbox,
        stock: parseStock,
        procedure: parseProcedure,
        'service-record': parseServiceRecord,
      }
      const read = readers[kind as keyof typeof readers](data)
      expect(read).toEqual(parseDocument(kind as keyof typeof readers, data))
      if (read.ok) readCount += 1
      else expect(read.findings.some(({ severity }) => severity === 'error')).toBe(true)
    })
    expect(readCount).toBeGreaterThan(5)
  })
})
