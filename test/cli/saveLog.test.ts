import { spawn } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { build } from 'esbuild'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { parse, stringify } from 'yaml'
import { runCommand } from '../../src/cli/runCommand.js'
import { type MachineLog, writeHistory } from '../../src/v1/spec.js'
import { cases } from '../support/law.js'
import { memoryIo } from '../support/memoryIo.js'
import { readExample } from '../support/readExample.js'

const TIND = 'examples/tind-4'
const SHEET = `${TIND}/sheet.yaml`
const DAY = ['--today', '2023-10-06']
const log = readExample('tind-4', 'log')
const last = log.records.at(-1)
if (last === undefined) throw new Error('the example has no record')
const recordOf = (id: string) => JSON.stringify({ ...last, id })
const idsIn = (text: string) => (parse(text) as MachineLog).records.map(({ id }) => id)

async function run(words: readonly string[], files: Readonly<Record<string, string>>) {
  const io = memoryIo(files)
  const code = await runCommand(words, io)
  return { code, out: io.out.join('\n'), err: io.err.join('\n'), written: io.written }
}
const recordTo = (out: string, files: Readonly<Record<string, string>>) =>
  run(['record', 'record.json', 'log.json', SHEET, '--out', out, ...DAY], {
    'record.json': recordOf('new'),
    'log.json': JSON.stringify(log),
    ...files,
  })

describe('--out of record', () => {
  it('extends what is in the file now, not what was read before', async () => {
    const io = memoryIo({ 'record.json': recordOf('new'), 'log.json': JSON.stringify(log) })
    const meanwhile: MachineLog = { ...log, records: [...log.records, { ...last, id: 'meanwhile' }] }
    const saveText: typeof io.saveText = async (path, makeText) => {
      // Called for the text that was read, then again for the text that another program wrote meanwhile.
      await makeText(JSON.stringify(log))
      io.written.set(path, (await makeText(JSON.stringify(meanwhile))) ?? '')
    }
    const words = ['record', 'record.json', 'log.json', SHEET, '--out', 'log.json', ...DAY]
    expect(await runCommand(words, { ...io, saveText })).toBe(0)
    const ids = log.records.map(({ id }) => id)
    expect(idsIn(io.written.get('log.json') ?? '')).toEqual([...ids, 'meanwhile', 'new'])
    expect(io.out.join('\n')).toMatch(`Appended to log.json: new, ${ids.length + 2} records.`)
  })

  it('refuses a record that another program appended meanwhile', async () => {
    const existingText = JSON.stringify({ ...log, records: [...log.records, { ...last, id: 'new' }] })
    const { code, out, written } = await recordTo('copy.json', { 'copy.json': existingText })
    expect({ code, size: written.size }).toEqual({ code: 1, size: 0 })
    expect(out).toMatch(/the log already has a record new/)
  })

  it.each([
    ['a sheet', JSON.stringify(readExample('tind-4', 'sheet')), /is not the log station-2/],
    ['another log', JSON.stringify({ ...log, id: 'station-3' }), /is not the log station-2/],
    ['a log that cannot be read', '{"kind":"machine-log",', /is not the log station-2, or cannot be read/],
    ['a text', 'My notes', /is not the log station-2/],
    [
      'a copy without a record',
      JSON.stringify({ ...log, records: log.records.slice(1) }),
      new RegExp(`another copy of the log, without the record ${log.records[0]?.id}`),
    ],
    [
      'a copy without a reading',
      JSON.stringify({ ...log, meters: { ...log.meters, distance: { unit: 'km', readings: [] } } }),
      /another copy of the log, without the reading of 2021-04-18/,
    ],
  ])('refuses %s', async (_name, existingText, message) => {
    const { code, err, written } = await recordTo('out.json', { 'out.json': existingText })
    expect({ code, size: written.size }).toEqual({ code: 2, size: 0 })
    expect(err).toMatch(message)
    expect(err).toMatch(/nothing was written/)
  })

  it('writes into an empty file, and YAML into a file of YAML', async () => {
    const { code, written } = await recordTo('out.yaml', { 'out.yaml': ' \n' })
    expect(code).toBe(0)
    expect(written.get('out.yaml')).toMatch(/^kind: machine-log\n/)
    expect(idsIn(written.get('out.yaml') ?? '').at(-1)).toBe('new')
  })

  it('keeps the comments and the order of a log in YAML', async () => {
    const yaml = stringify(log, { lineWidth: 0 })
      .replace(/^records:/m, '# The newest last.\nrecords:')
      .replace(/^meters:/m, '# Read on Mondays.\nmeters:')
    const files = { 'log.yaml': yaml, 'record.json': recordOf('new') }
    const words = ['record', 'record.json', 'log.yaml', SHEET, '--out', 'log.yaml', ...DAY]
    const { code, written } = await run(words, files)
    expect(code).toBe(0)
    const after = written.get('log.yaml') ?? ''
    expect(after.startsWith(yaml)).toBe(true)
    expect(parse(after)).toEqual({ ...log, records: [...log.records, { ...last, id: 'new' }] })
  })
})

