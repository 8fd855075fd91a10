import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

async function check(text: string, file = 'first.yaml') {
  const io = memoryIo({ [file]: text })
  const code = await runCommand(['check', file], io)
  const out = io.out.join('')
  return { code, out, lines: out.trimEnd().split('\n') }
}

/** Sheets as a newcomer writes them, for an invented machine. */
const NAIVE = {
  'a note': `name: Ferd 2
manufacturer: Nordli
oil: 80W90
fill: 300
drain plug torque: 25
service interval: 200 hours
`,
  'wrong keys': `kind: spec-sheet
id: Ferd 2
machine:
  make: Nordli
  model: Ferd 2
gearcases:
  rear:
    type: rear axle
    oil: 80W90
    capacity: 300 ml
    openings:
      fill plug:
        torque: 25
      drain:
        tightening: 25Nm
        seal: copper washer
services:
  oil change: 200 hours
`,
  lists: `kind: sheet
version: 1
id: ferd-2
machine: Nordli Ferd 2
gearcases:
  - name: rear
    type: final drive
    oilSpace:
      fill: 300
      oils: [80W90, 75W90]
    openings:
      - name: drain
        tightening: 25
services:
  - every 200 h
`,
  tabs: `kind: spec-sheet
version: "1.0"
id: ferd-2
machine:
	make: Nordli
	model: Ferd 2
gearcases:
	rear: { type: final drive, oilSpace: { oils: 80W90 } }
`,
  texts: `kind: spec-sheet
version: "1.0"
id: ferd-2
revision: 2024
machine: { make: Nordli, model: Ferd 2, type: utility machine }
sources: { manual: Ferd 2 manual }
gearcases:
  front:
    type: differential
    oilSpace: { oils: 80W90 GL-5, fill: "0,45 L" }
    openings:
      fill: { tightening: 25, seals: copper washer 14 x 18 }
      drain: 25 ft-lbs
  rear:
    type: differential
    oilSpace: { oils: 80W90 GL-5, fill: 1 qt }
    openings:
      drain: 25-30 Nm
services:
  oil-change: every 200 hours or 12 months
`,
}

describe('a naive first sheet', () => {
  it.each(Object.entries(NAIVE))('of %s is at most one screen', async (_, text) => {
    const { code, lines } = await check(text)
    expect(code).toBe(1)
    expect(lines.length).toBeGreaterThan(8)
    expect(lines.length).toBeLessThanOrEqual(40)
  })

  it('without a kind is read as the sheet that it is, with everything to copy first', async () => {
    const { lines, out } = await check(NAIVE['a note'])
    expect(lines.slice(0, 3)).toEqual([
      'first.yaml:1:1: error: Missing keys "kind", "version", "id", "revision" and "machine".',
      '    write: kind: spec-sheet   (the kind of this document)',
      '    write: version: "1.0"   (the version of this format)',
    ])
    for (const key of ['name', 'manufacturer', 'oil', 'fill', 'drain plug torque', 'service interval'])
      expect(out).toContain(`Unknown key "${key}"`)
    expect(out.match(/Known: /g)).toHaveLength(1)
    expect(out).toContain(
      'its torque with the unit belongs at /gearcases/*/openings/*/tightening, such as\n      tightening: 30 N·m\n',
    )
  })

  it('shows what is in a list that should be a map', async () => {
    const { out } = await check(NAIVE.lists)
    expect(out).toContain(
      'write a map of gearcases by id, such as\n      gearcases:\n        rear:\n          type: final drive\n',
    )
    expect(out).toMatch(
      /first\.yaml:9:7: error: Expected an object, found a number \(300\)\.\n {4}write its refill quantity with the unit, such as\n {6}fill: 450 mL\n/,
    )
    expect(out).toContain('at /gearcases/0/oilSpace/oils')
    expect(out).toContain('... and 3 more')
  })

  it('with tabs is read on as if they were spaces', async () => {
    const { lines, out } = await check(NAIVE.tabs)
    expect(lines.slice(0, 2)).toEqual([
      'first.yaml:5:1: error: Not valid YAML: line 5, column 1: Tabs are not allowed as indentation',
      '    indent with spaces',
    ])
    for (const text of ['Missing key "revision"', 'Missing key "type"', 'write: SAE 80W-90\n'])
      expect(out).toContain(text)
  })

  it('for an invalid text gives its position, the expected form, and two examples or the correct text', async () => {
    const { out } = await check(NAIVE.texts)
    expect(out).toContain(
      '    copper washer 14 x 18\n    ^^^^^^^^^^^^^^^^^^^^^\n    write its seal, such as\n      seals: flat copper',
    )
    expect(out).toContain('\n      seals: o-ring')
    expect(out).toContain(
      '    write: SAE 80W-90 GL-5\n    spec/bad-notation at /gearcases/front/oilSpace/oils; also at line 16\n',
    )
    expect(out).toContain('    write: "2024"\n    spec/wrong-type at /revision\n')
    expect(out).toMatch(/\n\.\.\. and \d more: correct these first, or list all with --format json\.\n/)
  })

  it('as a table (CSV) is recognised', async () => {
    const { out, lines } = await check('gearcase,oil,fill,torque\nrear,80W90,300,25\n', 'figures.csv')
    expect(out).toContain('a table (CSV) with the columns "gearcase", "oil", "fill" and "torque"')
    expect(lines).toHaveLength(3)
  })

  it('as JSON gets its examples in JSON', async () => {
    const { out } = await check(
      '{"kind": "spec-sheet", "version": "1.0", "id": "ferd-2", "revision": "1", "gearcases": []}',
      'first.json',
    )
    expect(out).toContain('write: "machine":{"make":"Nordli","model":"Ferd 2","type":"utility machine"}')
    expect(out).toContain('      "gearcases":{"rear":{"type":"final drive"}}\n')
  })
})

