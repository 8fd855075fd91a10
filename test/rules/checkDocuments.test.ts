import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { applyPatch, type PatchOperation } from '../../src/base/applyPatch.js'
import { RETIRED_CODES } from '../../src/base/retiredCodes.js'
import { allRules } from '../../src/rules/allRules.js'
import { checkDocuments, type DocumentSet, defineRule, type SheetIndex } from '../../src/v1/rules.js'
import type { ServiceRecord, SpecSheet } from '../../src/v1/spec.js'
import { law } from '../support/law.js'
import { goodFolders, readFolder, setOf } from './support/goodSets.js'
import { shapeRuleCodes } from './support/registry.js'
import { readVectors, runVector } from './support/vectors.js'

const EMPTY: DocumentSet = { sheets: [], logs: [], toolboxes: [], stocks: [], procedures: [], records: [] }
const TODAY = '2023-11-02'

function tindDocuments(): DocumentSet {
  const { procedures: _procedures, records: _records, ...others } = setOf(readFolder('examples/tind-4'))
  return { ...others, procedures: [], records: [] }
}

function patchSheet(set: DocumentSet, patch: Parameters<typeof applyPatch>[1]): DocumentSet {
  const sheets = set.sheets.map((named) => ({
    ...named,
    document: applyPatch(named.document, patch) as SpecSheet,
  }))
  return { ...set, sheets }
}

describe('good examples', () => {
  it.each(goodFolders())('%s has nothing to correct', (folder) => {
    expect(checkDocuments(setOf(readFolder(folder)), { today: TODAY })).toEqual([])
  })

  it('have no findings when all sheets and logs are in one set', () => {
    const { sheets, logs } = setOf(goodFolders().flatMap(readFolder))
    expect(checkDocuments({ ...EMPTY, sheets, logs }, { today: TODAY })).toEqual([])
  })

  it('make up at least five machines', () => {
    expect(goodFolders().length).toBeGreaterThanOrEqual(5)
  })
})

describe('waivers', () => {
  const path = '/gearcases/front/drainTemperature'
  const reversed = {
    op: 'replace',
    path,
    value: { kind: 'limits', min: '50', max: '30', unit: 'degC' },
  } as const
  const waiver = { code: 'spec/limits-reversed', path, reason: 'The manual prints it like this on page 58.' }

  it('keep a waived finding in its place, as information that names waiver and reason', () => {
    const findings = checkDocuments(patchSheet(tindDocuments(), [reversed]))
    const waivedFindings = checkDocuments(
      patchSheet(tindDocuments(), [reversed, { op: 'add', path: '/waivers', value: [waiver] }]),
    )
    expect(findings.map(({ severity }) => severity)).toEqual(['error'])
    expect(waivedFindings).toEqual([
      { ...findings[0], severity: 'info', waived: { path: '/waivers/0', reason: waiver.reason } },
    ])
  })

  it('waive neither another code nor another place, and say that they waive nothing', () => {
    for (const wrongOptions of [
      { ...waiver, code: 'spec/tolerance-too-large' },
      { ...waiver, path: '/gearcases/rear/drainTemperature' },
    ]) {
      const found = checkDocuments(
        patchSheet(tindDocuments(), [reversed, { op: 'add', path: '/waivers', value: [wrongOptions] }]),
      )
      expect(found.map(({ code, severity }) => [code, severity])).toEqual([
        ['spec/limits-reversed', 'error'],
        ['spec/waiver-without-finding', 'warning'],
      ])
    }
  })

  it('with a retired code apply to findings of its present code', () => {
    const place = '/services/gear-oil-change/intervals'
    const patch: readonly PatchOperation[] = [
      { op: 'add', path: `${place}/repeat/period`, value: 'P3M' },
      { op: 'add', path: `${place}/severe`, value: { kind: 'factor', factor: '0.5', criteria: 'mud' } },
    ]
    const found = (code: string) => {
      const waiver = { code, path: `${place}/severe/factor`, reason: 'As the manual prints it.' }
      const set = patchSheet(tindDocuments(), [...patch, { op: 'add', path: '/waivers', value: [waiver] }])
      return checkDocuments(set).map((finding) => [finding.code, finding.severity])
    }
    expect(found('interval/factor-leaves-part')).toEqual([['interval/fractional-period', 'info']])
    expect(found('interval/fractional-period')).toEqual([['interval/fractional-period', 'info']])
    expect(found('interval/of-nothing')).toEqual([
      ['interval/fractional-period', 'error'],
      ['spec/waiver-without-finding', 'warning'],
    ])
  })

  it('waive what a rule of the caller finds', () => {
    const rule = defineRule({
      code: 'house/invented',
      severity: 'warning',
      about: 'spec-sheet',
      check: () => [{ path: '/machine', params: {} }],
    })
    const value = [{ code: 'house/invented', path: '/machine', reason: 'Wanted so.' }]
    const set = patchSheet(tindDocuments(), [{ op: 'add', path: '/waivers', value }])
    const found = checkDocuments(set, {}, [rule])
    expect(found.map(({ code, severity }) => [code, severity])).toEqual([['house/invented', 'info']])
  })
})