describe('a history', () => {
  const append = (id: string, history: string) =>
    run(['record', 'record.json', 'a.history.jsonl', SHEET, '--out', 'a.history.jsonl', ...DAY], {
      'record.json': recordOf(id),
      'a.history.jsonl': history,
    })
  const historyText = `${writeHistory(log).join('\n')}\n`
  const lineOf = (id: string) =>
    `${JSON.stringify({ op: 'add', path: '/records/-', value: { ...last, id } })}\n`

  it('gets one line for a record; the lines before it stay', async () => {
    const spacedText = historyText.replace('\n', '\n\n').replaceAll(',"', ', "')
    const { code, out, written } = await append('new', spacedText)
    expect({ code, out }).toMatchObject({ code: 0, out: expect.stringMatching(/new, 4 records\.$/) })
    expect(written.get('a.history.jsonl')).toBe(spacedText.replace('\n\n', '\n') + lineOf('new'))
  })

  it('whose last line is cut off is extended without it, with a warning', async () => {
    const { out, written } = await append('new', `${historyText}{"op":"add","pa`)
    expect(out).toMatch(/warning: Line 17, the last of the history, is cut off and was not read/)
    expect(written.get('a.history.jsonl')).toBe(historyText + lineOf('new'))
  })

  it('is begun from a log in another form, and read by every command', async () => {
    const firstLog = await recordTo('b.history.jsonl', {})
    expect(firstLog.written.get('b.history.jsonl')).toBe(historyText + lineOf('new'))
    const files = { 'set/b.history.jsonl': historyText, 'set/sheet.yaml': readFileSync(SHEET, 'utf8') }
    const fromJson = await run(['due', TIND, ...DAY], {})
    expect(await run(['due', 'set', ...DAY], files)).toMatchObject({ code: 0, out: fromJson.out })
    const named = ['set/b.history.jsonl', 'set/sheet.yaml', ...DAY]
    expect(await run(['due', ...named], files)).toMatchObject({ code: 0, out: fromJson.out })
    expect((await run(['check', ...named], files)).code).toBe(0)
    const badFiles = { ...files, 'set/b.history.jsonl': `${historyText}nonsense\n${lineOf('new')}` }
    expect((await run(['check', ...named], badFiles)).out).toMatch(
      /b\.history\.jsonl: error: Line 17 of the history cannot be used/,
    )
  })

  it('of another machine is refused', async () => {
    const otherHistory = writeHistory({ ...log, id: 'station-3' }).join('\n')
    const { code, err } = await recordTo('c.history.jsonl', { 'c.history.jsonl': otherHistory })
    expect({ code, err }).toMatchObject({ code: 2, err: expect.stringMatching(/is not the log station-2/) })
    const repairCommand = ['repair', `${TIND}/procedure.json`, SHEET, '--out', 'c.history.jsonl']
    expect((await run(repairCommand, { 'c.history.jsonl': otherHistory })).err).toMatch(
      /is the machine-log station-3, not the procedure/,
    )
  })
})

