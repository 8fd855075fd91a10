import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

const EXAMPLE = 'examples/tind-4'
const sheet = readFileSync('schemas/v1/vectors/bases/tind-4/sheet.json', 'utf8')
const log = readFileSync('schemas/v1/vectors/bases/tind-4/log.json', 'utf8')

async function run(words: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const io = memoryIo(files)
  const code = await runCommand(words, io)
  const out = io.out.join('\n')
  const err = io.err.join('\n')
  return { code, out, err, all: `${out}\n${err}`, written: io.written }
}

const STACK = /\n\s+at .+:\d+:\d+/

describe('wrong command lines: exit code 2, one line that says what to change', () => {
  it.each([
    [['destroy'], /unknown command "destroy"/],
    [['check'], /name the files or folders/],
    [['check', 'no/such/file.json'], /no\/such\/file\.json: no such file or folder/],
    [
      ['check', '--colour', EXAMPLE],
      /--colour is unknown \(options: --today, --level, --quiet, --fix, --dry-run, --baseline, --write-baseline, --language, --format\)$/,
    ],
    [['plan', '--stale-day', '3', EXAMPLE], /--stale-day is unknown; did you mean --stale-days\?/],
    [
      ['due', EXAMPLE, '--ambient', '6degC'],
      /--ambient is not an option of this command \(options: --every, .*--sheet, --today/,
    ],
    [['chek', EXAMPLE], /unknown command "chek"; did you mean check\?/],
    [['plan', EXAMPLE, '--today', '2023-02-30'], /--today 2023-02-30: expected a date such as/],
    [['plan', EXAMPLE, '--ambient', 'mild'], /--ambient mild: expected a temperature such as/],
    [['plan', EXAMPLE, '--ambient', '6 km'], /--ambient 6 km: expected a temperature such as/],
    [['plan', EXAMPLE, '--edition', '1999'], /expected one of 2017, 2003/],
    [['plan', EXAMPLE, '--soon-hours', '-3'], /option|number/i],
    [['plan', EXAMPLE, '--machine', 'station-99'], /no log with the id station-99/],
    [['plan', `${EXAMPLE}/log.yaml`], /sheet hallbrekka-tind-4 revision 2023-03 is not among the files/],
    [['plan', `${EXAMPLE}/sheet.yaml`], /no machine log among the files/],
    [['card', EXAMPLE], /--out FOLDER/],
    [['schema', 'banana'], /one of spec-sheet/],
    [['convert'], /convert: expected a value, such as convert "8\.9 lbf·ft"/],
    [['convert', '3 mm', '--to', 'parsec'], /--to parsec: expected a unit of length, such as mm, cm/],
    [['convert', '1 L', '--to', 'qt'], /--to qt: expected a unit of volume, such as .*qt_us/],
    [['convert', '1 L'], /convert: write --to, such as --to N\.m/],
    [['convert', '3 mm', '--to', 'N.m'], /expected a unit of length/],
    [['repair', 'examples/kvist-2'], /expected one procedure, found 0/],
    [['compare', `${EXAMPLE}/log.yaml`], /two sheets/],
  ])('%j', async (words, message) => {
    const { code, err, out, written } = await run(words)
    expect(code).toBe(2)
    expect(err).toMatch(message)
    expect(err).not.toMatch(STACK)
    expect(out).toBe('')
    expect(written.size).toBe(0)
  })

  it('says what there is, when asked', async () => {
    expect(await run(['--help'])).toMatchObject({ code: 0 })
    expect((await run([])).code).toBe(2)
    for (const name of [
      'check',
      'due',
      'plan',
      'card',
      'cues',
      'kits',
      'repair',
      'compare',
      'record',
      'convert',
      'schema',
    ])
      expect(await run([name, '--help'])).toMatchObject({
        code: 0,
        out: expect.stringContaining(`drivetrain-service ${name}`),
      })
  })
})

/** A text instead of the example's sheet, with the example's log. */
const withSheet = (text: string) => ({ 'set/sheet.json': text, 'set/log.json': log })
const withLog = (text: string) => ({ 'set/sheet.json': sheet, 'set/log.json': text })

const deepJson = `${'['.repeat(9000)}${']'.repeat(9000)}`
const hugeJson = JSON.stringify({
  kind: 'spec-sheet',
  version: '1.0',
  id: 'huge',
  note: 'x'.repeat(10_000_000),
})

describe('wrong documents: findings with place and cure, nothing half written', () => {
  it.each([
    ['not JSON', withSheet('{ "kind": "spec-sheet", '), 'spec/not-json', ''],
    ['empty', withSheet(''), 'spec/not-json', ''],
    ['another kind', withSheet('{ "kind": "recipe", "version": "1.0" }'), 'spec/wrong-kind', '/kind'],
    ['another version', withSheet(sheet.replace('"1.0"', '"7.3"')), 'spec/wrong-version', '/version'],
    ['NaN', withSheet(sheet.replace('"wheels": 2', '"wheels": NaN')), 'spec/not-json', ''],
    [
      'a number where a figure is expected',
      withSheet(sheet.replace('"value": "30"', '"value": 30')),
      'spec/figure-without-quotes',
      '',
    ],
    [
      'a comma for a decimal point',
      withSheet(sheet.replace('"value": "8.9"', '"value": "8,9"')),
      'spec/comma-decimal',
      '',
    ],
    [
      'a key twice',
      withSheet(sheet.replace('"model": "Tind 4",', '"model": "Tind 4", "model": "Tind 5",')),
      'spec/duplicate-key',
      '/machine/model',
    ],
    [
      'a key with a near name',
      withSheet(sheet.replace('"drainTemperature"', '"drainTemprature"')),
      'spec/unknown-key',
      '/gearcases/front/drainTemprature',
    ],
    [
      '__proto__ as an id',
      withSheet(sheet.replace('"skid-plate": {', '"__proto__": {')),
      'spec/forbidden-key',
      '',
    ],
    ['9,000-deep nesting', withSheet(deepJson), 'spec/too-deep', ''],
    ['a 10 MB string', withSheet(hugeJson), 'spec/too-long', ''],
  ])('%s', async (_name, files, code, path) => {
    for (const command of [
      ['check', 'set'],
      ['plan', 'set'],
      ['card', 'set', '--out', 'out'],
    ]) {
      const answer = await run([...command, '--format', 'json'], files)
      expect(answer.code).toBe(1)
      expect(answer.all).not.toMatch(STACK)
      expect(answer.written.size).toBe(0)
      const text = answer.out.includes(code) ? answer.out : answer.err
      const report = JSON.parse(text) as { findings: { code: string; path: string; message: string }[] }
      const found = report.findings.find((finding) => finding.code === code)
      expect(found, text.slice(0, 600)).toBeDefined()
      if (path !== '') expect(found?.path).toBe(path)
      expect(found?.message.length).toBeGreaterThan(10)
      expect(text.length).toBeLessThan(100_000)
    }
  })

  it('names the line and column', async () => {
    const { out } = await run(
      ['check', 'set'],
      withSheet(sheet.replace('"drainTemperature"', '"drainTemprature"')),
    )
    expect(out).toMatch(/^set\/sheet\.json:\d+:\d+: error: /m)
  })

  it('reads YAML like JSON, with the same findings', async () => {
    const yaml = [
      'kind: stock',
      "version: '1.0'",
      'id: shelf',
      'name: Shelf',
      'containers: {}',
      'seals: {}',
    ].join('\n')
    expect(await run(['check', 'shelf.yaml'], { 'shelf.yaml': yaml })).toMatchObject({ code: 0 })
    const repeatedKey = await run(['check', 'shelf.yaml'], { 'shelf.yaml': `${yaml}\nname: Again\n` })
    expect(repeatedKey).toMatchObject({ code: 1 })
    expect(repeatedKey.out).toContain('spec/duplicate-key')
    const brokenRun = await run(['check', 'shelf.yaml'], { 'shelf.yaml': 'kind: [stock' })
    expect(brokenRun).toMatchObject({ code: 1 })
    expect(brokenRun.out).toContain('spec/not-yaml')
    const aliasBomb = await run(['check', 'shelf.yaml'], { 'shelf.yaml': 'a: &a [1, 2]\nb: [*a, *a]\n' })
    expect(aliasBomb.out).toContain('spec/not-yaml')
  })

  it('an unknown variant in the log is reported, with those that exist', async () => {
    const text = log.replace('"modelYear": 2021', '"variant": "wide"')
    const { code, out } = await run(['plan', 'set'], withLog(text))
    expect(code).toBe(1)
    expect(out).toMatch(/spec\/unknown-variant|service\/variant-contradicted/)
  })
})

describe('output formats', () => {
  it('SARIF 2.1.0 has a result for each finding, with its place', async () => {
    const files = withSheet(sheet.replace('"drainTemperature"', '"drainTemprature"'))
    const { out } = await run(['check', 'set', '--format', 'sarif'], files)
    const report = JSON.parse(out) as {
      version: string
      runs: {
        results: { ruleId: string; locations: { physicalLocation: { region: { startLine: number } } }[] }[]
      }[]
    }
    expect(report.version).toBe('2.1.0')
    const results = report.runs[0]?.results ?? []
    expect(results.map(({ ruleId }) => ruleId)).toContain('spec/unknown-key')
    expect(results[0]?.locations[0]?.physicalLocation.region.startLine).toBeGreaterThan(1)
  })
})
