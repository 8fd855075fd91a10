import { readFileSync } from 'node:fs'
import { parse as parseCsv } from 'csv-parse/sync'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { en as words } from '../../src/cli/message/en/index.js'
import { runCommand } from '../../src/cli/runCommand.js'
import { readSheetTable, writeSheetTable } from '../../src/cli/tables/sheetTable.js'
import { parseDocument, writeShort } from '../../src/schema/index.js'
import { GOOD_MACHINES } from '../service/goodMachines/index.js'
import { readGoodDocuments } from '../support/fixtures.js'
import { law } from '../support/law.js'
import { memoryIo } from '../support/memoryIo.js'

const EXAMPLES = ['tind-4', 'bud-3', 'kvist-2', 'reach-55', 'acre-26']
const sheetText = (name: string) => readFileSync(`examples/${name}/sheet.yaml`, 'utf8')

async function run(words: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const io = memoryIo(files)
  const code = await runCommand(['new', ...words], io)
  return { code, out: io.out.join('\n'), err: io.err.join('\n'), written: io.written }
}

describe('a sheet as a table, and back', () => {
  const sheets = [
    ...EXAMPLES.map((name) => [name, parse(sheetText(name))] as const),
    ...Object.entries(GOOD_MACHINES).map(([name, { sheet }]) => [name, writeShort(sheet)] as const),
    ...readGoodDocuments().flatMap(({ file, value }) =>
      value['kind'] === 'spec-sheet' ? [[file, value] as const] : [],
    ),
  ]

  it.each(sheets)('is the same sheet: %s', (_name, sheet) => {
    const { data, findings } = readSheetTable(writeSheetTable(sheet), 'sheet.csv', words.reports)
    expect(findings).toEqual([])
    expect(data).toEqual(sheet)
    expect(parseDocument('spec-sheet', data).ok).toBe(parseDocument('spec-sheet', sheet).ok)
  })

  it('has one row for the sheet, each gearcase and each opening', () => {
    const rows = writeSheetTable(parse(sheetText('kvist-2')))
      .split('\r\n')
      .map((row) => row.split(',').slice(0, 2).join())
    const { gearcases } = parse(sheetText('kvist-2')) as { gearcases: Record<string, { openings: object }> }
    const expected = Object.entries(gearcases).flatMap(([id, { openings }]) => [
      `${id},`,
      ...Object.keys(openings).map((name) => `${id},${name}`),
    ])
    expect(rows).toEqual(['gearcase,opening', ',', ...expected, ''])
  })

  it('keeps any text and value, also what a spreadsheet takes for a formula', () => {
    const text = fc.oneof(
      fc.string({ maxLength: 8 }),
      fc.constantFrom(
        '=1+1',
        "'=x",
        '-40 degC',
        '+x',
        '@x',
        '"',
        '[]',
        '1.0',
        'true',
        ' x ',
        'a\nb',
        'a;b',
        '\u0000',
        "'",
        '＝x',
      ),
    )
    const value = fc.oneof(
      text,
      fc.integer(),
      fc.boolean(),
      fc.constant(null),
      fc.array(text, { maxLength: 3 }),
    )
    const key = fc.oneof(
      fc.constantFrom('type', 'oil space', 'a/b', '~', '__proto__', ' x', ''),
      fc.string({ maxLength: 4 }),
    )
    const part = fc.dictionary(key, fc.oneof(value, fc.dictionary(key, value, { maxKeys: 3 })), {
      maxKeys: 4,
    })
    const ids = fc.constantFrom('front', 'rear', 'hub-2')
    const sheet = fc.record({
      kind: text,
      machine: part,
      gearcases: fc.dictionary(
        ids,
        fc.record({ type: text, more: part, openings: fc.dictionary(ids, part) }),
      ),
    })
    law(300, sheet, (data) => {
      const table = writeSheetTable(data)
      const read = readSheetTable(table, 'sheet.csv', words.reports)
      expect(read.findings).toEqual([])
      const { gearcases, ...head } = data
      const expected = Object.keys(gearcases).length === 0 ? head : data
      expect(JSON.parse(JSON.stringify(read.data))).toEqual(JSON.parse(JSON.stringify(expected)))
      const cells: readonly (readonly string[])[] = parseCsv(table)
      for (const cell of cells.flat()) expect(cell).not.toMatch(/^\s*[=@＝]/)
    })
  })
})

describe('new with tables', () => {
  it('writes a sheet as a table, and reads it back into short notation', async () => {
    const table = await run(['--from', 'examples/tind-4/sheet.yaml', '--out', 'sheet.csv'])
    expect(table.code).toBe(0)
    const csv = table.written.get('sheet.csv') ?? ''
    expect((await run(['--from', 'examples/tind-4/sheet.yaml', '--format', 'csv'])).out).toBe(csv)
    const back = await run(['--from', 'sheet.csv'], { 'sheet.csv': csv })
    expect(back).toMatchObject({ code: 0, err: '' })
    const read = parseDocument('spec-sheet', parse(back.out))
    const originalSheet = parseDocument('spec-sheet', parse(sheetText('tind-4')))
    expect(read.ok && originalSheet.ok && read.value).toEqual(originalSheet.ok && originalSheet.value)
  })

  it('reports each bad cell with its line and column', async () => {
    const { out: csv } = await run(['--from', 'examples/kvist-2/sheet.yaml', '--format', 'csv'])
    const lines = csv.replace(/\d lbf·ft|\d kgf·m|\d N·m|\d mL|\d cc/, '5 Nnm').split('\r\n')
    const line = lines.findIndex((text) => text.includes('5 Nnm')) + 1
    const badRun = await run(['--from', 's.csv'], { 's.csv': `${lines.join('\r\n')}` })
    expect(line).toBeGreaterThan(1)
    expect(badRun.code).toBe(1)
    expect(badRun.err).toMatch(new RegExp(`^s\\.csv:${line}:1: error: Column /[^:]+: `))
    const strangeRun = await run(['--from', 's.csv'], {
      's.csv': `gearcase,opening,/type,colour\nrear,,x,red\n,drain,y,\nrear,,z,\n`,
    })
    for (const message of [
      'Column colour: expected gearcase',
      'which gearcase has this opening',
      'a row for this part already',
      'another cell of this row',
    ])
      expect(strangeRun.err).toContain(message)
  })

  it('writes no other document as a table', async () => {
    expect(await run(['log', '--format', 'csv'])).toMatchObject({
      code: 2,
      err: expect.stringContaining('only a sheet can be a table'),
    })
  })
})
