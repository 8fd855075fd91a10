import { spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'

interface Answer {
  readonly compared: number
  readonly own: Readonly<Record<string, number>>
  readonly failures: readonly { readonly file: string }[]
}

/** Runs the rules of a folder over all vectors; undefined without Python. */
function runVectors(folder: string): Answer | undefined {
  const run = spawnSync('/usr/bin/python3', ['-B', join(folder, 'run_vectors.py'), '.'], {
    encoding: 'utf8',
    maxBuffer: 1e8,
  })
  if (run.error !== undefined) {
    if (process.env['DRIVETRAIN_REQUIRE_TOOLS'] === '1') throw new Error('/usr/bin/python3 is missing')
    console.log('outside tool skipped: python3')
    return undefined
  }
  expect(run.stderr).toBe('')
  return JSON.parse(run.stdout)
}

// Ten rules that were written in Python from schemas/v1/rules.json alone.
test('ten rules in another language find what every vector expects of them', (ctx) => {
  const answer = runVectors('test/rules/python')
  if (answer === undefined) return ctx.skip()
  expect(answer.failures).toEqual([])
  const vectorsOfRules = Object.values(answer.own)
  expect(vectorsOfRules).toHaveLength(10)
  expect(Math.min(...vectorsOfRules)).toBeGreaterThanOrEqual(4)
  expect(answer.compared).toBeGreaterThan(300)
})

test('a rule that judges the limit itself wrongly fails its vectors, and no others', (ctx) => {
  const folder = mkdtempSync(join(tmpdir(), 'drivetrain-rules-'))
  try {
    cpSync('test/rules/python', folder, { recursive: true })
    const rules = readFileSync(join(folder, 'rules.py'), 'utf8')
    const spoiled = rules.replace('pause["from"] > pause["to"]', 'pause["from"] >= pause["to"]')
    expect(spoiled).not.toBe(rules)
    writeFileSync(join(folder, 'rules.py'), spoiled)
    const answer = runVectors(folder)
    if (answer === undefined) return ctx.skip()
    expect([...new Set(answer.failures.map(({ file }) => file))]).toEqual(['pause-reversed.json'])
  } finally {
    rmSync(folder, { recursive: true })
  }
})
