import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { en as words } from '../../src/cli/message/en/index.js'
import { prefillRecord } from '../../src/cli/prefillRecord.js'
import { runCommand } from '../../src/cli/runCommand.js'
import { WARRANTY_FACTS } from '../../src/spec/index.js'
import { checkRecord } from '../../src/v1/service.js'
import { parseServiceRecord, type ServiceRecord } from '../../src/v1/spec.js'
import { memoryIo } from '../support/memoryIo.js'
import { add, patched } from '../support/patched.js'
import { planExample } from '../support/planExample.js'
import { readExample } from '../support/readExample.js'

const EXAMPLES = ['tind-4', 'acre-26', 'bud-3', 'reach-55', 'kvist-2']
const base = (name: string) => readFileSync(`schemas/v1/vectors/bases/tind-4/${name}.json`, 'utf8')

/** Fills in the values that only the machine shows, and leaves those of the plan. */
const fillIn = (text: string) =>
  [
    [/\? (mL|L) drained/g, '0.44 L drained'],
    [/drained: "\? L"/g, 'drained: 1.3 L'],
    [/\? h/g, '512.8 h'],
    [/\? km/g, '4411 km'],
    [/old oil \?/g, 'old oil dark'],
    [/magnet \?/g, 'magnet clean'],
    [/sample \?/g, 'sample B-12'],
    [/level \?/g, 'level at the mark'],
    [/joints \?/g, 'joints dry'],
    [/\? turns/g, '1 turn'],
    [/(drain|fill|dipstick) \?/g, '$1 by the manual'],
    [/oilFinding: "\?"/g, 'oilFinding: dark'],
    [/magnet: "\?"/g, 'magnet: clean'],
    [/level: "\?"/g, 'level: at the mark'],
    [/leaks: "\?"/g, 'leaks: dry'],
  ].reduce((filled, [openField, value]) => filled.replaceAll(openField as RegExp, value as string), text)

async function run(words: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const io = memoryIo(files)
  const code = await runCommand(words, io)
  return { code, out: io.out.join('\n'), err: io.err.join('\n'), written: io.written }
}

