import { execFileSync, spawnSync } from 'node:child_process'
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { chromium } from 'playwright-core'
import { afterAll, beforeAll, expect, it, type TestContext } from 'vitest'
import { de } from '../../src/v1/message/de.js'
import { es } from '../../src/v1/message/es.js'
import { fr } from '../../src/v1/message/fr.js'
import { CHROMIUM, CHROMIUM_ARGUMENTS, hasChromium } from '../browser/judgeCards.js'

const ROOT = new URL('../../', import.meta.url).pathname
const APPS = join(ROOT, 'examples/apps')

/** What an app takes from a registry besides the library; the test takes it from this repository instead. */
const OTHER_PACKAGES = ['@duckdb/node-api', 'esbuild']

let folder = ''

/** Packs the library and installs it without a network; the apps are folders beside it, and find it as npm places it. */
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'apps-'))
  const run = (cwd: string, ...words: readonly string[]) =>
    execFileSync('npm', words, { cwd, encoding: 'utf8' })
  const packed = run(ROOT, 'pack', '--ignore-scripts', '--json', '--pack-destination', folder)
  const [{ filename }] = JSON.parse(packed) as [{ filename: string }]
  writeFileSync(join(folder, 'package.json'), '{ "private": true }')
  run(folder, 'install', '--offline', '--no-audit', '--no-fund', '--ignore-scripts', `./${filename}`)
  for (const name of OTHER_PACKAGES) {
    mkdirSync(join(folder, 'node_modules', name, '..'), { recursive: true })
    symlinkSync(realpathSync(join(ROOT, 'node_modules', name)), join(folder, 'node_modules', name))
  }
  symlinkSync('../esbuild/bin/esbuild', join(folder, 'node_modules/.bin/esbuild'))
  cpSync(APPS, folder, { recursive: true })
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** Runs a script of an app; returns its lines and its exit code. */
function runApp(app: string, script: string) {
  const { stdout, stderr, status } = spawnSync('npm', ['run', '--silent', script], {
    cwd: join(folder, app),
    encoding: 'utf8',
  })
  return { lines: stdout.trimEnd().split('\n'), stderr, status }
}

/** Skips a test whose tool is missing, unless every tool is required. */
function skipWithout(tool: string, ctx: TestContext): void {
  expect(process.env['DRIVETRAIN_REQUIRE_TOOLS'], `${tool} is missing`).not.toBe('1')
  console.log(`outside tool skipped: ${tool}`)
  ctx.skip()
}

it('each app is listed and short, and the package leaves it out', () => {
  const apps = readdirSync(APPS)
  const list = readFileSync(join(ROOT, 'examples/README.md'), 'utf8')
  expect(apps).toHaveLength(5)
  for (const app of apps) {
    expect(list).toContain(`(apps/${app}/README.md)`)
    for (const file of readdirSync(join(APPS, app))) {
      const lines = readFileSync(join(APPS, app, file), 'utf8')
        .trimEnd()
        .split('\n').length
      expect(lines, `${app}/${file}`).toBeLessThanOrEqual(file === 'README.md' ? 15 : 80)
    }
  }
  expect(readdirSync(join(folder, 'node_modules/drivetrain-service/examples'))).not.toContain('apps')
})

it('web: a page answers what is typed, from a file and without a network', async (ctx) => {
  if (!hasChromium()) return skipWithout('chromium', ctx)
  expect(runApp('web', 'build')).toMatchObject({ status: 0 })
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: CHROMIUM_ARGUMENTS.split(' ') })
  try {
    const context = await browser.newContext({ offline: true })
    const page = await context.newPage()
    const problems: string[] = []
    page.on('pageerror', (error) => problems.push(error.message))
    await page.goto(pathToFileURL(join(folder, 'web/index.html')).href)
    const type = async (form: string, values: Readonly<Record<string, string>>) => {
      for (const [name, value] of Object.entries(values)) await page.fill(`#${form} [name=${name}]`, value)
      return (await page.textContent(`#${form} output`)) ?? ''
    }
    // 301.4 h + 250 h = 551.4 h; 512.6 h is 38.8 h before.
    const early = await type('due', {
      ...{ every: '250', lastDate: '2022-11-20', last: '301.4' },
      ...{ today: '2023-10-06', now: '512.6' },
    })
    expect(early).toMatch(/^not due\n.*551\.4.*38\.8/)
    expect(await type('due', { now: '551.4' })).toMatch(/^due\n/)
    expect(await type('due', { now: '551.5' })).toMatch(/^overdue\n/)
    expect(await type('due', { now: 'soon' })).toBe(
      'Fill each field, figures with digits such as 250 or 301.4.',
    )
    // The middle of 28 to 34 is 31: 4 % of it are 1.24, so the actual torque stays between the limits.
    expect(await type('torque', { min: '28', max: '34', lowest: '20', highest: '110' })).toMatch(
      /^Set 31 N·m: fits\n/,
    )
    // A wrench from 40 N·m has no mark for it.
    const high = await type('torque', { lowest: '40' })
    expect(high).toMatch(/^does not fit\n/)
    expect(await type('torque', { lowest: '120' })).toMatch(/^These figures cannot be used: /)
    expect(problems).toEqual([])
  } finally {
    await browser.close()
  }
})

