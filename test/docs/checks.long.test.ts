import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { identify } from '../support/published.js'
import { readTables } from './support/outsideChecks.js'

// A check that cannot fail checks nothing: each table that counts is spoiled once, and its test must notice.

const READ = readTables().filter(
  ({ origin: { read } }) => read === 'in the source' || read === 'where it is quoted',
)
/** One table of each room; all of them, three minutes, with `DRIVETRAIN_SPOIL_ALL=1`. */
const CHOSEN = READ.filter(
  ({ origin: { room } }, place) =>
    process.env['DRIVETRAIN_SPOIL_ALL'] === '1' ||
    READ.findIndex((other) => other.origin.room === room) === place,
)
const folder = mkdtempSync(join(tmpdir(), 'checks-'))
afterAll(() => rmSync(folder, { recursive: true }))

it('each table has an origin of its own', () => {
  expect(new Set(READ.map(({ origin }) => identify(origin))).size).toBe(READ.length)
})

describe('a table with other values than the published ones', () => {
  it.each(CHOSEN.map((table) => [table.name, table] as const))(
    '%s: its test fails',
    (name, { origin, tests }) => {
      const answer = join(folder, `${name}.json`)
      const run = [
        'vitest',
        'run',
        '--config',
        'test/vitest.config.ts',
        '--reporter=json',
        `--outputFile=${answer}`,
      ]
      spawnSync('npx', [...run, ...tests], { env: { ...process.env, DRIVETRAIN_SPOIL: identify(origin) } })
      const { numFailedTests, numPassedTests } = JSON.parse(readFileSync(answer, 'utf8'))
      console.log(
        `${name}: ${origin.statements} checks, ${numFailedTests} tests fail, ${numPassedTests} pass`,
      )
      expect(numFailedTests).toBeGreaterThanOrEqual(1)
      expect(numPassedTests).toBeGreaterThanOrEqual(1)
    },
  )
})
