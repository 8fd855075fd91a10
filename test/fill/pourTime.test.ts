import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  calculateFunnelEmptyingTime,
  calculateFunnelVolume,
  calculateHoseArea,
  calculateLevel,
  calculateSpeed,
  type HoseFlow,
} from '../../src/fill/hoseFlow.js'
import { type PourInput, type PourTime, pourTime } from '../../src/v1/fill.js'
import {
  BOOK_GRAVITY,
  NOTEBOOK_TUBES,
  SCHOOL_TUBES,
  TEXTBOOK_TUBES,
  WATER_TANK,
  WHITE_6_17B,
  WHITE_6_27,
} from '../published/flowThroughTubes.js'
import { law } from '../support/law.js'

const mm = (value: number) => ({ value, unit: 'mm' }) as const
const mL = (value: number) => ({ value, unit: 'mL' }) as const
const mm2 = (value: number) => ({ value, unit: 'mm2/s' }) as const

interface Plain {
  shape?: 'cylinder' | 'cone'
  diameter?: number
  depth?: number
  bore?: number
  length?: number
  drop?: number
  viscosity?: number
  volume?: number
}
function question(plain: Plain = {}): PourInput {
  const { shape = 'cylinder', diameter = 120, depth = 150, bore = 12, length = 1500 } = plain
  const { drop = length, viscosity = 460, volume = 500 } = plain
  return {
    funnel: { shape, diameter: mm(diameter), depth: mm(depth) },
    hose: { bore: mm(bore), length: mm(length), drop: mm(drop) },
    kinematicViscosity: mm2(viscosity),
    volume: mL(volume),
  }
}
function pour(plain: Plain = {}): PourTime {
  const answer = pourTime(question(plain))
  if (answer.verdict !== 'pour time') throw new Error(JSON.stringify(answer))
  return answer
}
const listReasonCodes = (asked: PourInput) => pourTime(asked).reasons.map(({ code }) => code)
const relative = (first: number, second: number) => Math.abs(first / second - 1)

