import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { runCommand } from '../../src/cli/runCommand.js'
import { UNITS_BY_MEASURE } from '../../src/quantity/index.js'
import { parseDocument, parseDocumentText } from '../../src/schema/index.js'
import { memoryIo } from '../support/memoryIo.js'

async function run(words: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const io = memoryIo(files)
  const code = await runCommand(words, io)
  return { code, out: io.out.join('\n'), err: io.err.join('\n'), written: io.written }
}

const printBlank = async (...words: readonly string[]) => (await run(['new', ...words])).out

/** The codes of all findings in the documents of one set. */
async function findingsOf(files: Readonly<Record<string, string>>, level = 'info') {
  const { code, out } = await run(['check', ...Object.keys(files), '--level', level], files)
  return { code, out }
}

/** The document with every example line used: `{}`, `[]` and the `#` before the lines below are removed. */
const filledIn = (text: string) =>
  text.replaceAll(/: (?:\{\}|\[\])$/gm, ':').replaceAll(/^#(?=[a-z]| {2})/gm, '')

const EXAMPLE = /^( *\w+: )not stated {2}# (.+)$/gm

describe('a blank document', () => {
  const NAMES = ['front', 'rear', 'front-final-drive', 'transfer-case', 'left-hub', 'bevel-box', 'gearbox']

  it.each([['rear'], NAMES.slice(0, 2), NAMES])(
    'of a sheet with %s … has no finding, and can be planned',
    async (...ids) => {
      const set = {
        'sheet.yaml': await printBlank('--gearcases', ids.join(',')),
        'toolbox.yaml': await printBlank('toolbox'),
        'stock.yaml': await printBlank('stock'),
      }
      const log = await run(['new', 'log', '--sheet', 'sheet.yaml'], set)
      const files = { ...set, 'log.yaml': log.out }
      expect(await findingsOf(files)).toMatchObject({ code: 0, out: expect.stringContaining('0 findings') })
      for (const words of [[], ['--service', 'gear-oil-change']]) {
        const { code, out } = await run(['plan', ...Object.keys(files), ...words], files)
        expect(code).toBe(0)
        for (const id of ids)
          expect(out.toLowerCase().replaceAll(/\s+/g, ' ')).toContain(id.replaceAll('-', ' '))
      }
    },
  )

  it('of a sheet with variants has no finding, and neither has its example of an override', async () => {
    const text = await printBlank('--gearcases', 'front,rear', '--variants', 'short,long')
    const written = text.replaceAll(/^#(overrides:| {2}- when:| {4})/gm, '$1')
    expect(written).not.toBe(text)
    for (const sheet of [text, written])
      expect((await findingsOf({ 'sheet.yaml': sheet })).out).toContain('0 findings')
    const read = parseDocument('spec-sheet', parse(written))
    if (!read.ok) throw new Error('not read')
    expect(Object.keys(read.value.machine.variants)).toEqual(['short', 'long'])
    expect(read.value.overrides).toMatchObject([
      {
        when: { variants: ['long'] },
        set: [{ path: '/gearcases/rear/oilSpace/fill/drainAndRefill', to: { value: '450', unit: 'mL' } }],
      },
    ])
  })

  it.each(['short,Long', 'short,short', '', 'a b'])('is refused with the variants %j', async (ids) => {
    const { code, err } = await run(['new', '--variants', ids])
    expect([code, err]).toEqual([2, expect.stringContaining(`--variants ${ids}: expected different ids`)])
  })

  it('names the sheet of a log that has none as `new` writes it', async () => {
    const files = { 'log.yaml': await printBlank('log'), 'sheet.yaml': await printBlank() }
    expect((await findingsOf(files)).code).toBe(0)
    expect((await run(['due', ...Object.keys(files)], files)).out).toContain('gear oil change, rear')
  })

  it.each(['log', 'toolbox', 'stock'])('of a %s is good with its examples in place too', async (kind) => {
    const text = await printBlank(kind)
    const files = { [`${kind}.yaml`]: filledIn(text), 'sheet.yaml': await printBlank() }
    expect(filledIn(text)).not.toBe(text)
    expect(await findingsOf(files)).toMatchObject({ code: 0, out: expect.stringContaining('0 findings') })
  })

  it('shows the variants of its sheet in a log', async () => {
    const { out } = await run(['new', 'log', '--sheet', 'test/fixtures/short/two-variants.yaml'])
    expect(out).toContain('its variant: short or long')
    expect(out).toContain('sheet: { id: nordli-ferd-3, revision: "2026-11" }')
    expect(out).toContain('- rear-oil-change of rear')
  })
})

describe('the examples in a blank sheet', () => {
  it.each([
    ...UNITS_BY_MEASURE.torque,
    ...UNITS_BY_MEASURE.volume,
    ...UNITS_BY_MEASURE.distance,
    ...UNITS_BY_MEASURE.temperature,
  ])('are read in %s', async (unit) => {
    const sheet = await printBlank('--unit', unit)
    const written = sheet.replaceAll(EXAMPLE, '$1$2')
    expect([...sheet.matchAll(EXAMPLE)]).toHaveLength(10)
    expect(await findingsOf({ 'sheet.yaml': written }, 'error')).toMatchObject({ code: 0 })
    const exampleComments = [...sheet.matchAll(/^# {3}((\w+): .+)$/gm)]
    expect(exampleComments.length).toBe(9)
    for (const [, line = '', key = ''] of exampleComments) {
      const place = new RegExp(`(?<=\\n *)${key}: not stated.*`)
      const exampleLines =
        key === 'source'
          ? `${sheet}${line}\n`
          : key === 'thread'
            ? sheet.replace(/(?<=\n)( *)(?=drive: )/, `$1${line}\n$1`)
            : sheet.replace(place, line)
      expect(exampleLines, line).not.toBe(sheet)
      expect(await findingsOf({ 'sheet.yaml': exampleLines }, 'error'), line).toMatchObject({ code: 0 })
    }
  })

  it('tell how to write a level hole', async () => {
    const sheet = await printBlank()
    const uses = /"(uses: .*?)"/.exec(sheet)?.[1] ?? ''
    const fill = /"(fill: .*?)"/.exec(sheet)?.[1] ?? ''
    const written = sheet
      .replace('  tightening: not', `  ${uses}\n        tightening: not`)
      .replace(/fill: not stated.*/, fill)
    expect(written).toContain('to level hole\n')
    expect(await findingsOf({ 'sheet.yaml': written })).toMatchObject({ code: 0 })
  })

  it('are in the units that are named', async () => {
    const sheet = await printBlank('--unit', 'lbf.ft, US qt,mi,°F')
    for (const text of ['22 lbf·ft', '0.48 US qt', '1200 mi', '14 to 110 °F']) expect(sheet).toContain(text)
    expect(await printBlank('toolbox', '--unit', 'lbf.in')).toContain('20–100 lbf·in by 1, click, 1/2 in')
  })
})

describe('new', () => {
  it('writes a file, and never over one that exists', async () => {
    const first = await run(['new', '--out', 'my/sheet.yaml'])
    expect(first).toMatchObject({ code: 0, out: 'Written: my/sheet.yaml' })
    expect(first.written.get('my/sheet.yaml')).toBe(await printBlank())
    const second = await run(['new', '--out', 'my/sheet.yaml'], { 'my/sheet.yaml': 'mine' })
    expect(second).toMatchObject({ code: 2, err: expect.stringContaining('my/sheet.yaml exists') })
    expect(second.written.size).toBe(0)
  })

  it('writes JSON if asked, or if the file is to be JSON', async () => {
    const asked = await printBlank('toolbox', '--format', 'json')
    expect(JSON.parse(asked)).toMatchObject({ kind: 'toolbox', wrenches: {} })
    const { written } = await run(['new', 'toolbox', '--out', 'toolbox.json'])
    expect(written.get('toolbox.json')).toBe(`${asked}\n`.replace(/\n\n$/, '\n'))
  })

  it.each([
    [['procedure'], 'expected one of sheet, log, toolbox, stock'],
    [['log', 'stock'], 'expected one of sheet, log, toolbox, stock'],
    [['--gearcases', 'front,front'], 'expected different ids'],
    [['--gearcases', 'Front'], 'expected different ids'],
    [['--gearcases', 'a: {}\n  b'], 'expected different ids'],
    [['--gearcases', 'constructor'], 'expected different ids'],
    [['--gearcases', ''], 'expected different ids'],
    [['--unit', 'qt'], 'expected a unit of torque'],
    [['--unit', 'kg'], 'expected a unit of torque'],
    [['--out', 'sheet.txt'], 'expected a name that ends in'],
    [['log', '--gearcases', 'front'], '--gearcases, --variants and --from can only be used for a sheet'],
    [['stock', '--sheet', 'sheet.yaml'], '--sheet can only be used for a log'],
    [['log', '--sheet', 'examples/tind-4/log.yaml'], 'expected one sheet, found 0'],
  ])('refuses %j', async (words, message) => {
    expect(await run(['new', ...words])).toMatchObject({ code: 2, err: expect.stringContaining(message) })
  })

  it.each(['acre-26', 'bud-3', 'kvist-2', 'reach-55', 'tind-4'])(
    'rewrites the full sheet of %s short',
    async (example) => {
      const from = `schemas/v1/vectors/bases/${example}/sheet.json`
      const { code, out } = await run(['new', '--from', from])
      expect(code).toBe(0)
      // A position is one line more.
      const positions = out.match(/ \S*position: /g) ?? []
      expect(out.split('\n').length - positions.length).toBeLessThan(130)
      const fullResult = parseDocumentText('spec-sheet', readFileSync(from, 'utf8'))
      const shortResult = parseDocument('spec-sheet', parse(out))
      expect(shortResult.ok && shortResult.value).toEqual(fullResult.ok && fullResult.value)
    },
  )

  it('rewrites only a sheet, with its own gearcases and units', async () => {
    const from = ['--from', 'schemas/v1/vectors/bases/tind-4/sheet.json']
    for (const words of [
      ['log', ...from],
      [...from, '--unit', 'lbf.ft'],
      ['--from', 'examples/tind-4/log.yaml'],
    ])
      expect((await run(['new', ...words])).code).toBe(2)
  })

  it('gives the findings of a sheet that it cannot read', async () => {
    const files = { 'sheet.yaml': (await printBlank()).replace('type: utility machine', 'typ: x') }
    expect(await run(['new', 'log', '--sheet', 'sheet.yaml'], files)).toMatchObject({
      code: 1,
      err: expect.stringContaining('"typ"'),
    })
  })
})