describe('a rule of the caller', () => {
  it('is the rule that was given, and its findings are those of its check, in any number (law)', () => {
    const places = fc.array(fc.constantFrom('/machine', '/gearcases', '/services', '/id'), { maxLength: 6 })
    const severities = fc.constantFrom('error' as const, 'warning' as const, 'info' as const)
    law(50, places, severities, (paths, severity) => {
      const given = {
        code: 'house/invented',
        severity,
        about: 'spec-sheet',
        check: () => paths.map((path) => ({ path, params: {} })),
      } as const
      const rule = defineRule(given)
      expect(rule).toBe(given)
      const found = checkDocuments(tindDocuments(), {}, [rule]).filter(({ code }) => code === given.code)
      expect(found.map(({ path }) => path).sort()).toEqual([...paths].sort())
      expect(new Set(found.map((finding) => finding.severity))).toEqual(new Set(paths.map(() => severity)))
    })
  })

  it('is given the index of the sheet, made once for all rules', () => {
    const seen = new Set<SheetIndex>()
    const unreadRule = defineRule({
      code: 'house/page-missing',
      severity: 'info',
      about: 'spec-sheet',
      check: ({ sheet }) => {
        seen.add(sheet)
        return sheet.tightenings
          .filter(({ tightening }) => tightening.source?.page === undefined)
          .map(({ path, on }) => ({ path, params: { part: on.name } }))
      },
    })
    const tornPageRule = defineRule({ ...unreadRule, code: 'house/page-torn' })
    const drain = '/gearcases/front/openings/drain/tightening'
    const set = patchSheet(tindDocuments(), [{ op: 'remove', path: `${drain}/source/page` }])
    const found = checkDocuments(set, {}, [unreadRule, tornPageRule])
    expect(found.map(({ code, path }) => [code, path])).toContainEqual(['house/page-missing', drain])
    expect(found.filter(({ path }) => path === drain).map(({ code }) => code)).toEqual([
      'house/page-missing',
      'house/page-torn',
    ])
    expect(seen.size).toBe(1)
  })

  it('gets a record with its facts from sheet and log', () => {
    const rule = defineRule({
      code: 'house/entry',
      severity: 'info',
      about: 'service-record',
      check: ({ record, log, sheet }) =>
        record.entries.map(({ path, gearcase }) => ({
          path,
          params: { gearcase: gearcase.name, log: log?.id, sheet: sheet?.document.id },
        })),
    })
    const fullSet = setOf(readFolder('examples/tind-4'))
    const found = checkDocuments(fullSet, {}, [rule]).filter(({ code }) => code === 'house/entry')
    expect(found.length).toBeGreaterThan(1)
    for (const { params } of found)
      expect(params).toMatchObject({ log: 'station-2', sheet: 'hallbrekka-tind-4' })
  })
})

