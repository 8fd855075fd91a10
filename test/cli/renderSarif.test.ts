import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import published from '@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json' with { type: 'json' }
import { Ajv } from 'ajv'
import type { Log, Run } from 'sarif'
import { describe, expect, it } from 'vitest'
import type { Finding } from '../../src/base/finding.js'
import { fingerprintFinding } from '../../src/cli/fingerprintFinding.js'
import { en as words } from '../../src/cli/message/en/index.js'
import { locateFindings, renderFindings } from '../../src/cli/renderFindings.js'
import { runCommand } from '../../src/cli/runCommand.js'
import { en } from '../../src/message/en/index.js'
import { memoryIo } from '../support/memoryIo.js'
import { MISTAKES } from '../support/mistakes.js'
import { mistakeFolder } from '../support/writeMistakes.js'

/**
 * The JSON Schema of SARIF 2.1.0 as OASIS published it (sarif-2.1.0-rtm.5), a file of the package
 * @microsoft/jest-sarif. It is a draft 4 schema, and has the same meaning in draft 7.
 */
const SCHEMA_FILE = 'node_modules/@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json'
const { $schema: _draft, id: _id, ...schema } = published
const isUriReference = (text: string) => URL.canParse(text, 'https://example.org/') && !/[\s\\]/.test(text)
const isUri = (text: string) => URL.canParse(text)
const formats = { uri: isUri, 'uri-reference': isUriReference, 'date-time': true as const }
const isSarif = new Ajv({ strict: false, unicodeRegExp: false, formats }).compile<Log>(schema)

const finding = (change: Partial<Finding> = {}): Finding => ({
  code: 'spec/unknown-key',
  severity: 'warning',
  document: { kind: 'stock', name: 'b.json' },
  path: '/x',
  params: { key: 'x', known: [] },
  ...change,
})

const FILE_SET = {
  name: 'set',
  set: { sheets: [], logs: [], toolboxes: [], stocks: [], procedures: [], records: [] },
  findings: [],
  texts: new Map([['b.json', '{\n  "x": 1}']]),
}

function report(...findings: readonly Finding[]): Run {
  const log: unknown = JSON.parse(
    renderFindings(locateFindings(findings, [FILE_SET], { words, catalogue: en }), 'sarif', {
      words,
      catalogue: en,
    }),
  )
  if (!isSarif(log)) throw new Error(JSON.stringify(isSarif.errors))
  const [run] = log.runs
  if (run === undefined) throw new Error('no run')
  return run
}

describe('SARIF 2.1.0', () => {
  it('has one rule a code, with its text, level and help; the version of the tool', () => {
    const run = report(
      finding(),
      finding({ severity: 'info' }),
      finding({ severity: 'error', code: 'spec/limits-reversed', params: { min: '3', max: '2', unit: 'L' } }),
    )
    const { driver } = run.tool
    expect(driver.version).toBe(JSON.parse(readFileSync('package.json', 'utf8')).version)
    expect(driver.rules).toMatchObject([
      {
        id: 'spec/limits-reversed',
        shortDescription: { text: 'Limits reversed.' },
        fullDescription: { text: expect.stringMatching(/minimum/) },
        help: {
          text: expect.stringMatching(/\n\n.+\n\n/),
          markdown: expect.stringContaining('**Checked:**'),
        },
        helpUri: expect.stringMatching(/docs\/rules\.md$/),
        defaultConfiguration: { level: 'error' },
      },
      { id: 'spec/unknown-key', shortDescription: { text: 'Unknown key.' } },
    ])
    expect(run.results?.map(({ level, ruleIndex }) => [level, ruleIndex])).toEqual([
      ['error', 0],
      ['warning', 1],
      ['note', 1],
    ])
  })

  it('names the region of the mistake to its end', () => {
    const [result] = report(finding()).results ?? []
    expect(result?.locations?.[0]).toEqual({
      physicalLocation: {
        artifactLocation: { uri: 'b.json' },
        region: { startLine: 2, startColumn: 3, endLine: 2, endColumn: 9 },
      },
      logicalLocations: [{ fullyQualifiedName: '/x', kind: 'member' }],
    })
    expect(result).not.toHaveProperty('suppressions')
  })

  it('lists related places', () => {
    const related = [{ document: { kind: 'spec-sheet' as const, name: 'a.json' }, path: '/id' }]
    const [result] = report(finding({ related })).results ?? []
    expect(result?.relatedLocations?.[0]?.physicalLocation?.artifactLocation?.uri).toBe('a.json')
  })

  it('suppresses what is waived', () => {
    const [result] =
      report(finding({ waived: { path: '/waivers/0', reason: 'checked by phone' } })).results ?? []
    expect(result?.suppressions).toEqual([{ kind: 'inSource', justification: 'checked by phone' }])
  })

  it.each([
    ['/tmp/my files/a#1.json', '/tmp/my%20files/a%231.json'],
    ['logs\\a.json', 'logs/a.json'],
    ['Höhe\ud800.json', 'H%C3%B6he%EF%BF%BD.json'],
  ])('%j is the URI %s', (name, uri) => {
    const [result] = report(finding({ document: { kind: 'stock', name } })).results ?? []
    expect(result?.locations?.[0]?.physicalLocation).toEqual({ artifactLocation: { uri } })
  })
})