describe('published flow', () => {
  const bookRatio = BOOK_GRAVITY / 9.80665
  const { viscosity, boreMm, diameterMm, lengthM, depthM } = WHITE_6_27
  // the level in the funnel is Z0 once the hose is full: Z0·π·D²/4 and the hose's own π·d²/4·L
  const volume = (Math.PI / 4) * (depthM * diameterMm ** 2 + lengthM * boreMm ** 2) * 1000 * 1e-3

  it('White 6.27: the funnel empties in (1/C)·ln(1 + Z0/h)', () => {
    const { funnelEmpties } = pour({
      viscosity,
      bore: boreMm,
      diameter: diameterMm,
      length: lengthM * 1000,
      volume,
    })
    expect((funnelEmpties.uncorrected.value / bookRatio).toFixed(3)).toBe(WHITE_6_27.seconds)
  })

  it('White 6.27: first flow and Reynolds number of the row', () => {
    const flow = flowOf({ viscosity, bore: boreMm, diameter: diameterMm, length: lengthM * 1000 }, 0)
    const speed = calculateSpeed(flow, lengthM + depthM, lengthM) * bookRatio
    expect((speed * calculateHoseArea(flow) * 1e6).toFixed(3)).toBe(WHITE_6_27.firstFlow)
    expect(((speed * flow.bore) / flow.viscosity).toFixed(1)).toBe(WHITE_6_27.reynolds)
    expect((calculateFunnelVolume(flow, depthM) * 1e6).toFixed(1)).toBe(WHITE_6_27.millilitres)
  })

  it('White 6.17(b): 8 cm³ in 6 s through the tube that the solution finds', () => {
    const {
      density,
      dynamic,
      millilitres,
      lengthM: length,
      headM,
      seconds,
      boreMmWorked,
      boreMm: printed,
    } = WHITE_6_17B
    const flow = flowOf(
      { viscosity: (dynamic / density) * 1e6, bore: Number(boreMmWorked), length: length * 1000 },
      0,
    )
    const time =
      (millilitres * 1e-6) / (bookRatio * calculateSpeed(flow, headM, length) * calculateHoseArea(flow))
    expect(time.toFixed(2)).toBe(seconds.toFixed(2))
    // Q ∝ d⁴: the bore for exactly 6 s rounds to the printed 1.5 mm
    expect((Number(boreMmWorked) * (time / seconds) ** 0.25).toFixed(1)).toBe(printed)
  })

  it.each([...TEXTBOOK_TUBES, ...SCHOOL_TUBES, ...NOTEBOOK_TUBES])('$place: $printed', (row) => {
    const { bore, length, density, dynamic, given } = row
    const tube = flowOf({ viscosity: (dynamic / density) * 1e6, bore: bore * 1000, length: length * 1000 }, 0)
    const speedPerPascal = calculateSpeed(tube, 1 / (density * 9.80665), length)
    const speed = 'flow' in given ? given.flow / calculateHoseArea(tube) : given.pressure * speedPerPascal
    const found = {
      pressure: speed / speedPerPascal,
      flow: speed * calculateHoseArea(tube),
      speed,
      reynolds: (speed * tube.bore) / tube.viscosity,
    }
    for (const [name, printed] of Object.entries(row.printed)) {
      const digits = printed.replace(/e.*/, '').replace(/^0?\.?0*|\./g, '').length
      expect(Number(found[name as keyof typeof found].toPrecision(digits)), name).toBe(Number(printed))
    }
  })

  it('water from a wide tank is refused: Re 15,677 by the laminar law', () => {
    const { diameterM, depthM: depth, dropM, lengthM: length, boreMm: bore, viscosity: nu } = WATER_TANK
    const tank = {
      diameter: diameterM * 1000,
      depth: depth * 1000,
      drop: dropM * 1000,
      length: length * 1000,
      bore,
    }
    const flow = flowOf({ ...tank, viscosity: nu }, 0)
    expect((calculateSpeed(flow, depth + dropM, length) * bookRatio).toFixed(3)).toBe('3.135')
    expect(listReasonCodes(question({ ...tank, viscosity: nu, volume: 200_000 }))).toEqual([
      'fill/flow-not-laminar',
    ])
  })
})

function flowOf(plain: Plain, kineticFactor: number): HoseFlow {
  const { funnel, hose, kinematicViscosity } = question(plain)
  const bore = hose.bore.value / 1000
  const topDiameter = funnel.diameter.value / 1000
  return {
    topDiameter,
    bottomDiameter: funnel.shape === 'cone' ? bore : topDiameter,
    depth: funnel.depth.value / 1000,
    bore,
    length: hose.length.value / 1000,
    drop: hose.drop.value / 1000,
    viscosity: kinematicViscosity.value * 1e-6,
    kineticFactor,
  }
}

/**
 * Second implementation, for a funnel filled once: a simulation in time (Runge–Kutta, fourth order), with the head from
 * a level found by bisection.
 */
function step(plain: Plain, kineticFactor: number, steps: number) {
  const flow = flowOf(plain, kineticFactor)
  const area = calculateHoseArea(flow)
  const level = (volume: number): number => {
    let [low, high] = [0, flow.depth * 1.01]
    for (let halving = 0; halving < 50; halving += 1) {
      const middle = (low + high) / 2
      if (calculateFunnelVolume(flow, middle) < volume) low = middle
      else high = middle
    }
    return low
  }
  const speed = (head: number, wettedLength: number): number => {
    const viscousTerm = (32 * flow.viscosity * wettedLength) / flow.bore ** 2
    const g = 9.80665
    if (kineticFactor === 0) return (g * head) / viscousTerm
    return (-viscousTerm + Math.sqrt(viscousTerm ** 2 + 4 * kineticFactor * g * head)) / (2 * kineticFactor)
  }
  const total = (question(plain).volume.value ?? 0) * 1e-6
  const run = (rate: (at: number) => number, from: number, to: number, size: number): number => {
    let [time, at] = [0, from]
    for (;;) {
      const [k1, k2] = [rate(at), rate(at + (size / 2) * rate(at))]
      const k3 = rate(at + (size / 2) * k2)
      const next = at + (size / 6) * (k1 + 2 * k2 + 2 * k3 + rate(at + size * k3))
      if (next >= to) return time + (size * (to - at)) / (next - at)
      time += size
      at = next
    }
  }
  const answer = pour(plain)
  const frontRate = (x: number) =>
    speed(level(total - area * Math.min(x, flow.length)) + (flow.drop * x) / flow.length, x)
  const outRate = (out: number) =>
    area * speed(level(Math.max(0, total - area * flow.length - out)) + flow.drop, flow.length)
  return {
    answer,
    fills: run(frontRate, 1e-9, flow.length, answer.hoseFills.time.value / steps),
    empties: run(outRate, 0, total - area * flow.length, answer.funnelEmpties.time.value / steps),
  }
}

