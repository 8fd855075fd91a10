import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { COMMAND_NAMES } from '../../src/cli/commandTable.js'
import { runCommand } from '../../src/cli/runCommand.js'
import { listTexts } from '../support/catalogueTexts.js'
import { LANGUAGES } from '../support/languages.js'
import { memoryIo, PIPED } from '../support/memoryIo.js'

const TRANSLATIONS = LANGUAGES.filter((language) => language !== 'en')
const TODAY = ['--today', '2023-10-06']
const TIND = 'examples/tind-4'
const read = (path: string) => readFileSync(path, 'utf8')

/** A sheet with mistakes of many kinds, a record for its log, tables and rows: what makes the commands speak. */
const FILES: Readonly<Record<string, string>> = {
  'bad/sheet.yaml': `kind: spec-sheet
version: "1.0"
revision: 1
machine: { make: Nordli, model: Ferd 2, type: utility machine }
waivers: []
torques: 5
capacity: 450 mL
gearcases:
  rear:
    oil: SAE 90
    openings:
      drain: { tightening: 30 Nm x, drive: internal hex 8 mm, torque: 5 }
      fill: { tightening: 30 Nm x, drive: internal hex 8 mm, torque: 5 }
services: { rear-oil-change: 200 }
`,
  'bad/other.yaml': 'kind: spec-sheet\nname:\t\tx\n\tid: 1\n',
  'same/a.json': '{"kind": "toolbox"}',
  'same/b.json': '{"kind": "toolbox"}',
  'same/c.json': '{"kind": "toolbox"}',
  'lf.csv':
    'machine,date,hours,distance,colour\nstation-2,2023-10-07,519.5,5,red\nstation-2,06.10.2023,x,5,red\n',
  'sheet.csv': 'gearcase,opening,name,/machine/make\n,,,Nordli\n,drain,x,\nrear,,,\nrear,,,\n',
  'later/sheet.yaml': read(`${TIND}/sheet.yaml`)
    .replace('revision: 2023-03', 'revision: 2024-01')
    .replaceAll('450 mL', '460 mL'),
  'spelling/sheet.yaml': read(`${TIND}/sheet.yaml`).replace('services:', 'servises:'),
  [PIPED]:
    '{"id":"m-1","lastDate":"2023-04-06","lastHours":310,"hours":402,"hoursDate":"2023-10-01","everyHours":100,"color":1}\nnot json\n',
}

