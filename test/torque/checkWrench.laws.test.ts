import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { TorqueUnit } from '../../src/quantity/unit.js'
import type { StatedValue } from '../../src/spec/specValue.js'
import type { TorqueWrench } from '../../src/spec/toolbox.js'
import { convert } from '../../src/v1/quantity.js'
import { checkWrench } from '../../src/v1/torque.js'
import { cases, law } from '../support/law.js'
import { torque } from './wrenches.js'

/*
 * A second implementation without shared code: every torque in whole units of 10^-22 N·m, and every mark is tried.
 * Factors typed from the statutory definitions (1 lbf·ft = 1.3558179483314004 N·m exactly, and so on).
 */
const SCALE = 22
const NEWTON_METRES: Readonly<Partial<Record<TorqueUnit, string>>> = {
  'N.m': '1',
  'cN.m': '0.01',
  'lbf.ft': '1.3558179483314004',
  'lbf.in': '0.1129848290276167',
  'kgf.m': '9.80665',
  'kgf.cm': '0.0980665',
}

/** A decimal text in whole units of 10^-places. */
function toInteger(text: string, places: number): bigint {
  const [front = '0', back = ''] = text.split('.')
  return BigInt(front + back.padEnd(places, '0'))
}

/** Decimal text × unit, in 10^-22 N·m: 6 decimals and 16 more of the factor. */
function toGrains(text: string, unit: TorqueUnit): bigint {
  return toInteger(text, 6) * toInteger(NEWTON_METRES[unit] ?? '', SCALE - 6)
}

interface Judged {
  readonly scale: number
  readonly mark: string
  readonly inside: boolean
}

/** Tries every mark of every scale; `undefined` if none is inside the band and the range. */
function trySettings(
  wrench: TorqueWrench,
  low: bigint,
  high: bigint,
  twiceAim: bigint,
  unit: TorqueUnit,
  iso6789: '2017' | '2003',
): Judged | undefined {
  let best: (Judged & { readonly distance: bigint; readonly size: bigint; readonly own: boolean }) | undefined
  for (const [index, scale] of wrench.scales.entries()) {
    const step = toInteger(String(scale.graduation), 3)
    for (
      let mark = toInteger(String(scale.lowest), 3);
      mark <= toInteger(String(scale.highest), 3);
      mark += step
    ) {
      const text = `${mark / 1000n}.${String(mark % 1000n).padStart(3, '0')}`
      const size = toGrains(text, scale.unit)
      if (size <= 0n || size < low || size > high) continue
      if (wrench.declaredRange) {
        const { min, max } = wrench.declaredRange
        if (size < toGrains(String(min.value), min.unit) || size > toGrains(String(max.value), max.unit))
          continue
      } else if (iso6789 === '2003' && mark * 5n < toInteger(String(scale.highest), 3)) continue
      const { accuracy } = wrench
      if (accuracy.kind === 'ISO 6789') throw new Error('this judge knows stated errors only')
      const percent = toInteger(String(accuracy.percent), 3) // in 1/100,000
      const ofReading = accuracy.kind === 'of reading'
      const top = toInteger(String(scale.highest), 3)
      const errorOf = (ofReading ? mark : top) * percent
      if (!ofReading && mark * 100_000n <= errorOf) continue
      if (wrench.type === 'electronic' && iso6789 === '2017' && step * 400_000n > errorOf) continue
      // of reading mark/(1+a) >= low and mark/(1-a) <= high, multiplied out; of full scale mark ± a·top
      const error = toGrains(`${top / 1000n}.${String(top % 1000n).padStart(3, '0')}`, scale.unit) * percent
      const isInside = ofReading
        ? size * 100_000n >= low * (100_000n + percent) && size * 100_000n <= high * (100_000n - percent)
        : size * 100_000n - error >= low * 100_000n && size * 100_000n + error <= high * 100_000n
      const gap = 2n * size - twiceAim
      const distance = gap < 0n ? -gap : gap
      const own = scale.unit === unit
      const nearer =
        best === undefined ||
        (own && !best.own) ||
        (own === best.own && (distance < best.distance || (distance === best.distance && size < best.size)))
      if (nearer) best = { scale: index, mark: String(Number(text)), inside: isInside, distance, size, own }
    }
  }
  return best && { scale: best.scale, mark: best.mark, inside: best.inside }
}

const UNITS = Object.keys(NEWTON_METRES) as TorqueUnit[]
const unitArb = fc.constantFrom(...UNITS)