describe('against time stepping', () => {
  it.each([
    ['cylinder', { shape: 'cylinder', volume: 1300 }],
    ['a hose that slants', { shape: 'cylinder', drop: 700, volume: 1300 }],
    ['cone', { shape: 'cone', diameter: 220, depth: 180, volume: 1500 }],
    ['thin oil, where the correction counts', { shape: 'cylinder', viscosity: 40, bore: 8, volume: 900 }],
  ] as [string, Plain][])('%s, corrected', (_, plain) => {
    const { answer, fills, empties } = step(plain, 1.1, 4000)
    expect(relative(answer.hoseFills.time.value, fills)).toBeLessThan(2e-3)
    expect(relative(answer.funnelEmpties.time.value, empties)).toBeLessThan(2e-4)
  })

  it('cylinder and cone, plain law: the funnel', () => {
    for (const shape of ['cylinder', 'cone'] as const) {
      const { answer, empties } = step({ shape, diameter: 200, depth: 200, volume: 1500 }, 0, 4000)
      expect(relative(answer.funnelEmpties.uncorrected.value, empties)).toBeLessThan(2e-4)
    }
  })
})

describe('closed forms', () => {
  const sizes = fc.record({
    diameter: fc.double({ min: 80, max: 300, noNaN: true }),
    bore: fc.double({ min: 4, max: 16, noNaN: true }),
    length: fc.double({ min: 300, max: 3000, noNaN: true }),
    slant: fc.double({ min: 0.2, max: 1, noNaN: true }),
    viscosity: fc.double({ min: 300, max: 5000, noNaN: true }),
    depth: fc.double({ min: 60, max: 300, noNaN: true }),
  })

  it('a cylinder’s logarithm equals Simpson’s rule over the depth, with and without correction (law)', () => {
    law(50, sizes, fc.constantFrom(0, 1.1), (size, kineticFactor) => {
      const flow = flowOf({ ...size, drop: size.length * size.slant }, kineticFactor)
      const ratio = (flow.topDiameter / flow.bore) ** 2
      const simpson = sum(2000, flow.depth, (z) => ratio / calculateSpeed(flow, flow.drop + z, flow.length))
      expect(relative(calculateFunnelEmptyingTime(flow, calculateFunnelVolume(flow)), simpson)).toBeLessThan(
        1e-9,
      )
    })
  })

  it('a cone’s integral equals its polynomial and logarithm, plain law (law)', () => {
    law(50, sizes, (size) => {
      const flow = flowOf({ ...size, shape: 'cone', drop: size.length * size.slant }, 0)
      // ∫ (d + kz)²/(h + z) dz with u = h + z: (d − kh)²·ln + 2k(d − kh)·Z + k²·(u² − h²)/2
      const k = (flow.topDiameter - flow.bore) / flow.depth
      const { drop: h, depth: z, bore: d } = flow
      const shift = d - k * h
      const integral =
        shift ** 2 * Math.log1p(z / h) + 2 * k * shift * z + (k ** 2 * ((h + z) ** 2 - h ** 2)) / 2
      const expected = ((32 * flow.viscosity * flow.length) / (9.80665 * d ** 4)) * integral
      expect(relative(calculateFunnelEmptyingTime(flow, calculateFunnelVolume(flow)), expected)).toBeLessThan(
        1e-6,
      )
    })
  })

  it('level and volume undo each other, cylinder and cone (law)', () => {
    law(
      50,
      sizes,
      fc.constantFrom('cylinder', 'cone'),
      fc.double({ min: 0.001, max: 1, noNaN: true }),
      (size, shape, share) => {
        const flow = flowOf({ ...size, shape: shape as 'cone' }, 0)
        const level = flow.depth * share
        expect(relative(calculateLevel(flow, calculateFunnelVolume(flow, level)), level)).toBeLessThan(1e-9)
      },
    )
  })

  it('the hose fills from empty: a cylinder with the level sinking, plain law, by its own antiderivative', () => {
    // ∫ x/(Z0 + s·x) dx = L/s − Z0/s²·ln(1 + s·L/Z0), s = h/L − (d/D)²
    const plain = { viscosity: 460, volume: 1300 }
    const flow = flowOf(plain, 0)
    const z0 = calculateLevel(flow, 1300e-6)
    const s = flow.drop / flow.length - (flow.bore / flow.topDiameter) ** 2
    const integral = flow.length / s - (z0 / s ** 2) * Math.log1p((s * flow.length) / z0)
    const expected = ((32 * flow.viscosity) / (9.80665 * flow.bore ** 2)) * integral
    expect(relative(pour(plain).hoseFills.uncorrected.value, expected)).toBeLessThan(1e-9)
  })
})

