import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { DUE_STATES } from '../../src/v1/interval/fleet.js'
import { writeDueCases } from './support/dueCases.js'

const FOLDER = 'test/interval/conformance'
const PYTHON = '/usr/bin/python3'
const source = readFileSync(join(FOLDER, 'due.py'), 'utf8')
const cases = readFileSync(join(FOLDER, 'due.jsonl'), 'utf8')

function runDue(...command: readonly string[]) {
  const run = spawnSync('node', [join(FOLDER, 'runDue.mjs'), ...command], { encoding: 'utf8' })
  return { code: run.status, lines: run.stdout.trimEnd().split('\n'), error: run.stderr }
}

const hasPython = spawnSync(PYTHON, ['--version']).status === 0
function requirePython(ctx: { skip: () => never }): void {
  if (hasPython) return
  if (process.env['DRIVETRAIN_REQUIRE_TOOLS'] === '1') throw new Error(`${PYTHON} is missing`)
  console.log('outside tool skipped: python3')
  ctx.skip()
}

describe('the cases of the due rule for other implementations', () => {
  test('are 500 of the rows that SQL is compared with, a hundred of each verdict', () => {
    expect(cases).toBe(writeDueCases())
    const verdicts = cases
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line).verdict)
    expect(DUE_STATES.map((state) => verdicts.filter((verdict) => verdict === state).length)).toEqual([
      100, 100, 100, 100, 100,
    ])
  })

  test('the library passes', () => {
    expect(runDue('node', join(FOLDER, 'due.mjs'))).toEqual({
      code: 0,
      lines: ['500 cases, 0 wrong'],
      error: '',
    })
  })

  test('a program in Python, with exact fractions and without this code, passes', (ctx) => {
    requirePython(ctx)
    expect(runDue(PYTHON, '-B', join(FOLDER, 'due.py'))).toEqual({
      code: 0,
      lines: ['500 cases, 0 wrong'],
      error: '',
    })
  })

  test.for([
    ['a limit that is reached only when it is passed', 'now >= due:', 'now > due:'],
    ['a window that ends a count early', 'now > due + window', 'now >= due + window'],
    ['rounding down', ' + Fraction(1, 2))', ')'],
    ['a statute mile of 1609 m', '1_609_344_000', '1_609_000_000'],
    ['a day of a period too late', 'if today >= due:', 'if today > due:'],
    ['the end of a window counted as overdue', 'today > last else', 'today >= last else'],
    ['a month of 28 days', 'min(start.day, last)', 'min(start.day, 28)'],
    ['stale a day early', '.days > question', '.days >= question'],
    ['a fraction that must be passed', 'now - start >= fraction', 'now - start > fraction'],
    ['an event on the day of service', 'event > served', 'event >= served'],
    ['an event of tomorrow', 'event <= day(question["today"]) and ', ''],
    ['a meter that falls', ' or now < start', ''],
    ['a meter that jumps', '> ((read - served).days + 1)', '> 2 * ((read - served).days + 1)'],
    ['a machine without a meter', ' and not row.get("noOdometer")', ''],
    ['cannot tell before due', '"due", "cannot tell"', '"cannot tell", "due"'],
  ] as const)('a program with %s fails', ([, right, wrong], ctx) => {
    requirePython(ctx)
    expect(source.split(right)).toHaveLength(2)
    const { code, lines } = runDue(PYTHON, '-c', source.replace(right, wrong))
    expect(lines.at(-1)).toMatch(/^500 cases, [1-9][0-9]* wrong$/)
    expect(code).toBe(1)
  })

  test('a program that leaves answers out, fails or does not exist is no wrong one: exit code 2', () => {
    expect(runDue('node', '-e', 'console.log("due")')).toMatchObject({
      code: 2,
      error: '500 questions, 1 answers\n',
    })
    expect(runDue('node', '-e', 'process.exit(3)')).toMatchObject({ code: 2, error: 'node ended with 3\n' })
    expect(runDue('no-such-program').code).toBe(2)
    expect(runDue().code).toBe(2)
  })
})