it('fleet-check: 1,000 sheets, each mistake counted, and the exit code of a build that fails', () => {
  const { lines, stderr, status } = runApp('fleet-check', 'start')
  // One in 20, one in 50 and one in 125 of 1,000. The only gearcase of a sheet whose service names another has no change.
  expect(lines).toEqual([
    '1000 sheets, 98 findings in findings.sarif',
    '20 × error spec/dangling-reference',
    '8 × error spec/unknown-key',
    '20 × warning spec/gearcase-without-change',
    '50 × warning spec/implausible-hours',
    'exit code 1',
  ])
  expect(stderr).toContain('1000 documents read from 1000 folders')
  expect(status).toBe(1)
  const sarif = JSON.parse(readFileSync(join(folder, 'fleet-check/findings.sarif'), 'utf8'))
  expect(sarif.version).toBe('2.1.0')
  const files = sarif.runs[0].results.map(
    ({ locations }: { locations: { physicalLocation: { artifactLocation: { uri: string } } }[] }) =>
      locations[0]?.physicalLocation.artifactLocation.uri,
  )
  // Numbers 1, 21, 41 … 981, then 2, 52 … 952, then 4, 129 … 879.
  const numbers = [...Array(1000).keys()].filter((n) => n % 20 === 1 || n % 50 === 2 || n % 125 === 4)
  expect([...new Set(files)].sort()).toEqual(
    numbers.map((number) => `sheets/kvist-2-${String(number).padStart(4, '0')}/sheet.json`),
  )
})

it('wall-cards: a card of each variant in four languages', () => {
  const { lines, stderr, status } = runApp('wall-cards', 'start')
  expect(stderr).toBe('')
  expect(status).toBe(0)
  const titles = {
    'hallbrekka-tind-4-short': 'Tind 4',
    'hallbrekka-tind-4-long': 'Tind 4',
    'kestrup-bud-3-open': 'Bud 3',
    'kestrup-bud-3-locking': 'Bud 3',
  }
  const words = {
    en: 'Gear oil, wall card',
    de: 'Getriebeöl, Wandkarte',
    // French has a no-break space before a colon.
    fr: 'Huile de transmission, fiche murale\u00a0',
    es: 'Aceite de engranajes, ficha mural',
  }
  // As the catalogues say it, so that both stay the same.
  const notes = Object.fromEntries(
    [de, es, fr].map(({ language, review }) => [
      language,
      review.kind === 'not reviewed' ? review.note : 'missing',
    ]),
  )
  expect(lines).toEqual(
    Object.entries(titles).flatMap(([card, machine]) =>
      Object.entries(words).map(([language, title]) => `out/${card}-${language}.html: ${title}: ${machine}`),
    ),
  )
  for (const card of Object.keys(titles)) {
    const read = (language: string) =>
      readFileSync(join(folder, `wall-cards/out/${card}-${language}.html`), 'utf8')
    for (const [language, note] of Object.entries(notes)) {
      expect(read(language)).toContain(`<html lang="${language}"`)
      expect(read(language)).toContain(note)
    }
    expect(read('en')).toContain('<html lang="en"')
  }
})

it('python-check: three rules from the manifest agree with their vectors', (ctx) => {
  const python = '/usr/bin/python3'
  if (spawnSync(python, ['-c', 'import jsonschema']).status !== 0)
    return skipWithout('python3-jsonschema', ctx)
  const schemas = join(folder, 'node_modules/drivetrain-service/schemas/v1')
  const run = () =>
    spawnSync(python, ['-B', join(folder, 'python-check/check.py'), schemas], { encoding: 'utf8' })
  const { stdout, stderr, status } = run()
  expect(stderr).toBe('')
  expect(stdout.trimEnd().split('\n')).toEqual([
    'spec/drain-at-mark-up: 3 cases',
    'log/pause-reversed: 5 cases',
    'stock/viscosities-swapped: 4 cases',
    '0 failures',
  ])
  expect(status).toBe(0)
  // A vector that expects another place is a failure.
  const vector = join(schemas, 'vectors/log/pause-reversed.json')
  writeFileSync(vector, readFileSync(vector, 'utf8').replace('"path": "/pauses/0",', '"path": "/pauses/7",'))
  expect(run()).toMatchObject({ status: 1, stdout: expect.stringContaining('\n1 failures\n') })
})

it('due-report: the verdicts of the database as a table', () => {
  const { lines, stderr, status } = runApp('due-report', 'start')
  expect(stderr).toBe('')
  expect(status).toBe(0)
  const rows = lines
    .filter((line) => /station-\d/.test(line))
    .map((line) => [...line.matchAll(/'([^']*)'/g)].map(([, text]) => text))
  const changes = rows.filter(([, , service]) => service === 'gear-oil-change')
  // Due at 301.4 h + 200 h = 501.4 h, soon from 481.4 h, overdue after the window of 20 h. The first was read 68 days ago.
  expect(changes.map(([verdict, machine]) => `${machine} ${verdict}`)).toEqual([
    'station-7 overdue',
    'station-6 due',
    'station-1 cannot tell',
    'station-4 due soon',
    'station-5 due soon',
    'station-2 not due',
    'station-3 not due',
  ])
  expect(rows).toHaveLength(14)
  expect(new Set(rows.map(([, , , gearcases]) => gearcases))).toEqual(new Set(['front, rear']))
})