/** Command lines of every command: answers, reports and errors. */
const LINES: readonly (readonly string[])[] = [
  ['new'],
  ['new', 'log', '--sheet', `${TIND}/sheet.yaml`],
  ['new', 'toolbox', '--out', 'toolbox.yaml'],
  ['new', '--from', 'sheet.csv'],
  ['new', 'pump'],
  ['new', '--out', 'x.txt'],
  ['check', 'examples', '--level', 'info'],
  ['check', 'bad'],
  ['check', 'same', '--write-baseline', 'known.json'],
  ['check', 'spelling', '--fix', '--dry-run'],
  ['check', 'nowhere.yaml'],
  ['check', '-'],
  ['check'],
  ['due', TIND, ...TODAY],
  ['due', 'examples/acre-26', TIND, ...TODAY],
  ['due', '-', ...TODAY],
  ['due', '--every', '250 h, 12 months', '--last', '2022-11-20 at 301.4 h', '--now', '2023-10-06 at 512.6 h'],
  ['due', '--every', '20 h', '--last', '2022-11-20 at 301.4 h', '--now', '2023-10-06 at 512.6 h'],
  ['due', '--every', '250 h'],
  ['plan', TIND, ...TODAY],
  ['plan', TIND, ...TODAY, '--full'],
  ['plan', 'examples/acre-26', ...TODAY],
  ['plan', TIND, '--ambient', 'cold'],
  ['card', TIND, ...TODAY, '--out', 'out'],
  ['card', TIND, '--paper', 'wall', '--out', 'out'],
  ['card', TIND, '--paper', 'chart', '--out', 'out', ...TODAY],
  ['card', TIND],
  ['cues', TIND, ...TODAY],
  ['cues', TIND, ...TODAY, '--format', 'vtt', '--starts', '0:00'],
  ['kits', TIND, ...TODAY],
  ['kits', 'examples/acre-26', 'examples/bud-3', ...TODAY],
  ['procedure', TIND, ...TODAY, '--out', 'own.yaml'],
  ['procedure', TIND],
  ['repair', 'examples/tind-4/procedure.yaml', `${TIND}/sheet.yaml`],
  ['repair', TIND],
  ['compare', `${TIND}/sheet.yaml`, 'later/sheet.yaml'],
  ['compare', TIND],
  ['record', '--from-plan', TIND, ...TODAY, '--out', 'record.yaml'],
  ['record', TIND, ...TODAY, '--out', 'appended.yaml'],
  ['record', '--top-up', '50 mL of gear oil 80W-90', '--at', 'front', '--on', '2023-10-06 at 513 h', TIND],
  ['record', '--top-up', '50 mL', '--at', 'front', TIND],
  ['history', 'examples/acre-26', ...TODAY],
  ['slip', TIND, ...TODAY, '--out', 'slip.html'],
  ['slip', TIND, '--record', 'r'],
  ['used-oil', TIND],
  ['used-oil', 'examples/acre-26'],
  ['import', 'lf.csv', `${TIND}/log.yaml`, ...TODAY],
  ['import'],
  ['convert', '8.9 lbf·ft', '--to', 'N.m'],
  ['convert', '3', '--to', 'N.m'],
  ['convert', '1 L', '--to', 'kg'],
  ['torque', '9.3 lbf·ft', '--wrench', '40–200 lbf·in by 1'],
  ['torque', '300 N·m', '--wrench', '40–200 lbf·in by 1'],
  ['torque', '9.3', '--wrench', '40–200 lbf·in by 1'],
  ['fill', '1 L', '--vessel', '300 mL by 10'],
  ['fill', '340 cc', '--vessel', '700 mL'],
  [
    'pour',
    '340 cc',
    '--kv40',
    '143',
    '--kv100',
    '15.1',
    '--at',
    '-5 °C',
    '--hose',
    '8 mm x 1 m',
    '--funnel',
    '120 mm x 100 mm',
  ],
  ['pour', '340 cc'],
  ['meets', '80W-90 GL-5', '--manual', '80W-90 GL-4', '--yellow-metal', 'yes'],
  ['meets', '80W-90 GL-5', '--manual', '80W-90 GL-4', '--additive', 'perhaps'],
  ['washer', '18 x 22 x 1.5 mm', '--thread', 'M18x1.5'],
  ['washer', '10 x 12 x 1.5 mm', '--thread', 'M18x1.5'],
  ['schema', 'sheet'],
  ['completion', 'fish'],
  ['completion'],
]

async function run(line: readonly string[], language: string) {
  const io = memoryIo(FILES)
  const code = await runCommand([...line, '--language', language], io)
  return { code, text: [...io.out, ...io.err].join('\n') }
}

/** Values in the examples of blank documents. */
const IN_EXAMPLES: readonly string[] = ['from the ground', ', to level hole']

