import { execFileSync, spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { exampleMachines } from '../support/exampleMachines.js'
import { writeLanguageEntry } from '../support/languageEntry.js'
import { requestExample } from '../support/planExample.js'
import { MARK, makeLanguage } from './support/makeLanguage.js'

const ROOT = join(import.meta.dirname, '../..')
const NAME = 'xx'

const MISTAKES = { mood: 'good', gearcases: 30 }

/** What the built copy does: the summary of a plan, its card, the wall card, and findings. */
const SCRIPT = `
import { readFileSync } from 'node:fs'
import { summariseVisit } from './card/summariseVisit.js'
import { loadCatalogue } from './cli/loadCatalogue.js'
import { cardModel, renderText, wallModel } from './v1/card.js'
import { ${NAME} } from './v1/message/${NAME}.js'
import { renderMessage } from './v1/message.js'
import { checkDocuments } from './v1/rules.js'
import { planVisit, wallFacts } from './v1/service.js'
import { parseDocument } from './v1/spec.js'

const catalogue = await loadCatalogue('${NAME}')
if (catalogue !== ${NAME}) throw new Error('two catalogues')
const { facts, options, mistakes } = JSON.parse(readFileSync(0, 'utf8'))
const planned = planVisit(facts, options)
if (!planned.ok) throw new Error('no plan')
const wall = wallFacts({ sheet: facts.sheet, toolbox: facts.toolbox, identity: facts.log.identity }, { iso6789: '2017' })
if (!wall.ok) throw new Error('no wall')
const misspelt = parseDocument('spec-sheet', { ...facts.sheet, ...mistakes })
const log = { ...facts.log, sheet: { ...facts.log.sheet, revision: '0' } }
const set = { sheets: [{ name: 'sheet', document: facts.sheet }], logs: [{ name: 'log', document: log }] }
const others = { toolboxes: [], stocks: [], procedures: [], records: [] }
const findings = [...misspelt.findings, ...checkDocuments({ ...set, ...others }, { today: facts.today })]
console.log(JSON.stringify({
  language: catalogue.language,
  plan: summariseVisit(planned, catalogue).join('\\n'),
  card: renderText(cardModel(planned, catalogue), { width: 1000 }),
  wall: renderText(wallModel(wall.value, catalogue), { width: 1000 }),
  findings: findings.map((finding) => renderMessage(finding, catalogue)),
}))
`

const OPTIONS = {
  noEmit: false,
  incremental: false,
  declaration: false,
  allowJs: true,
  rootDir: 'src',
  outDir: 'built',
}

let copy = ''
beforeAll(() => {
  copy = mkdtempSync(join(tmpdir(), 'language-'))
  cpSync(join(ROOT, 'src'), join(copy, 'src'), { recursive: true })
  symlinkSync(join(ROOT, 'node_modules'), join(copy, 'node_modules'))
  cpSync(join(ROOT, 'package.json'), join(copy, 'package.json'))
  // One folder …
  makeLanguage(join(copy, 'src/message'), NAME)
  // … one line …
  const loader = join(copy, 'src/cli/loadCatalogue.ts')
  const line = `  ${NAME}: async () => (await import('../message/${NAME}/index.js')).${NAME},\n`
  writeFileSync(loader, readFileSync(loader, 'utf8').replace(/(?<=\n)(?= {2}fr: )/, line))
  // … and what `npm run generate` writes.
  writeFileSync(join(copy, `src/v1/message/${NAME}.ts`), writeLanguageEntry(NAME))
  writeFileSync(join(copy, 'src/script.js'), SCRIPT)
  const settings = { extends: join(ROOT, 'tsconfig.json'), compilerOptions: OPTIONS, include: ['src'] }
  writeFileSync(join(copy, 'tsconfig.json'), JSON.stringify(settings))
})
afterAll(() => rmSync(copy, { recursive: true, force: true }))

/** What the compiler reports: nothing if all is right. */
const compile = (): string =>
  spawnSync(process.execPath, [join(ROOT, 'node_modules/typescript/bin/tsc'), '-p', copy], {
    encoding: 'utf8',
  }).stdout

/** Words next to each other without a marked letter. */
const unmarkedRuns = (text: string): readonly string[] =>
  text
    .normalize('NFD')
    .replaceAll(new RegExp(`[A-Za-z]${MARK}`, 'g'), '\u2603')
    .match(/(?<!\u2603)\b[A-Za-z]{2,}(?:[ \u00a0-][A-Za-z]{2,})*\b(?!\u2603)/g) ?? []

/** What an unmarked text may be besides words of the documents: the symbols of units and of oils. */
const SYMBOLS = 'mL mm min km mi ft lbf kgf US qt pt gal fl oz SAE API'.split(' ')

/** All keys and texts of a document. */
function listStrings(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, item]) => [key, ...listStrings(item)])
}

const listWords = (text: string): readonly string[] => text.normalize('NFD').match(/[\p{L}\p{M}0-9]+/gu) ?? []

/** The unmarked words that are neither in the documents, word for word, nor symbols. */
function findEnglish(texts: readonly string[], documents: unknown): readonly string[] {
  const written = listStrings(documents).map((text) => ` ${listWords(text).join(' ').toLowerCase()} `)
  return texts.flatMap(unmarkedRuns).filter((run) => {
    const words = listWords(run).filter((word) => !SYMBOLS.includes(word))
    return words.length > 0 && !written.some((text) => text.includes(` ${words.join(' ').toLowerCase()} `))
  })
}

/** The keys of a sheet, which a finding lists for a misspelt one. */
const KEYS = Object.keys(
  JSON.parse(readFileSync(join(ROOT, 'schemas/v1/spec-sheet.json'), 'utf8')).properties,
)

it('the search for English finds a text that is not translated', () => {
  expect(findEnglish(['450 mL SAE 80W-90', 'rear gearcase'], { name: 'Rear gearcase' })).toEqual([])
  expect(findEnglish(['rear gearcase', `no\u0301o\u0301 crosswise`], {})).toEqual([
    'rear gearcase',
    'crosswise',
  ])
})

it('a fifth language is one folder and one line: it compiles, and nothing that it prints is English', () => {
  expect(compile()).toBe('')
  for (const machine of exampleMachines()) {
    const { services, due, iso6789, ...facts } = requestExample(machine)
    const input = JSON.stringify({ facts, options: { services, due, iso6789 }, mistakes: MISTAKES })
    const printed = execFileSync(process.execPath, ['built/script.js'], {
      cwd: copy,
      encoding: 'utf8',
      input,
    })
    const { language, plan, card, wall, findings } = JSON.parse(printed)
    expect(language).toBe(NAME)
    for (const text of [plan, card, wall, findings[0]]) expect(text.normalize('NFD')).toContain(MARK)
    expect(findings.length).toBeGreaterThan(2)
    expect(findEnglish([plan, card, wall, ...findings], [facts, KEYS, MISTAKES]), machine).toEqual([])
  }
})