const scaleArb = fc
  .record({
    unit: unitArb,
    graduation: fc.constantFrom(0.1, 0.2, 0.25, 0.5, 1, 2, 2.5, 5),
    first: fc.integer({ min: 0, max: 20 }),
    marks: fc.integer({ min: 1, max: 120 }),
    rest: fc.constantFrom(0, 0, 0.05),
  })
  .map(({ unit, graduation, first, marks, rest }) => ({
    unit,
    graduation,
    lowest: Number((first * graduation).toFixed(3)),
    highest: Number(((first + marks) * graduation + rest).toFixed(3)),
  }))

const wrenchArb: fc.Arbitrary<TorqueWrench> = fc
  .record({
    type: fc.constantFrom('click' as const, 'dial' as const, 'electronic' as const),
    scales: fc.array(scaleArb, { minLength: 1, maxLength: 3 }),
    kind: fc.constantFrom('of reading' as const, 'of reading' as const, 'of full scale' as const),
    percent: fc.constantFrom(1, 2, 3, 4, 6, 10, 12.5),
    declared: fc.option(
      fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 41, max: 300 }), unitArb),
      {
        freq: 4,
      },
    ),
  })
  .map(({ type, scales, kind, percent, declared }) => ({
    name: 'any',
    type,
    drive: '1/2 in',
    scales,
    accuracy: { kind, percent },
    ...(declared
      ? {
          declaredRange: {
            min: { value: declared[0], unit: declared[2] },
            max: { value: declared[1], unit: declared[2] },
          },
        }
      : {}),
  }))

const figureArb = fc
  .tuple(fc.integer({ min: 0, max: 400 }), fc.constantFrom('', '.5', '.25', '.1', '.0', '.333'))
  .map(([front, back]) => `${front}${back}`)

const editionArb = fc.constantFrom('2017' as const, '2003' as const)

const statedArb: fc.Arbitrary<StatedValue<TorqueUnit>> = fc.oneof(
  fc
    .record({ min: figureArb, max: figureArb, unit: unitArb })
    .map(({ min, max, unit }) =>
      Number(min) <= Number(max)
        ? { kind: 'limits' as const, min, max, unit }
        : { kind: 'limits' as const, min: max, max: min, unit },
    ),
  fc
    .record({
      value: figureArb,
      minus: fc.constantFrom('0', '1', '2.5', '10'),
      plus: fc.constantFrom('0', '0.5', '4', '12'),
      unit: unitArb,
    })
    .map((parts) => ({ kind: 'nominal with tolerance' as const, ...parts })),
)

function bandOf(stated: StatedValue<TorqueUnit>): readonly [low: bigint, high: bigint, twiceAim: bigint] {
  const { unit } = stated
  if (stated.kind === 'limits') {
    const low = toGrains(stated.min ?? '0', unit)
    const high = toGrains(stated.max ?? '0', unit)
    return [low, high, low + high]
  }
  if (stated.kind === 'nominal') throw new Error('no band')
  const aim = toGrains(stated.value, unit)
  return [aim - toGrains(stated.minus, unit), aim + toGrains(stated.plus, unit), 2n * aim]
}