describe('a document without a kind is read as what it looks like, and everything to copy is of that kind', () => {
  const [VERSION_LINE, SHEET_LINE] = [
    'version: "1.0"   (the version of this format)',
    'sheet: ferd-2, revision 1   (the sheet of the machine)',
  ]
  const kind = (of: string) => `kind: ${of}   (the kind of this document)`
  const TOOLBOX = ['id: station-tools   (your short name for it)', 'name: Station tools   (your name for it)']
  const STOCK = ['id: station-shelf   (your short name for it)', 'name: Station shelf   (your name for it)']
  const LOG = [
    'id: station-2   (the name by which records refer to the machine)',
    'name: Station 2   (your name for it)',
    SHEET_LINE,
  ]
  const PROCEDURE = [
    'id: ferd-2-oil-change   (your short name for it)',
    'name: Ferd 2 oil change   (your name for it)',
    'sheet: { id: ferd-2, revision: "1" }   (the sheet of the machine)',
    'identity: { serial: FS 00123 }   (the data on the plate)',
    'services: [rear-oil-change]   (its services)',
  ]
  const RECORD = [
    'id: station-2-2023-10-06   (your short name for it)',
    'machine: station-2   (the id of its log)',
    SHEET_LINE,
    'date: 2023-10-06   (the day of the work)',
    'readings: 512.6 h   (the meter readings)',
  ]
  const written = (lines: readonly string[]) => lines.map((line) => `    write: ${line}`)
  const missingText = (lines: readonly string[]) => {
    const keys = lines.map((line) => `"${line.split(':')[0]}"`)
    return [
      `first.yaml:1:1: error: Missing keys ${keys.slice(0, -1).join(', ')} and ${keys.at(-1)}.`,
      ...written(lines),
      '    spec/missing-key',
    ]
  }

  it.each([
    ['containers: {}', missingText([kind('stock'), VERSION_LINE, ...STOCK])],
    ['meters: {}', missingText([kind('machine-log'), VERSION_LINE, ...LOG])],
    ['steps: []', missingText([kind('procedure'), VERSION_LINE, ...PROCEDURE])],
    ['entries: []', missingText([kind('service-record'), VERSION_LINE, ...RECORD])],
  ])('%j', async (text, expected) => {
    const { lines } = await check(text)
    expect(lines.slice(0, -1)).toEqual(expected)
    const copied = expected.flatMap((line) => line.match(/write: (.*?) {3}\(/)?.[1] ?? [])
    expect((await check([...copied, text].join('\n'))).out).toBe(
      '1 document read, 0 findings of level warning or above.',
    )
  })

  it('a kind that is no text', async () => {
    const { lines } = await check('kind: 5\nmeters: {}')
    expect(lines.slice(0, -1)).toEqual([
      ...missingText([VERSION_LINE, ...LOG]),
      'first.yaml:1:1: error: Expected text, found a number.',
      '    write the kind of this document, such as',
      '      kind: machine-log',
      '    spec/wrong-type at /kind',
    ])
  })

  it('a kind that does not exist', async () => {
    const { lines } = await check('kind: log\nmeters: {}')
    expect(lines.slice(0, -1)).toEqual([
      'first.yaml:1:1: error: Expected kind spec-sheet, machine-log, toolbox, stock, procedure or service-record, found "log".',
      '    write the kind of this document, such as',
      '      kind: machine-log',
      '    spec/wrong-kind at /kind',
      ...missingText([VERSION_LINE, ...LOG]),
    ])
  })

  it.each([
    ['wrenches', 'torque wrenches', 'small-click: 5–25 N·m by 0.5, click, 1/4 in', 'toolbox', TOOLBOX],
    ['sockets', 'sockets', 'hex-8: internal hex 8 mm, 3/8 in', 'toolbox', TOOLBOX],
    ['vessels', 'measuring jugs', 'jug: 50–1000 mL by 10', 'toolbox', TOOLBOX],
    ['containers', 'oil containers', 'gear-oil: 2 x 1 L of SAE 80W-90 GL-5', 'stock', STOCK],
  ])('%s as a list', async (key, what, example, of, names) => {
    const { lines } = await check(`${key}: []`)
    expect(lines.slice(0, -1)).toEqual([
      ...missingText([kind(of), VERSION_LINE, ...names]),
      'first.yaml:1:1: error: Expected an object, found a list.',
      `    write a map of ${what} by id, such as`,
      `      ${key}:`,
      `        ${example}`,
      `    spec/wrong-type at /${key}`,
    ])
    const copied = lines.flatMap((line) => line.match(/write: (.*?) {3}\(/)?.[1] ?? [])
    expect((await check([...copied, `${key}:`, `  ${example}`].join('\n'))).code).toBe(0)
  })

  it('other parts that are of the wrong kind', async () => {
    const head = (of: string) => `kind: ${of}\nversion: "1.0"\nid: one\n`
    const tail = 'sheet: ferd-2, revision 1\n'
    for (const [before, key, shownExample] of [
      [head('stock'), 'seals', '  washer-14: 3 x flat copper crush washer 14 x 18 x 1.5 mm'],
      [`${head('machine-log')}${tail}`, 'meters', '  - 512.6 h on 2023-10-06'],
      [
        `${head('service-record')}machine: one\n${tail}date: 2023-10-06\nreadings: {}\n`,
        'entries',
        '  - gear-oil-change of rear',
      ],
      [
        `${head('procedure')}name: One\nsheet: { id: ferd-2, revision: "1" }\nidentity: {}\nservices: []\n`,
        'steps',
        '  - { id: read, do: read the manual }',
      ],
    ] as const) {
      const { code, out } = await check(`${before}${key}: 1\n`)
      expect([code, out]).toEqual([
        1,
        expect.stringContaining(`such as\n      ${key}:\n      ${shownExample}\n`),
      ])
      expect(await check(`${before}${key}:\n${shownExample}\n`)).toMatchObject({ code: 0 })
    }
  })
})

describe('mistakes that a new user made', () => {
  const sheet = (rest: string) => `kind: spec-sheet
version: "1.0"
id: kalv-2
revision: "1"
machine:
  make: Nordli
  model: Kalv 2
  type: utility machine
  variants: { short: {}, long: {} }
sources: { manual: Kalv 2 manual }
${rest}`
  const gearcase = (rest: string) => `gearcases:\n  rear:\n    type: differential\n${rest}`

  it.each([
    ['variants at the top', 'variants: { long: {} }\n', 'belongs at /machine/variants, such as\n'],
    [
      'overrides as a map',
      'overrides: { long: 1 }\n',
      'such as\n      overrides:\n        - when: variant long\n',
    ],
    ['a page without p.', 'source: 31\n', 'such as\n      source: p. 31\n'],
    ['a tool in the words of a manual', 'fill: { drive: hex key 10 mm }', 'write: internal hex 10 mm\n'],
    [
      'a level in the words of a manual',
      '1.2 L, to the lower edge of the fill hole',
      'write: 1.2 L, to level hole\n',
    ],
    [
      'the hole of the level',
      '1.2 L, to level hole',
      'write: uses: fill, level   (for the plug whose hole sets the level)\n',
    ],
  ])('%s', async (_name, written, expectedText) => {
    const rest = written.endsWith('\n')
      ? written
      : gearcase(
          written.startsWith('fill')
            ? `    openings:\n      ${written}\n`
            : `    oilSpace: { fill: "${written}" }\n`,
        )
    expect((await check(sheet(rest))).out).toContain(expectedText)
  })

  it('a place of an override that is no value', async () => {
    const override = `${gearcase('')}overrides:
  - when: variant long
    set: { /gearcases/rear/oilSpace/fill: 1.5 L }
`
    const { out } = await check(sheet(override))
    const [, place = ''] = /an override sets a single value, such as\n *(\S+)\n/.exec(out) ?? []
    expect(place).toBe('/gearcases/rear/oilSpace/fill/drainAndRefill')
    const fixedText = override.replace('/gearcases/rear/oilSpace/fill:', `${place}:`)
    expect(await check(sheet(fixedText))).toMatchObject({ code: 0 })
  })
})

describe('the examples of what to write', () => {
  it('make a good sheet', async () => {
    const asked = await check('{}')
    const head = [...asked.out.matchAll(/write: (.*?) {3}\(/g)].map(([, line]) => line).join('\n')
    expect(head).toContain('machine: {')
    expect((await check(`${head}\n`)).code).toBe(0)
    const { out } = await check(`${head}\ngearcases: 1\nservices: 1\n`)
    const examples = [...out.matchAll(/such as\n((?: {6}.*\n)+)/g)].map(([, lines = '']) =>
      lines.replaceAll(/^ {6}/gm, ''),
    )
    expect(examples).toHaveLength(2)
    expect((await check(`${head}\n${examples.join('')}`)).code).toBe(0)
  })
})