function sum(count: number, to: number, f: (at: number) => number): number {
  const size = to / count
  let total = f(0) + f(to)
  for (let place = 1; place < count; place += 1) total += f(place * size) * (place % 2 === 0 ? 2 : 4)
  return (total * size) / 3
}

describe('laws of scale', () => {
  const thinOil = pour({ viscosity: 1000, volume: 1000 })
  it('plain times go with the viscosity', () => {
    const thickOil = pour({ viscosity: 2000, volume: 1000 })
    for (const part of ['hoseFills', 'funnelEmpties', 'hoseEmpties'] as const) {
      expect(relative(thickOil[part].uncorrected.value, 2 * thinOil[part].uncorrected.value)).toBeLessThan(
        1e-9,
      )
    }
  })

  it('the last part goes with d⁻² and, upright, with L', () => {
    expect(
      relative(
        pour({ viscosity: 1000, volume: 1000, bore: 6 }).hoseEmpties.time.value,
        4 * thinOil.hoseEmpties.time.value,
      ),
    ).toBeLessThan(1e-9)
    expect(
      relative(
        pour({ viscosity: 1000, volume: 1000, length: 3000 }).hoseEmpties.time.value,
        2 * thinOil.hoseEmpties.time.value,
      ),
    ).toBeLessThan(1e-9)
    expect(thinOil.hoseEmpties.time).toEqual(thinOil.hoseEmpties.uncorrected)
  })

  it('thicker oil, more oil and a longer hose take longer; the correction only adds (law)', () => {
    const inputs = fc.record({
      viscosity: fc.double({ min: 200, max: 4000, noNaN: true }),
      volume: fc.double({ min: 300, max: 1500, noNaN: true }),
      shape: fc.constantFrom('cylinder', 'cone' as const),
    })
    law(50, inputs, (plain) => {
      const base = pour({ ...plain, shape: plain.shape as 'cone', diameter: 180 })
      const more = (change: Plain) =>
        pour({ ...plain, shape: plain.shape as 'cone', diameter: 180, ...change }).total.value
      expect(more({ viscosity: plain.viscosity * 1.1 })).toBeGreaterThan(base.total.value)
      expect(more({ volume: plain.volume * 1.1 })).toBeGreaterThan(base.total.value)
      expect(more({ length: 1800, drop: 1500 })).toBeGreaterThan(base.total.value)
      for (const part of [base.hoseFills, base.funnelEmpties]) {
        expect(part.time.value).toBeGreaterThanOrEqual(part.uncorrected.value)
      }
      const { hoseFills, funnelEmpties, hoseEmpties } = base
      expect(base.total.value).toBe(hoseFills.time.value + funnelEmpties.time.value + hoseEmpties.time.value)
    })
  })

  it('units do not matter (law)', () => {
    const asked = question({ volume: 946.352946 })
    const otherInput: PourInput = {
      ...asked,
      funnel: { ...asked.funnel, diameter: { value: 12, unit: 'cm' } },
      hose: { ...asked.hose, length: { value: 1.5, unit: 'm' } },
      volume: { value: 1, unit: 'qt_us' },
    }
    const [first, second] = [pourTime(asked), pourTime(otherInput)]
    if (first.verdict !== 'pour time' || second.verdict !== 'pour time') return expect.unreachable()
    expect(relative(first.total.value, second.total.value)).toBeLessThan(1e-12)
  })
})

