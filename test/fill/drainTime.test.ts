import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type DrainInput, drainTime } from '../../src/v1/fill.js'
import { FREE_HOLES } from '../published/flowThroughTubes.js'
import { law } from '../support/law.js'

const mm = (value: number) => ({ value, unit: 'mm' }) as const
const question = (more: Partial<DrainInput> = {}): DrainInput => ({
  volume: { value: 1, unit: 'L' },
  depth: mm(80),
  opening: { bore: mm(16), length: mm(12) },
  kinematicViscosity: { value: 60, unit: 'mm2/s' },
  fillOpening: 'out',
  breather: 'clear',
  ...more,
})
const times = (more: Partial<DrainInput> = {}) => {
  const answer = drainTime(question(more))
  if (answer.verdict !== 'drain time') throw new Error(JSON.stringify(answer))
  return { least: answer.minimum.value, straight: answer.straightWalls.value }
}

describe('drainTime', () => {
  it.each([
    ['in', 'clear', ['fill/fill-opening-closed']],
    ['none', 'clear', ['fill/drain-is-the-only-opening']],
    ['out', 'blocked', ['fill/breather-blocked']],
    ['out', 'not checked', ['fill/breather-not-checked']],
    ['in', 'blocked', ['fill/fill-opening-closed', 'fill/breather-blocked']],
  ] as const)('fill opening %s, breather %s: no time', (fillOpening, breather, expected) => {
    const answer = drainTime(question({ fillOpening, breather }))
    expect(answer.verdict).toBe('cannot tell')
    expect(answer.reasons.map(({ code }) => code)).toEqual(expected)
  })

  it('a gearcase without a breather drains through its fill opening', () => {
    expect(times({ breather: 'none' })).toEqual(times())
  })

  it('says that it is a minimum and when it is over', () => {
    const codes = drainTime(question()).reasons.map(({ code }) => code)
    expect(codes).toEqual(['fill/drain-time-is-a-minimum', 'fill/wait-for-single-drips'])
  })

  it('nearly without viscosity it is Torricelli: V = √(2·g·H), by hand', () => {
    // H = 0.092 m, V = √(2·9.80665·0.092) = 1.34329 m/s; area π/4·0.016² = 2.010619e-4 m²; 0.001/(V·area) = 3.7026 s
    const { least } = times({ kinematicViscosity: { value: 1e-6, unit: 'mm2/s' } })
    expect(least.toFixed(3)).toBe('3.703')
  })

  it.each(FREE_HOLES)('a hole without friction, $asks: $printed', (row) => {
    const through = (litres: number, depth: number) =>
      times({
        volume: { value: litres, unit: 'L' },
        depth: { value: depth, unit: 'm' },
        opening: { bore: { value: row.hole, unit: 'm' }, length: { value: 1e-6, unit: 'mm' } },
        kinematicViscosity: { value: 1e-9, unit: 'mm2/s' },
      })
    if (row.asks === 'time between two levels') {
      const litres = (depth: number) => (Math.PI / 4) * row.tank ** 2 * depth * 1000
      const straight = (depth: number) => through(litres(depth), depth).straight
      const time = straight(row.from) - straight(row.to)
      expect(Math.abs(time / Number(row.printed) - 1)).toBeLessThan(0.007)
      return
    }
    const { least } = through(row.litres, row.depth)
    const speed = row.litres / 1000 / ((Math.PI / 4) * row.hole ** 2) / least
    expect((row.asks === 'speed' ? speed : least).toFixed(1)).toBe(row.printed)
  })

  it('very thick it is Hagen–Poiseuille: V = g·H·d²/(32·ν·ℓ), by hand', () => {
    // ν 1 m²/s, ℓ 0.012 m: V = 9.80665·0.092·0.016²/(32·0.012) = 6.01475e-4 m/s; 0.001/(V·2.010619e-4) = 8269.1 s
    const { least } = times({ kinematicViscosity: { value: 1e6, unit: 'mm2/s' } })
    expect(least / 8269.1).toBeCloseTo(1, 4)
  })

  it('straight walls: equals Simpson’s rule over the depth, and never below the least (law)', () => {
    const inputs = fc.record({
      bore: fc.double({ min: 6, max: 30, noNaN: true }),
      length: fc.double({ min: 3, max: 40, noNaN: true }),
      depth: fc.double({ min: 10, max: 300, noNaN: true }),
      viscosity: fc.double({ min: 5, max: 5000, noNaN: true }),
    })
    law(50, inputs, ({ bore, length, depth, viscosity }) => {
      const { least, straight } = times({
        opening: { bore: mm(bore), length: mm(length) },
        depth: mm(depth),
        kinematicViscosity: { value: viscosity, unit: 'mm2/s' },
      })
      const [d, l, z] = [bore / 1000, length / 1000, depth / 1000]
      const viscousTerm = (32 * viscosity * 1e-6 * l) / d ** 2
      const speed = (at: number) => -viscousTerm + Math.sqrt(viscousTerm ** 2 + 2 * 9.80665 * (at + l))
      const count = 2000
      let sum = 1 / speed(0) + 1 / speed(z)
      for (let place = 1; place < count; place += 1)
        sum += (place % 2 === 0 ? 2 : 4) / speed((z * place) / count)
      const expected = (0.001 / z / ((Math.PI / 4) * d ** 2)) * ((sum * z) / count / 3)
      expect(Math.abs(straight / expected - 1)).toBeLessThan(1e-6)
      expect(straight).toBeGreaterThanOrEqual(least)
    })
  })

  it('thicker oil and a narrower hole take longer (law)', () => {
    law(50, fc.double({ min: 10, max: 2000, noNaN: true }), (viscosity) => {
      const at = (value: number, bore = 16) =>
        times({ kinematicViscosity: { value, unit: 'mm2/s' }, opening: { bore: mm(bore), length: mm(12) } })
      expect(at(viscosity * 1.1).least).toBeGreaterThan(at(viscosity).least)
      expect(at(viscosity, 14).straight).toBeGreaterThan(at(viscosity).straight)
    })
  })

  it('misuse throws', () => {
    expect(() => drainTime(question({ volume: { value: 0, unit: 'L' } }))).toThrow(
      /volume.value must be a number, above 0/,
    )
    expect(() => drainTime(question({ depth: mm(Number.NaN) }))).toThrow(/depth.value/)
    expect(() =>
      drainTime(
        question({ volume: { value: 1e300, unit: 'L' }, opening: { bore: mm(1e-100), length: mm(1) } }),
      ),
    ).toThrow(RangeError)
    // @ts-expect-error
    expect(() => drainTime(question({ fillOpening: 'ajar' }))).toThrow(/fillOpening/)
    // @ts-expect-error
    expect(() => drainTime(question({ breather: 'maybe' }))).toThrow(/breather/)
    // @ts-expect-error
    expect(() => drainTime(question({ opening: undefined }))).toThrow(/opening must be an object/)
    // @ts-expect-error
    expect(() => drainTime(null)).toThrow(/input must be an object/)
  })
})