describe('the runner', () => {
  it('names each document', () => {
    const vector = readVectors().find(({ file }) => file === 'record/leak-left.json')
    if (vector === undefined) throw new Error('the vector record/leak-left.json is gone')
    expect(runVector(vector.vector).map(({ document, path }) => ({ document, path }))).toEqual([
      {
        document: { kind: 'service-record', id: 'station-2-2023-10-06', name: 'record.json' },
        path: '/entries/1/leaks',
      },
    ])
  })

  it('asks the record rules of records inside a log, and points into the log', () => {
    const record = setOf(readFolder('examples/tind-4')).records[0]?.document
    const logs = tindDocuments().logs.map(({ document }) => ({
      name: 'log.json',
      document: { ...document, records: [...document.records, { ...record, readings: {} } as ServiceRecord] },
    }))
    const found = checkDocuments({ ...tindDocuments(), logs })
    expect(found.map(({ code, document, path }) => [code, document.name, path])).toEqual([
      ['record/reading-missing', 'log.json', '/records/3/readings'],
      ['record/reading-missing', 'log.json', '/records/3/readings'],
    ])
  })

  it('gives findings in the order in which the document is written', () => {
    const set = patchSheet(tindDocuments(), [
      { op: 'replace', path: '/services/gear-oil-change/satisfies/0', value: 'x' },
      { op: 'replace', path: '/gearcases/rear/emptying', value: [] },
      { op: 'replace', path: '/gearcases/front/axle', value: 'x' },
    ])
    expect(checkDocuments(set).map(({ path }) => path)).toEqual([
      '/gearcases/front/axle',
      '/gearcases/rear/emptying',
      '/services/gear-oil-change/satisfies/0',
    ])
  })

  it.each([
    ['log/date-in-the-future.json', '2024-10-04', '2023-10-05'],
    ['record/date-in-the-future.json', '2024-01-06', '2024-01-05'],
    ['toolbox/calibration-in-the-future.json', '2023-10-07', '2023-10-06'],
  ])(
    '%s: judged against the calendar only where today is given, and fine on the day itself',
    (name, day, before) => {
      const vector = readVectors().find(({ file }) => file === name)
      if (vector === undefined) throw new Error(`the vector ${name} is gone`)
      const { today, ...vectorWithoutToday } = vector.vector
      expect(today).toBeDefined()
      expect(runVector({ ...vectorWithoutToday, today: before })).toHaveLength(1)
      expect(runVector({ ...vectorWithoutToday, today: day })).toEqual([])
      expect(runVector(vectorWithoutToday)).toEqual([])
    },
  )

  it('keeps silent of partners that are not in the set', () => {
    const { logs } = tindDocuments()
    expect(checkDocuments({ ...EMPTY, logs })).toEqual([])
    expect(checkDocuments({ ...EMPTY, toolboxes: tindDocuments().toolboxes })).toEqual([])
  })

  it('gives plain JSON, and changes nothing that it was given', () => {
    for (const { vector } of readVectors()) {
      const findings = runVector(vector)
      expect(JSON.parse(JSON.stringify(findings))).toEqual(findings)
    }
    const set = deepFreeze(tindDocuments())
    expect(checkDocuments(set, { today: TODAY })).toEqual([])
  })

  it('gives the same findings twice, in the same order', () => {
    const [first] = readVectors()
    if (first === undefined) throw new Error('there are no vectors')
    expect(runVector(first.vector)).toEqual(runVector(first.vector))
  })
})

describe('retired codes', () => {
  it('name a rule of today, and no rule bears one', () => {
    const codes = [...allRules.map(({ code }) => code), ...shapeRuleCodes()]
    for (const [oldCode, newCode] of Object.entries(RETIRED_CODES)) {
      expect(codes).toContain(newCode)
      expect(codes).not.toContain(oldCode)
    }
  })
})

describe('misuse', () => {
  it.each([
    ['null', null],
    ['a text', 'set'],
    ['a set without lists', {}],
    ['a list that is none', { ...EMPTY, logs: {} }],
    ['a document in the wrong list', { ...EMPTY, logs: tindDocuments().sheets }],
    [
      'a document without its wrapping',
      { ...EMPTY, logs: tindDocuments().logs.map(({ document }) => document) },
    ],
    ['a hole', { ...EMPTY, logs: [undefined] }],
  ])('refuses %s as a set', (_name, set) => {
    expect(() => checkDocuments(set as DocumentSet)).toThrow(TypeError)
  })

  it.each(['2023-02-30', '06.10.2031', '', '2023-10-06T00:00'])('refuses “%s” as today', (today) => {
    expect(() => checkDocuments(EMPTY, { today })).toThrow(RangeError)
  })

  it('refuses a today that is no text, and says so', () => {
    expect(() => checkDocuments(EMPTY, { today: 10n } as never)).toThrow(TypeError)
    expect(() => checkDocuments(EMPTY, { today: 10n } as never)).toThrow(
      /^facts\.today .*must be a date YYYY-MM-DD/,
    )
  })

  it('refuses unknown facts, and suggests a similar one', () => {
    expect(() => checkDocuments(EMPTY, { todya: '2023-10-06' } as never)).toThrow(/todya.*today/)
  })

  it('refuses facts that are none', () => {
    expect(() => checkDocuments(EMPTY, null as never)).toThrow(TypeError)
  })

  it('names what a document lacks that was not parsed', () => {
    const logs = [{ document: { ...tindDocuments().logs[0]?.document, records: null } }]
    expect(() => checkDocuments({ ...EMPTY, logs } as never)).toThrow(
      /^set\.logs\[0\]\.document\.records must be a list, got null; parse the document first$/,
    )
  })

  it('finds nothing behind ids such as constructor', () => {
    const set = patchSheet(tindDocuments(), [
      { op: 'replace', path: '/gearcases/front/axle', value: 'constructor' },
    ])
    expect(checkDocuments(set).map(({ code }) => code)).toEqual(['spec/dangling-reference'])
  })

  it('holds rules with distinct codes of the form module/kebab-name', () => {
    expect(allRules.every(({ code }) => /^[a-z]+\/[a-z]+(-[a-z]+)*$/.test(code))).toBe(true)
  })
})

function deepFreeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value)
    for (const inner of Object.values(value)) deepFreeze(inner)
  }
  return value
}
