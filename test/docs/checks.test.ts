import { readdirSync, readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import {
  countChecks,
  listJudges,
  listUndeclared,
  PUBLISHED,
  readTables,
  renderChecks,
} from './support/outsideChecks.js'

const tables = readTables()

it('docs/checks.md is what the tests declare now', () => {
  expect(renderChecks() === readFileSync('docs/checks.md', 'utf8'), 'run npm run generate').toBe(true)
})

it('every table of test/published declares its origin, and a test compares it', () => {
  const files = readdirSync('test/published').map((file) => file.replace(/\.ts$/, ''))
  expect(Object.keys(PUBLISHED)).toEqual(files.sort())
  expect(listUndeclared()).toEqual([])
  expect(tables.filter(({ tests }) => tests.length === 0).map(({ name }) => name)).toEqual([])
  expect(tables.filter(({ origin }) => origin.statements < 1 || origin.values < 1)).toEqual([])
})

it('at least 300 checks, at most 60 of units, at least 10 of each other room', () => {
  const counts = countChecks(tables)
  expect(counts.get('units')).toBeLessThanOrEqual(60)
  expect([...counts].filter(([, count]) => count < 10)).toEqual([])
  expect([...counts.values()].reduce((total, count) => total + count, 0)).toBeGreaterThanOrEqual(300)
})

it('a reference program has the version that is installed', () => {
  const { devDependencies } = JSON.parse(readFileSync('package.json', 'utf8')) as {
    readonly devDependencies: Readonly<Record<string, string>>
  }
  const page = renderChecks()
  for (const { origin } of tables) {
    const [program = ''] = origin.source.split(',')
    if (origin.read === 'runs in the test' && program in devDependencies)
      expect(origin.edition).toBe(devDependencies[program])
  }
  expect(page).toContain(`| ${devDependencies['temporal-polyfill']}; Temporal.PlainDate`)
})

it.each(listJudges())('%s is called in %s', (program, test) => {
  expect(readFileSync(test, 'utf8').toLowerCase()).toContain(program.replace('python3-', ''))
})