/** Pieces of English texts, long enough that no document has them by chance. */
const ENGLISH_PIECES = ['src/cli/message/en', 'src/message/en']
  .flatMap((folder) => readdirSync(folder).flatMap((file) => listTexts(join(folder, file))))
  .flatMap((text) => text.split('\n'))
  // What is typed stays English in each language.
  .map((text) => text.replaceAll(/"[^"]*"?/g, '').trim())
  .filter((text) => (text.match(/\p{L}{2,}/gu) ?? []).length >= 3 && text.length > 14)
  .filter((text) => !IN_EXAMPLES.includes(text))

it('the lines below run every command', () => {
  expect([...new Set(LINES.map(([name]) => name))].sort()).toEqual([...COMMAND_NAMES].sort())
  expect(ENGLISH_PIECES.length).toBeGreaterThan(1500)
})

it('most of them print whole English sentences', async () => {
  const outputs = await Promise.all(LINES.map((line) => run(line, 'en')))
  const withPieces = outputs.filter(({ text }) => ENGLISH_PIECES.some((piece) => text.includes(piece)))
  expect(withPieces.length).toBeGreaterThan(50)
})

describe.each(LINES.map((line) => [line.join(' '), line] as const))('%s', (_name, line) => {
  let english: Awaited<ReturnType<typeof run>>
  beforeAll(async () => {
    english = await run(line, 'en')
  })

  it.each(TRANSLATIONS)('in %s has the same exit code, and no piece of them', async (language) => {
    const { code, text } = await run(line, language)
    expect(code).toBe(english.code)
    expect(text).not.toBe(english.text)
    expect(ENGLISH_PIECES.filter((piece) => text.includes(piece))).toEqual([])
    expect(text).not.toMatch(/undefined|NaN|\[object/)
  })
})

it.each(TRANSLATIONS)(
  'in %s kits and orders name seals, and write sizes, in the language',
  async (language) => {
    const english = await run(['kits', TIND, ...TODAY], 'en')
    expect(english.text).toMatch(/crush washer .*1\.5 mm/)
    const { text } = await run(['kits', TIND, ...TODAY], language)
    expect(text.split('\n').length).toBe(english.text.split('\n').length)
    expect(text).toMatch(/ 1,5 mm/)
    expect(text).not.toMatch(/crush washer|o-ring(?! )|[0-9]\.[0-9]/)
  },
)

it.each([
  ['a: 1\n\tb: 2\n', 'Tabs are not allowed'],
  ['a:\n   b: 1\n  c: 2\n', 'All mapping items must start'],
  ['a:\n   - 1\n  - 2\n', 'A block sequence may not'],
  ['a: b: c\n', 'Nested mappings'],
  ['a: 1\nb\n', 'Implicit map keys need'],
  ['a: "x\n', 'Missing closing'],
  ['a: [1 2, {b: 1}\n', 'Flow sequence in block'],
  ['a: {b: 1 c: 2}\n', 'Block collections are not'],
  ['a: @x\n', 'Plain value cannot start'],
  ['a: "x"#y\n', 'Comments must be separated'],
  ['a: &x 1\nb: *x\n', 'anchors and aliases'],
  ['? [a]\n: 1\n', 'a key must be a text'],
  ['a: 1\n---\nb: 2\n', 'more than one document'],
])('what is wrong with the YAML %j is in the language', async (text, english) => {
  const check = async (language: string) => {
    const io = memoryIo({ 'x.yaml': text })
    expect(await runCommand(['check', 'x.yaml', '--language', language], io)).toBe(1)
    return io.out.join('\n')
  }
  expect(await check('en')).toMatch(new RegExp(english))
  for (const language of TRANSLATIONS) expect(await check(language)).not.toMatch(new RegExp(english))
})

describe('the terminal', () => {
  /** Lines that are too long although a space could break them. */
  const tooLong = (text: string, columns: number) =>
    text.split('\n').filter((line) => Array.from(line).length > columns && line.trim().includes(' '))

  it.each(TRANSLATIONS.flatMap((language) => [80, 60, 40].map((columns) => [language, columns] as const)))(
    'in %s plan, due and cues fit %d columns',
    async (language, columns) => {
      for (const line of [
        ['plan', TIND, ...TODAY],
        ['plan', TIND, ...TODAY, '--full'],
        ['due', TIND, ...TODAY],
        ['due', TIND, 'examples/acre-26', ...TODAY],
        ['cues', TIND, ...TODAY],
      ]) {
        const io = { ...memoryIo(), columns }
        await runCommand([...line, '--language', language], io)
        const [answer = ''] = io.out
        expect(answer.length).toBeGreaterThan(100)
        expect(tooLong(answer, columns), line.join(' ')).toEqual([])
      }
    },
  )
})
