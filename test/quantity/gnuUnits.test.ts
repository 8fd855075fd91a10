import { spawnSync } from 'node:child_process'
import { describe, expect, it } from 'vitest'
import { convertFigure } from '../../src/quantity/convertFigure.js'
import type { Unit } from '../../src/v1/quantity.js'
import { allPairs, isLinear } from './support/exactOracle.js'

/** Our units by their names in GNU units 2.22 (definitions 3.15). Units that it does not know are omitted. */
const WORDS: { readonly [U in Unit]?: string } = {
  'N.m': 'N m',
  'cN.m': 'cN m',
  'dN.m': 'dN m',
  'kN.m': 'kN m',
  'lbf.ft': 'lbf ft',
  'lbf.in': 'lbf in',
  'ozf.in': 'ounce force inch',
  'kgf.m': 'kgf m',
  'kgf.cm': 'kgf cm',
  mL: 'mL',
  L: 'L',
  cm3: 'cm^3',
  fl_oz_us: 'usfloz',
  pt_us: 'uspint',
  qt_us: 'usquart',
  gal_us: 'usgallon',
  fl_oz_imp: 'brfloz',
  pt_imp: 'brpint',
  qt_imp: 'brquart',
  gal_imp: 'brgallon',
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  in: 'inch',
  ft: 'foot',
  km: 'km',
  mi: 'mile',
  N: 'N',
  kN: 'kN',
  lbf: 'lbf',
  kPa: 'kPa',
  MPa: 'MPa',
  bar: 'bar',
  psi: 'psi',
  degC_diff: 'degC',
  degF_diff: 'degF',
  K_diff: 'K',
  g: 'g',
  kg: 'kg',
  oz: 'oz',
  lb: 'lb',
  h: 'hour',
  min: 'min',
  s: 's',
  d: 'day',
  'km/h': 'km/hour',
  mph: 'mile/hour',
}

const found = spawnSync('units', ['--version'], { encoding: 'utf8' })
const isMissing = found.status !== 0 && !/GNU Units/.test(found.stdout ?? '')

describe('GNU units, an outside tool', () => {
  it('gives the same for every pair of linear units that it knows', (test) => {
    if (isMissing) {
      expect(process.env['DRIVETRAIN_REQUIRE_TOOLS']).not.toBe('1')
      console.log('outside tool skipped: units')
      test.skip()
    }
    const pairs = allPairs(isLinear).filter(([from, to]) => WORDS[from] && WORDS[to])
    expect(pairs.length).toBeGreaterThan(200)
    // one run for all pairs: alternating lines of `have` and `want`
    const input = pairs.map(([from, to]) => `${WORDS[from]}\n${WORDS[to]}\n`).join('')
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
    for (const [value, from, to] of [
      ['-40', 'degC', 'degF'],
      ['80', 'degC', 'degF'],
      ['98.6', 'degF', 'degC'],
      ['-0.5', 'degF', 'K'],
      ['300', 'K', 'degF'],
    ] as const) {
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