describe('checkWrench: laws', () => {
  it('equals a second implementation that tries every mark in whole numbers', () => {
    let fitting = 0
    law(400, wrenchArb, statedArb, editionArb, (wrench, stated, iso6789) => {
      const [low, high, twiceAim] = bandOf(stated)
      const expected = trySettings(wrench, low, high, twiceAim, stated.unit, iso6789)
      const { verdict, setting } = checkWrench(wrench, torque(stated), { iso6789 })
      if (expected === undefined) {
        expect([verdict, setting]).toEqual(['does not fit', undefined])
        return
      }
      fitting += 1
      expect(setting && [setting.scale, String(setting.setting.value)]).toEqual([
        expected.scale,
        expected.mark,
      ])
      expect(setting?.trueBandInside).toBe(expected.inside ? 'yes' : 'no')
      if (!expected.inside) expect(verdict).toBe('fits with care')
    })
    expect(fitting).toBeGreaterThan(cases(50))
  })

  it('the setting lies inside the band, the true band around it, and nothing is mutated', () => {
    law(100, wrenchArb, statedArb, editionArb, (wrench, stated, iso6789) => {
      const before = JSON.stringify([wrench, stated])
      const { setting, band, reasons } = checkWrench(wrench, torque(stated), { iso6789 })
      expect(JSON.stringify([wrench, stated])).toBe(before)
      expect(reasons.length).toBeGreaterThan(0)
      if (setting === undefined || band === undefined) return
      expect(setting.atFastener.value).toBeGreaterThanOrEqual(band.min.value)
      expect(setting.atFastener.value).toBeLessThanOrEqual(band.max.value)
      expect(setting.trueBand.sheetUnit.min.value).toBeLessThan(setting.atFastener.value)
      expect(setting.trueBand.sheetUnit.max.value).toBeGreaterThan(setting.atFastener.value)
      expect(setting.shareOfFullScale).toBeLessThanOrEqual(1)
      expect(JSON.parse(JSON.stringify(setting))).toEqual(setting)
    })
  })

  it('the true band grows with the error, and with the setting', () => {
    law(
      50,
      fc.integer({ min: 11, max: 99 }),
      fc.integer({ min: 1, max: 40 }),
      fc.constantFrom('of reading' as const, 'of full scale' as const),
      (setting, percent, kind) => {
        const at = (value: number, error: number) =>
          checkWrench(
            {
              name: 'any',
              type: 'click',
              drive: '1/2 in',
              scales: [{ unit: 'N.m', lowest: 1, highest: 400, graduation: 1 }],
              declaredRange: { min: { value: 1, unit: 'N.m' }, max: { value: 400, unit: 'N.m' } },
              accuracy: { kind, percent: kind === 'of reading' ? error : error / 100 },
            },
            torque({ kind: 'limits', min: String(value), max: String(value), unit: 'N.m' }),
            { iso6789: '2017' },
          ).setting?.trueBand.newtonMetres
        const [originalFit, widerFit, higherFit] = [
          at(setting, percent),
          at(setting, percent + 1),
          at(setting + 1, percent),
        ]
        if (!originalFit || !widerFit || !higherFit) throw new Error('every mark can be set')
        expect(widerFit.min.value).toBeLessThan(originalFit.min.value)
        expect(widerFit.max.value).toBeGreaterThan(originalFit.max.value)
        expect(higherFit.min.value).toBeGreaterThan(originalFit.min.value)
        expect(higherFit.max.value).toBeGreaterThan(originalFit.max.value)
      },
    )
  })

  it('the verdict does not depend on the sheet’s unit where the change is exact', () => {
    const times100 = (figure: string) => {
      const [front = '', back = ''] = figure.split('.')
      const digits = `${front}${back.padEnd(2, '0').slice(0, 2)}`.replace(/^0+(?=[0-9])/, '')
      return back.length > 2 ? `${digits}.${back.slice(2)}` : digits
    }
    law(50, wrenchArb, figureArb, figureArb, editionArb, (wrench, candidate, other, iso6789) => {
      const [min, max] = Number(candidate) <= Number(other) ? [candidate, other] : [other, candidate]
      for (const [large, small] of [
        ['N.m', 'cN.m'],
        ['kgf.m', 'kgf.cm'],
      ] as const) {
        const convertedFit = (unit: TorqueUnit, from: string, to: string) => {
          const stated = torque({ kind: 'limits', min: from, max: to, unit })
          const { verdict, setting, reasons } = checkWrench(wrench, stated, { iso6789 })
          return {
            scale: setting?.scale,
            set: setting && convert(setting.setting, 'N.m').value,
            inOwnUnit: setting !== undefined && wrench.scales[setting.scale]?.unit === unit,
            trueBand: setting?.trueBand.newtonMetres,
            judged: [verdict, reasons.map(({ code }) => code)],
          }
        }
        const inSmall = convertedFit(small, times100(min), times100(max))
        const inLarge = convertedFit(large, min, max)
        if (inSmall.scale === inLarge.scale) {
          expect(inSmall).toEqual({ ...inLarge, inOwnUnit: inSmall.inOwnUnit })
          continue
        }
        // Both scales have a mark in the band, and for each sheet the scale in its unit is used.
        expect(inSmall.inOwnUnit || inLarge.inOwnUnit).toBe(true)
        expect(inSmall.set !== undefined && inLarge.set !== undefined).toBe(true)
      }
    })
  })

  it('a wider band never loses a fit, and a second scale never does either', () => {
    law(50, wrenchArb, statedArb, editionArb, scaleArb, (wrench, stated, iso6789, extraScale) => {
      if (stated.kind !== 'limits') return
      const { setting } = checkWrench(wrench, torque(stated), { iso6789 })
      if (setting === undefined) return
      const widerTorque = { ...stated, max: (Number(stated.max) + 7).toFixed(6) }
      expect(checkWrench(wrench, torque(widerTorque), { iso6789 }).setting).toBeDefined()
      const wrenchWithExtra = { ...wrench, scales: [...wrench.scales, extraScale] }
      expect(checkWrench(wrenchWithExtra, torque(stated), { iso6789 }).setting).toBeDefined()
    })
  })
})