describe('fingerprints', () => {
  const known = fingerprintFinding(finding({ document: { kind: 'stock', id: 'van', name: 'b.json' } }))

  it('stay when the file is renamed or the message gets other words', () => {
    const document = { kind: 'stock', id: 'van', name: 'other/c.yaml' } as const
    expect(fingerprintFinding(finding({ document, severity: 'error' }))).toBe(known)
  })

  it.each([
    [{ code: 'spec/bad-id' }],
    [{ path: '/y' }],
    [{ params: { key: 'y', known: [] } }],
    [{ document: { kind: 'stock', id: 'shelf', name: 'b.json' } }],
  ] as const)('change with %j', (change) => {
    const document = { kind: 'stock', id: 'van', name: 'b.json' } as const
    expect(fingerprintFinding(finding({ document, ...change }))).not.toBe(known)
  })
})

describe('the published schema', () => {
  const logs = Promise.all(
    MISTAKES.map(async ({ name, command }) => {
      const io = memoryIo()
      await runCommand([command, mistakeFolder(name), '--today', '2023-10-06', '--format', 'sarif'], io)
      return io.out[0] ?? ''
    }),
  )

  it('accepts the report of every mistake in the examples', async () => {
    const reports = (await logs).map((text): unknown => JSON.parse(text))
    expect(reports.length).toBeGreaterThan(30)
    for (const log of reports) {
      expect(isSarif(log), JSON.stringify(isSarif.errors)).toBe(true)
      for (const { locations } of (log as Log).runs[0]?.results ?? []) {
        const region = locations?.[0]?.physicalLocation?.region
        const { startLine = 0, startColumn = 0, endLine = 0, endColumn = 0 } = region ?? {}
        expect(endLine > startLine || (endLine === startLine && endColumn > startColumn)).toBe(true)
      }
    }
  })

  it('refuses a report with another level, version or line', () => {
    const log = JSON.parse(
      renderFindings(locateFindings([finding()], [FILE_SET], { words, catalogue: en }), 'sarif', {
        words,
        catalogue: en,
      }),
    )
    const [run] = log.runs
    const [result] = run.results
    for (const change of [{ level: 'info' }, { ruleIndex: -2 }, { message: undefined }])
      expect(isSarif({ ...log, runs: [{ ...run, results: [{ ...result, ...change }] }] })).toBe(false)
    expect(isSarif({ ...log, version: '2.0.0' })).toBe(false)
  })

  it("Debian's jsonschema says the same", async (ctx) => {
    const python = '/usr/bin/python3'
    if (spawnSync(python, ['-c', 'import jsonschema']).status !== 0) {
      if (process.env['DRIVETRAIN_REQUIRE_TOOLS'] === '1') throw new Error('python3-jsonschema is missing')
      console.log('outside tool skipped: python3-jsonschema')
      return ctx.skip()
    }
    const script = `import json, sys, jsonschema
judge = jsonschema.Draft4Validator(json.load(open('${SCHEMA_FILE}')))
print(json.dumps([[e.message for e in judge.iter_errors(json.loads(log))] for log in json.load(sys.stdin)]))`
    const run = spawnSync(python, ['-c', script], { input: JSON.stringify(await logs), encoding: 'utf8' })
    expect(run.stderr).toBe('')
    expect(JSON.parse(run.stdout)).toEqual(MISTAKES.map(() => []))
  })
})