describe('--out of other commands', () => {
  const VISIT = ['--ambient', '6degC', ...DAY]
  it.each([
    [
      'a card',
      ['card', TIND, ...VISIT, '--out', 'out'],
      { 'out/station-2.md': JSON.stringify(log) },
      /station-2\.md is the machine-log station-2, not an earlier output/,
    ],
    [
      'a repaired procedure',
      ['repair', `${TIND}/procedure.json`, SHEET, '--out', 'x.yaml'],
      { 'x.yaml': 'version: "1.0"\nkind: spec-sheet\nid: a\n' },
      /x\.yaml is the spec-sheet a, not the procedure/,
    ],
    [
      'a repaired procedure, over a text',
      ['repair', `${TIND}/procedure.json`, SHEET, '--out', 'x.json'],
      { 'x.json': 'Some kind: of text' },
      /x\.json is another file, not the procedure/,
    ],
    [
      'a repaired procedure, over a sheet with a mistake',
      ['repair', `${TIND}/procedure.json`, SHEET, '--out', 'x.json'],
      { 'x.json': '{ "kind": "spec-sheet", "id": "a"' },
      /x\.json is the spec-sheet \?, not the procedure/,
    ],
  ])('%s does not replace a document', async (_name, words, files, message) => {
    const { code, err, written } = await run(words, files)
    expect(err).toMatch(message)
    expect(code).toBe(2)
    expect([...written.keys()].filter((path) => Object.hasOwn(files, path))).toEqual([])
  })

  it('replaces an earlier output', async () => {
    const files = { 'out/station-2.md': '# An earlier card', 'out/station-2.html': '<p>kind: of' }
    const card = await run(['card', TIND, ...VISIT, '--out', 'out'], files)
    expect({ code: card.code, size: card.written.size }).toEqual({ code: 0, size: 4 })
  })
})

/** 10 pairs in `npm test`, 120 in the long run, 200 with `DRIVETRAIN_LAW_TIMES=10`. */
const PAIRS = cases(20)

describe('two processes', () => {
  let folder = ''
  let program = ''
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'skarnfell-pairs-'))
    program = join(folder, 'program.mjs')
    // Runs a command line for each line of its input, and prints its exit code.
    const contents = `
      import { createInterface } from 'node:readline'
      import { makeNodeIo } from './makeNodeIo.ts'
      import { runCommand } from './runCommand.ts'
      const io = { ...makeNodeIo(), print: () => undefined }
      for await (const line of createInterface({ input: process.stdin }))
        process.stdout.write((await runCommand(JSON.parse(line), io)) + '\\n')`
    const stdin = { contents, resolveDir: 'src/cli', loader: 'ts' } as const
    // A package without ES modules loads its parts at run time.
    const banner = {
      js: "import { createRequire as makeRequire } from 'node:module'; const require = makeRequire(import.meta.url)",
    }
    const how = { bundle: true, platform: 'node', format: 'esm', logLevel: 'error' } as const
    await build({ stdin, banner, outfile: program, ...how })
  })
  afterAll(() => rm(folder, { recursive: true, force: true }))

  it(`${PAIRS} pairs of records, appended at once: both are in the log, each time`, async () => {
    const path = join(folder, 'log.json')
    await writeFile(path, JSON.stringify(log))
    await mkdir(join(folder, 'records'))
    const writers = ['a', 'b'].map((name) => {
      const child = spawn(process.execPath, [program], { stdio: ['pipe', 'pipe', 'inherit'] })
      const codes = createInterface({ input: child.stdout })[Symbol.asyncIterator]()
      return { name, child, codes }
    })
    const appended = log.records.map(({ id }) => id)
    for (let pair = 0; pair < PAIRS; pair++) {
      const files = writers.map(({ name }) => [
        `pair-${pair}-${name}`,
        join(folder, 'records', `${pair}-${name}`),
      ])
      for (const [id = '', file = ''] of files) await writeFile(`${file}.json`, recordOf(id))
      for (const [place, [id = '', file]] of files.entries()) {
        const words = ['record', `${file}.json`, path, SHEET, '--out', path, ...DAY]
        writers[place]?.child.stdin.write(`${JSON.stringify(words)}\n`)
        appended.push(id)
      }
      const codes = await Promise.all(writers.map((writer) => writer.codes.next()))
      expect(codes.map(({ value }) => value)).toEqual(['0', '0'])
      expect(idsIn(await readFile(path, 'utf8')).sort()).toEqual([...appended].sort())
    }
    for (const { child } of writers) child.stdin.end()
    await Promise.all(writers.map(({ child }) => new Promise((ended) => child.on('close', ended))))
    expect((await readdir(folder)).sort()).toEqual(['log.json', 'program.mjs', 'records'])
  }, 1_800_000)
})