describe('several fillings, short pours', () => {
  // cylinder 120 × 150 mm: 1696.46 mL by π/4·12²·15; hose π/4·1.2²·150 = 169.646 mL
  it('counts the fillings: at the brim one, just above two', () => {
    expect(pour({ volume: 1696.4 }).fillings).toBe(1)
    expect(pour({ volume: 1696.5 }).fillings).toBe(2)
    expect(pour({ volume: 1696.5 }).reasons.map(({ code }) => code)).toContain('fill/several-fillings')
    expect(pour().hoseVolume.value.toFixed(3)).toBe('169.646')
  })

  it('the second filling finds the hose full: two brimful ones take one filling of the hose and two of the funnel', () => {
    const capacity = calculateFunnelVolume(flowOf({}, 1.1))
    const twoFillings = pour({ volume: 2 * capacity * 1e6 })
    expect(twoFillings.fillings).toBe(2)
    const first = pour({ volume: capacity * 1e6 })
    const emptyingTime = calculateFunnelEmptyingTime(flowOf({}, 1.1), capacity)
    expect(relative(twoFillings.hoseFills.time.value, first.hoseFills.time.value)).toBeLessThan(1e-9)
    expect(
      relative(twoFillings.funnelEmpties.time.value, first.funnelEmpties.time.value + emptyingTime),
    ).toBeLessThan(1e-9)
    expect(twoFillings.hoseEmpties).toEqual(first.hoseEmpties)
  })

  it('less oil than the hose holds never fills it; all of it drains in the last part', () => {
    const littleOil = pour({ volume: 100 })
    expect(littleOil.funnelEmpties.time.value).toBe(0)
    expect(littleOil.hoseEmpties).toEqual(pour().hoseEmpties)
    expect(littleOil.reasons.map(({ code }) => code)).toContain('fill/hose-never-full')
    expect(littleOil.hoseFills.time.value).toBeLessThan(pour({ volume: 1000 }).hoseFills.time.value * 3)
  })

  it('a thimble of a funnel fills the hose in many fillings, and too many are refused', () => {
    const thimble = { diameter: 20, depth: 20 }
    expect(pour({ ...thimble, volume: 500 }).fillings).toBe(80) // 500 mL / 6.2832 mL = 79.58
    expect(listReasonCodes(question({ ...thimble, volume: 6300 }))).toEqual(['fill/funnel-too-small'])
    expect(listReasonCodes(question({ ...thimble, volume: 6283 }))).not.toContain('fill/funnel-too-small')
  })
})