describe('record --from-plan', () => {
  it.each(EXAMPLES)('%s: a finished visit is at most ten lines', (example) => {
    const text = prefillRecord(planExample(example), words)
    expect(text.trimEnd().split('\n').length).toBeLessThanOrEqual(10)
    expect(parseServiceRecord(parse(text)).ok).toBe(false)
    const read = parseServiceRecord(parse(fillIn(text)))
    expect(read.findings).toEqual([])
    expect(read.ok && read.value.detail).toBe('full')
  })

  it('asks for the bottle of an oil sample where the service takes one, and nowhere else', () => {
    const sheet = patched(add('/services/gear-oil-change/samples', ['front']))
    const text = prefillRecord(planExample('tind-4', { sheet }), words)
    expect(text.match(/sample \?/g)).toHaveLength(1)
    const openRecord = parseServiceRecord(parse(fillIn(text).replace('sample B-12', 'sample ?')))
    expect(openRecord.ok).toBe(false)
    const read = parseServiceRecord(parse(fillIn(text)))
    expect(read.ok && read.value.entries.map(({ sample }) => sample)).toEqual([{ bottle: 'B-12' }, undefined])
    expect(text.trimEnd().split('\n').length).toBeLessThanOrEqual(10)
  })

  it('asks for what the warranty of the sheet asks, and nowhere else; no open place is taken for an answer', () => {
    const sheet = patched(add('/warranty', { asks: WARRANTY_FACTS }))
    const text = prefillRecord(planExample('tind-4', { sheet }), words)
    const plainRecord = prefillRecord(planExample('tind-4'), words)
    for (const line of ['by: "?"', 'photos:\n  - "?"', 'signature: "?"'])
      expect([text.includes(`\n${line}\n`), plainRecord.includes(line)], line).toEqual([true, false])
    expect(text).toContain('{ tool: small-click, number: "?", validTo: "?" }')
    expect(text).toContain('batch: "?"')
    expect(text).toContain('"new, part HB-1418"')
    expect(plainRecord).not.toMatch(/batch|certificates|part HB/)
    const filled = fillIn(text)
      .replaceAll('validTo: "?"', 'validTo: 2024-01-01')
      .replaceAll('drained: "? mL"', 'drained: 440 mL')
      .replace('shields:', 'id: r\nshields:')
    const read = parseServiceRecord(parse(filled))
    expect(read.findings).toEqual([])
    if (!read.ok) throw new Error('not read')
    const listMissing = (record: ServiceRecord) => {
      const set = { sheets: [{ document: sheet(readExample('tind-4', 'sheet')) }], logs: [], stocks: [] }
      const found = checkRecord({ document: record }, { ...set, toolboxes: [], procedures: [], records: [] })
      return found.flatMap(({ code, params }) =>
        code === 'record/warranty-facts-missing' ? params['lacks'] : [],
      )
    }
    // A `?` in free text counts as missing; the part numbers of the seals are in the plan.
    expect(listMissing(read.value)).toEqual(WARRANTY_FACTS.filter((fact) => fact !== 'part numbers'))
    const filledRecord = parseServiceRecord(parse(filled.replaceAll('"?"', 'X-1')))
    expect(filledRecord.ok && listMissing(filledRecord.value)).toEqual([])
  })

  it('claims nothing that nobody saw: measured values and findings are open', () => {
    const [, , , , , readings, , front] = prefillRecord(planExample('tind-4'), words).split('\n')
    expect(readings).toBe('readings: "? h, ? km"')
    expect(front).toMatch(/\? mL drained, .* old oil \?, magnet \?, level \?, joints \?/)
  })

  it('is written, filled in and appended without a finding', async () => {
    const documents = ['log', 'sheet', 'toolbox', 'stock'].map((name) => [`set/${name}.json`, base(name)])
    const files = Object.fromEntries(documents)
    const day = ['--today', '2023-10-06']
    const plan = await run(['record', 'set', '--from-plan', ...day, '--out', 'record.yaml'], files)
    expect(plan).toMatchObject({ code: 0, err: expect.stringMatching(/Replace each \?/) })
    const written = plan.written.get('record.yaml') ?? ''
    const unfilledRun = await run(['record', 'set', ...day], { ...files, 'set/record.yaml': written })
    expect(unfilledRun).toMatchObject({ code: 1, out: expect.stringContaining('spec/bad-notation') })
    const filled = {
      ...files,
      'set/record.yaml': fillIn(written).replace('0.44 L drained, 950', '930 mL drained, 950'),
    }
    const appended = await run(['record', 'set', ...day, '--out', 'log.json'], filled)
    expect(appended).toMatchObject({
      code: 0,
      out: expect.stringMatching(/^Appended to log.json: station-2-2023-10-06/),
    })
    expect(JSON.parse(appended.written.get('log.json') ?? '').records).toHaveLength(4)
  })

  it('does not replace a record that is filled in', async () => {
    const words = [
      'record',
      'examples/tind-4',
      '--from-plan',
      '--today',
      '2023-10-06',
      '--out',
      'record.yaml',
    ]
    const first = await run(words)
    const secondRun = await run(words, { 'record.yaml': fillIn(first.written.get('record.yaml') ?? '') })
    expect(secondRun).toMatchObject({
      code: 2,
      err: expect.stringMatching(/record\.yaml exists; choose another name/),
    })
    expect(secondRun.written.size).toBe(0)
  })

  it.each([
    [['--format', 'json'], /record --from-plan --format json: the record is YAML to fill in/],
    [['--format', 'sarif'], /record --from-plan --format sarif: the record is YAML to fill in/],
    [['--out', 'record.json'], /--out record\.json: expected a name that ends in \.yaml or \.yml/],
  ])('is YAML only: %j is refused', async (words, refusal) => {
    const { code, out, err, written } = await run(['record', 'examples/tind-4', '--from-plan', ...words])
    expect({ code, out, files: written.size }).toEqual({ code: 2, out: '', files: 0 })
    expect(err).toMatch(refusal)
  })

  it('has options of its own', async () => {
    const refusedRun = await run(['record', 'examples/tind-4', '--service', 'gear-oil-check'])
    expect(refusedRun).toMatchObject({ code: 2, err: expect.stringMatching(/only be used with --from-plan/) })
    const oneService = ['--from-plan', '--service', 'gear-oil-check', '--today', '2023-10-06']
    const check = await run(['record', 'examples/tind-4', ...oneService])
    expect(check.out).toContain('gear-oil-check of rear, level ?, joints ?, fill 40 N·m')
  })
})
