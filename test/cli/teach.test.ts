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
      '    write: kind: spec-sheet   (what this document is)',
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
      /first\.yaml:9:7: error: Expected an object, found a number \(300\)\.\n {4}write its refill with the unit, such as\n {6}fill: 450 mL\n/,
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

  it('with a text that is not understood gives the place, what is expected, and two examples or the correct text', async () => {
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

  it.each([
    ['wrenches: []', 'toolbox', '"sockets"'],
    ['containers: {}', 'stock', '"seals"'],
    ['meters: {}', 'log', '"identity"'],
    ['kind: log\nmeters: {}', 'log', '"identity"'],
    ['steps: []', 'procedure', '"services"'],
    ['entries: []', 'record', '"detail"'],
  ])('of %j is read as a %s', async (text, _, key) => {
    expect((await check(text)).out).toContain(key)
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
