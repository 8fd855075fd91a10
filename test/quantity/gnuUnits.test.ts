import { spawnSync } from 'node:child_process'
import { describe, expect, it } from 'vitest'
import { convertFigure } from '../../src/quantity/convertFigure.js'
import type { Unit } from '../../src/v1/quantity.js'
import { GNU_TEMPERATURES, GNU_UNITS } from '../published/referencePrograms.js'
import { allPairs, isLinear } from './support/exactOracle.js'

const WORDS: ReadonlyMap<Unit, string> = new Map(GNU_UNITS)

const found = spawnSync('units', ['--version'], { encoding: 'utf8' })
const isMissing = found.status !== 0 && !/GNU Units/.test(found.stdout ?? '')

describe('GNU units, an outside tool', () => {
  it('gives the same for every pair of linear units that it knows', (test) => {
    if (isMissing) {
      expect(process.env['DRIVETRAIN_REQUIRE_TOOLS']).not.toBe('1')
      console.log('outside tool skipped: units')
      test.skip()
    }
    const pairs = allPairs(isLinear).filter(([from, to]) => WORDS.has(from) && WORDS.has(to))
    expect(pairs.length).toBeGreaterThan(200)
    // one run for all pairs: alternating lines of `have` and `want`
    const input = pairs.map(([from, to]) => `${WORDS.get(from)}\n${WORDS.get(to)}\n`).join('')
    const { stdout } = spawnSync('units', ['--quiet', '--one-line', '--compact', '--digits', '15'], {
      input,
      encoding: 'utf8',
    })
    const answers = stdout
      .trim()
      .split('\n')
      .map((line) => line.trim())
    const oddAnswers = answers.filter((line) => !/^[0-9.e+-]+$/.test(line))
    expect(oddAnswers).toEqual([])
    expect(answers.length).toBe(pairs.length)
    pairs.forEach(([from, to], at) => {
      // GNU units computes in doubles: its fifteenth digit may be off by a few
      const exact = Number(convertFigure('1', from, to).digits)
      const answer = Number(answers[at])
      expect(Math.abs(answer / exact - 1), `${from} to ${to}: ${answer}`).toBeLessThan(5e-15)
    })
  })

  it('gives the same temperatures', (test) => {
    if (isMissing) {
      expect(process.env['DRIVETRAIN_REQUIRE_TOOLS']).not.toBe('1')
      console.log('outside tool skipped: units')
      test.skip()
    }
    for (const [value, from, to] of GNU_TEMPERATURES) {
      const scale = { degC: 'tempC', degF: 'tempF', K: 'tempK' }
      const { stdout } = spawnSync(
        'units',
        ['--quiet', '--one-line', '--compact', '--digits', '14', `${scale[from]}(${value})`, scale[to]],
        { encoding: 'utf8' },
      )
      const exact = Number(convertFigure(value, from, to).digits)
      expect(Math.abs(Number(stdout.trim()) - exact)).toBeLessThan(1e-11)
    }
  })
})
