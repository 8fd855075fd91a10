import { spawnSync } from 'node:child_process'
import { expect, test } from 'vitest'

// Five rules that were written in Python from schemas/v1/rules.json alone.
test('five rules in another language find what every vector expects of them', (ctx) => {
  const run = spawnSync('/usr/bin/python3', ['-B', 'test/rules/python/run_vectors.py', '.'], {
    encoding: 'utf8',
    maxBuffer: 1e8,
  })
  if (run.error !== undefined) {
    if (process.env['DRIVETRAIN_REQUIRE_TOOLS'] === '1') throw new Error('/usr/bin/python3 is missing')
    console.log('outside tool skipped: python3')
    return ctx.skip()
  }
  expect(run.stderr).toBe('')
  const { compared, own, failures } = JSON.parse(run.stdout)
  expect(failures).toEqual([])
  expect(own).toBeGreaterThanOrEqual(20)
  expect(compared).toBeGreaterThan(300)
})
