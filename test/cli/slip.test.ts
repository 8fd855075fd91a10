import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

const FOLDER = 'examples/tind-4'
const RECORD = readFileSync(`${FOLDER}/record.yaml`, 'utf8')
const FILES = ['log.yaml', 'sheet.yaml', 'toolbox.yaml', 'stock.yaml'].map((file) => `${FOLDER}/${file}`)

async function run(words: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const io = memoryIo(files)
  const code = await runCommand(['slip', ...words, '--today', '2023-10-09'], io)
  return {
    code,
    out: io.out.join('\n').replaceAll('\u00a0', ' '),
    err: io.err.join('\n'),
    written: io.written,
  }
}

describe('slip', () => {
  it('is about the record among the files that the log does not have yet', async () => {
    const { code, out, err } = await run([FOLDER])
    expect(code).toBe(0)
    expect(err).toBe('On the slip, but not yet in the log: station-2-2023-10-06')
    expect(out).toContain('* Rear gearcase: gear oil change, 960 mL of station gear oil 80W-90')
    expect(out).toContain('Record: station-2-2023-10-06')
  })

  it('otherwise is about the last visit of the log, or a named one', async () => {
    expect((await run(FILES)).out).toContain('Record: station-2-check-2023')
    expect((await run([...FILES, '--record', 'station-2-2022'])).out).toContain('Record: station-2-2022')
  })

  it('has open faults, and follows a correction among the files', async () => {
    const wrongRecord = RECORD.replace('refilled: 450 mL', 'refilled: 520 mL').replace(
      'machine:',
      'id: visit\nmachine:',
    )
    const correction = `kind: service-record
version: "1.0"
id: again
machine: station-2
sheet: hallbrekka-tind-4, revision 2023-03
date: 2023-10-08
readings: 513 h, 4415 km
corrects: visit
entries: [{ service: gear-oil-change, gearcase: front, refilled: 450 mL }]
`
    const before = await run([...FILES, 'a.yaml'], { 'a.yaml': wrongRecord })
    expect(before.code).toBe(0)
    expect(before.out).toContain(
      '!! WARNING: Do not use this machine. A fault has been open since 2023-10-06.',
    )
    // The correction comes first on the command line.
    const after = await run([...FILES, '0.yaml', 'a.yaml'], { '0.yaml': correction, 'a.yaml': wrongRecord })
    expect(after.out).toContain('No open fault on record')
    expect(after.out).toContain('Corrected: 2023-10-08')
    expect(after.out).toContain('450 mL of station gear oil')
  })

  it('is written in the format of the file name, or printed in that of --format', async () => {
    for (const [file, start] of [
      ['slip.html', '<!doctype html>'],
      ['slip.md', '# Service slip: Station 2'],
      ['slip.txt', 'Service slip: Station 2'],
      ['slip.json', '{\n  "kind": "owner-slip"'],
    ] as const) {
      const { code, written, out } = await run([...FILES, '--out', file])
      expect([code, out]).toEqual([0, ''])
      expect(written.get(file)?.startsWith(start), file).toBe(true)
    }
    expect((await run([...FILES, '--format', 'html'])).out).toMatch(/^<!doctype html>/)
    expect((await run([...FILES, '--format', 'markdown'])).out).toMatch(/^# Service slip/)
    expect(JSON.parse((await run([...FILES, '--format', 'json'])).out)).toMatchObject({ kind: 'owner-slip' })
  })

  it('never replaces a document', async () => {
    const { code, err } = await run([...FILES, '--out', 'log.json'], {
      'log.json': '{"kind":"machine-log","version":"1.0","id":"x"}',
    })
    expect(code).toBe(2)
    expect(err).toContain('log.json')
  })

  it.each([
    [[], /slip: name the log and its sheet/],
    [[...FILES, '--out', 'slip'], /expected a name that ends in \.txt, \.md, \.html or \.json/],
    [[...FILES, '--out', 'slip.toString'], /expected a name that ends in/],
    [[...FILES, '--out', 'slip.md', '--format', 'html'], /cannot be used with --format html/],
    [[...FILES, '--record', 'nowhere'], /no such record; its latest records are station-2-first, /],
    [[...FILES, '--record', '__proto__'], /no such record/],
    [[...FILES, '--machine', 'x'], /no log with the id x/],
    [['examples/acre-26'], /found 3 logs: choose one with --machine/],
    [[...FILES, '--format', 'csv'], /expected one of text, markdown, html, json/],
  ])('refuses %j', async (words, expectedText) => {
    expect(await run(words)).toMatchObject({ code: 2, err: expect.stringMatching(expectedText), out: '' })
  })

  it('refuses a log without a visit, a record of another sheet, and a log with errors', async () => {
    const log = readFileSync(`${FOLDER}/log.yaml`, 'utf8')
    const sheet = `${FOLDER}/sheet.yaml`
    const emptyLog = log.replace(/records:[\s\S]*/, 'records: []\n')
    expect(await run(['a.yaml', sheet], { 'a.yaml': emptyLog })).toMatchObject({
      code: 2,
      err: expect.stringContaining('the log of station-2 has no record of a visit'),
    })
    const otherRecord = RECORD.replace('hallbrekka-tind-4, revision', 'other, revision')
    expect(await run([...FILES, 'b.yaml'], { 'b.yaml': otherRecord })).toMatchObject({
      code: 2,
      err: expect.stringContaining('b.yaml is not a record of station-2'),
    })
    const brokenLog = log.replace('date: 2021-07-10', 'date: soon')
    expect(await run(['c.yaml', sheet], { 'c.yaml': brokenLog })).toMatchObject({ code: 1, out: '' })
  })

  it('prints no control characters of a document', async () => {
    const name = RECORD.replace('by: A. Skarn', 'by: "\\u001b[2J\\nDone"\nid: "evil"\nnote: "\\u202egnorw"')
    const { out, err } = await run([...FILES, 'a.yaml'], { 'a.yaml': name })
    expect((out + err).replaceAll('\n', '')).not.toMatch(/[\p{Cc}\u202a-\u202e]/u)
    expect(out).not.toMatch(/\nDone\n(?!-)/)
  })
})