describe('what is refused', () => {
  it.each([
    [{ drop: 0 }, 'fill/hose-not-below-funnel'],
    [{ bore: 0 }, 'fill/measure-outside-range'],
    [{ viscosity: 0 }, 'fill/measure-outside-range'],
    [{ volume: 0 }, 'fill/measure-outside-range'],
    [{ drop: 1500.001 }, 'fill/drop-longer-than-hose'],
    [{ bore: 120 }, 'fill/bore-wider-than-funnel'],
    [{ bore: 0.05 }, 'fill/measure-outside-range'],
    [{ length: 100_001, drop: 1000 }, 'fill/measure-outside-range'],
    [{ viscosity: 0.09 }, 'fill/measure-outside-range'],
    [{ viscosity: 3e7 }, 'fill/measure-outside-range'],
    [{ volume: 0.0009 }, 'fill/measure-outside-range'],
    [{ volume: 1_000_001 }, 'fill/measure-outside-range'],
    [{ length: 20, viscosity: 20 }, 'fill/entrance-longer-than-hose'],
  ] as [Plain, string][])('%j: %s', (plain, code) => {
    expect(listReasonCodes(question(plain))).toEqual([code])
  })

  it('a limit is exact: 100 m rounded up to a double of inches is longer, rounded down to one of feet it is not', () => {
    const asked = question({ viscosity: 1e5 })
    const withLength = (value: number, unit: 'in' | 'ft') =>
      listReasonCodes({ ...asked, hose: { ...asked.hose, length: { value, unit } } })
    expect(withLength(3937.0078740157483, 'in')).toEqual(['fill/measure-outside-range'])
    expect(withLength(328.0839895013123, 'ft')).not.toContain('fill/measure-outside-range')
  })

  it('Re 2100 is the last laminar one: just above it is refused', () => {
    const reynolds = (viscosity: number) => pourTime(question({ viscosity, volume: 1500, length: 3000 }))
    let [low, high] = [1, 100]
    for (let halving = 0; halving < 60; halving += 1) {
      const middle = (low + high) / 2
      if (reynolds(middle).verdict === 'pour time') high = middle
      else low = middle
    }
    const last = reynolds(high)
    expect(last.verdict === 'pour time' && last.reynolds).toBeCloseTo(2100, 6)
    expect(last.verdict === 'pour time' && last.reynolds).toBeLessThanOrEqual(2100)
    expect(reynolds(low)).toMatchObject({
      verdict: 'cannot tell',
      reasons: [{ code: 'fill/flow-not-laminar' }],
    })
  })

  it('misuse throws, naming the part', () => {
    const asked = question()
    expect(() => pourTime(question({ viscosity: Number.NaN }))).toThrow(
      /kinematicViscosity.value must be a number, .*got NaN/,
    )
    expect(() => pourTime(question({ volume: -1 }))).toThrow(/volume.value must be a number, 0 or more/)
    expect(() => pourTime(question({ drop: -1 }))).toThrow(/hose.drop.value must be a number, 0 or more/)
    // @ts-expect-error
    expect(() => pourTime(question({ shape: 'sphere' }))).toThrow(/funnel.shape/)
    // @ts-expect-error
    expect(() => pourTime(undefined)).toThrow(/input must be an object/)
    // @ts-expect-error
    expect(() => pourTime({ ...asked, funnel: null })).toThrow(/funnel must be an object/)
    // @ts-expect-error
    expect(() => pourTime({ ...asked, volume: { value: '500', unit: 'mL' } })).toThrow(
      /volume.value must be a number/,
    )
    // @ts-expect-error
    expect(() => pourTime({ ...asked, kinematicViscosity: { value: 1, unit: 'mPa.s' } })).toThrow(
      /kinematicViscosity.unit/,
    )
  })

  it('no number that is not finite comes out of any workshop’s figures (law)', () => {
    const length = fc.double({ min: 0.2, max: 50_000, noNaN: true })
    const inputs = fc.record({
      shape: fc.constantFrom('cylinder', 'cone'),
      diameter: length,
      depth: length,
      bore: length,
      length,
      slant: fc.double({ min: 0, max: 1, noNaN: true }),
      viscosity: fc.double({ min: 0.1, max: 2e7, noNaN: true }),
      volume: fc.double({ min: 0.01, max: 1e6, noNaN: true }),
    })
    law(50, inputs, ({ slant, shape, ...rest }) => {
      const answer = pourTime(question({ ...rest, shape: shape as 'cone', drop: rest.length * slant }))
      expect(JSON.stringify(answer)).not.toContain('null')
      if (answer.verdict === 'pour time') expect(answer.total.value).toBeGreaterThan(0)
    })
  })
})
