import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { VolumeUnit } from '../../src/quantity/unit.js'
import type { MeasuringVessel } from '../../src/spec/toolbox.js'
import { checkPan, chooseVessel } from '../../src/v1/fill.js'
import { law } from '../support/law.js'

const vessel = (
  size: number,
  graduation: number,
  lowest?: number,
  unit: VolumeUnit = 'mL',
): MeasuringVessel => ({
  name: `${size} ${unit}`,
  size: { value: size, unit },
  graduation: { value: graduation, unit },
  ...(lowest === undefined ? {} : { lowestMark: { value: lowest, unit } }),
})
const mL = (value: number | string) => ({ value, unit: 'mL' }) as { value: number; unit: 'mL' }
const codes = (choice: { reasons: readonly { code: string }[] }) => choice.reasons.map(({ code }) => code)
const marks = (choice: ReturnType<typeof chooseVessel>) => choice.marks.map(({ value }) => value)

describe('chooseVessel', () => {
  it('the error may equal the tolerance: half a graduation of 10 mL is 5 mL', () => {
    const jug = { jug: vessel(500, 10) }
    expect(chooseVessel(jug, mL('450'), mL('5'))).toEqual({
      verdict: 'fits',
      vessel: 'jug',
      marks: [mL(450)],
      difference: mL(0),
      error: mL(5),
      reasons: [
        {
          code: 'fill/vessel-accurate-enough',
          params: { vessel: '500 mL', error: mL(5), tolerance: mL('5') },
        },
      ],
    })
    const coarse = chooseVessel(jug, mL('450'), mL('4.999999'))
    expect(coarse).toMatchObject({ verdict: 'does not fit', marks: [] })
    expect(codes(coarse)).toEqual(['fill/vessel-too-coarse'])
    expect(chooseVessel(jug, mL('450'), mL('5.000001')).verdict).toBe('fits')
  })

  it('the nearest mark, the lower of two: 445 in tens is 440, 5 off', () => {
    const choice = chooseVessel({ jug: vessel(500, 10) }, mL(445), mL(20))
    expect(marks(choice)).toEqual([440])
    expect(choice.difference).toEqual(mL(-5))
    expect(choice.error).toEqual(mL(10))
    expect(marks(chooseVessel({ jug: vessel(500, 10) }, mL('445.000001'), mL(20)))).toEqual([450])
  })

  it('0.8 US qt (757.0823568 mL) to the mark of 760 mL: 2.9176432 mL over, 7.9176432 with the reading', () => {
    const choice = chooseVessel({ jug: vessel(1, 0.01, undefined, 'L') }, { value: '0.8', unit: 'qt_us' })
    expect(choice.marks).toEqual([{ value: 0.76, unit: 'L' }])
    expect(choice.verdict).toBe('tolerance not stated')
    // in quarts: 2.9176432/946.352946 and 7.9176432/946.352946
    expect(choice.difference?.value.toFixed(9)).toBe('0.003083039')
    expect(choice.error?.value.toFixed(9)).toBe('0.008366480')
    expect(codes(choice)).toEqual(['fill/tolerance-not-stated'])
  })

  it('several pours: full ones and a rest, each read to half a graduation', () => {
    const choice = chooseVessel({ jug: vessel(500, 10) }, mL(1200), mL(15))
    expect(marks(choice)).toEqual([500, 500, 200])
    expect(choice.error).toEqual(mL(15))
    expect(codes(choice)).toEqual(['fill/vessel-in-several-pours', 'fill/vessel-accurate-enough'])
    expect(chooseVessel({ jug: vessel(500, 10) }, mL(1200), mL(14)).verdict).toBe('does not fit')
    expect(marks(chooseVessel({ jug: vessel(500, 10) }, mL(1000), mL(15)))).toEqual([500, 500])
  })

  it('a rest below the lowest mark is shared with the pour before', () => {
    const choice = chooseVessel({ jug: vessel(500, 50, 100) }, mL(1050), mL(100))
    // 500 + 500 leaves 50, which is below 100: the last 550 are poured as 250 and 300
    expect(marks(choice)).toEqual([500, 300, 250])
    expect(choice.difference).toEqual(mL(0))
    // a remainder below half a mark is ignored: 1004 in a jug with 10 mL marks is 1000, 4 less
    expect(marks(chooseVessel({ jug: vessel(500, 10, 0) }, mL(1004), mL(20)))).toEqual([500, 500])
    const off = chooseVessel({ jug: vessel(500, 10) }, mL(1004), mL(20))
    expect(marks(off)).toEqual([500, 500])
    expect(off.difference).toEqual(mL(-4))
  })

  it('too large a vessel has no mark for so little; too many pours are refused', () => {
    expect(codes(chooseVessel({ jug: vessel(2000, 100, 200) }, mL(120), mL(50)))).toEqual([
      'fill/vessel-too-large',
    ])
    expect(codes(chooseVessel({ jug: vessel(500, 50, 400) }, mL(600), mL(50)))).toEqual([
      'fill/vessel-too-large',
    ])
    expect(codes(chooseVessel({ odd: vessel(100, 200) }, mL(120), mL(50)))).toEqual(['fill/vessel-too-large'])
    expect(chooseVessel({ cup: vessel(10, 1) }, mL(500), mL(50)).marks).toHaveLength(50)
    expect(codes(chooseVessel({ cup: vessel(10, 1) }, mL('500.1'), mL(50)))).toEqual([
      'fill/vessel-too-many-pours',
    ])
    expect(codes(chooseVessel({}, mL(500), mL(50)))).toEqual(['fill/no-vessel'])
    expect(codes(chooseVessel({ jug: vessel(500, 0) }, mL(500)))).toEqual(['fill/vessel-without-marks'])
    expect(codes(chooseVessel({ jug: vessel(0, 10) }, mL(500)))).toEqual(['fill/vessel-too-large'])
    expect(codes(chooseVessel({ jug: vessel(500, 10) }, mL('0')))).toEqual(['fill/vessel-too-large'])
  })

  it('with a tolerance the fewest pours, then the least error, then the smallest; without, the least error', () => {
    const set = { cup: vessel(100, 5), jug: vessel(500, 20), fine: vessel(500, 10), can: vessel(1000, 10) }
    expect(chooseVessel(set, mL(400), mL(15)).vessel).toBe('fine')
    expect(chooseVessel(set, mL(400)).vessel).toBe('fine')
    expect(chooseVessel({ cup: vessel(400, 2), jug: vessel(500, 10) }, mL(500), mL(5)).vessel).toBe('jug')
    expect(chooseVessel({ cup: vessel(400, 2), jug: vessel(500, 10) }, mL(500)).vessel).toBe('cup')
  })

  it('never promises more than the tolerance, and its marks are marks (law)', () => {
    const vessels = fc.dictionary(
      fc.constantFrom('a', 'b', 'c'),
      fc.record({ steps: fc.integer({ min: 1, max: 60 }), graduation: fc.integer({ min: 1, max: 50 }) }),
    )
    law(
      50,
      vessels,
      fc.integer({ min: 1, max: 2000 }),
      fc.integer({ min: 0, max: 60 }),
      (set, need, tolerance) => {
        const choice = chooseVessel(
          Object.fromEntries(
            Object.entries(set).map(([id, { steps, graduation }]) => [
              id,
              vessel(steps * graduation, graduation),
            ]),
          ),
          mL(need),
          mL(tolerance),
        )
        if (choice.verdict !== 'fits') return
        const { steps, graduation } = set[choice.vessel ?? ''] ?? { steps: 0, graduation: 1 }
        const total = marks(choice).reduce((sum, mark) => sum + mark, 0)
        for (const mark of marks(choice)) {
          expect(mark % graduation).toBe(0)
          expect(mark).toBeGreaterThan(0)
          expect(mark).toBeLessThanOrEqual(steps * graduation)
        }
        expect(choice.difference?.value).toBe(total - need)
        expect(choice.error?.value).toBe(Math.abs(total - need) + (choice.marks.length * graduation) / 2)
        expect(choice.error?.value).toBeLessThanOrEqual(tolerance)
      },
    )
  })

  it.each([
    [() => chooseVessel({ a: vessel(-1, 10) }, mL(1)), /vessels.a.size.value must be a number, 0 or more/],
    [() => chooseVessel({ a: vessel(10, Number.NaN) }, mL(1)), /vessels.a.graduation/],
    [() => chooseVessel({ a: vessel(10, 1, -1) }, mL(1)), /vessels.a.lowestMark/],
    [() => chooseVessel({}, mL(1), mL(-1)), /tolerance.value must be a number, 0 or more/],
    [() => chooseVessel({}, mL('x')), /volume.value/],
    // @ts-expect-error
    [() => chooseVessel(undefined, mL(1)), /vessels must be an object/],
    // @ts-expect-error
    [() => chooseVessel({ a: 5 }, mL(1)), /vessels.a must be an object/],
  ])('misuse %#', (call, message) => {
    expect(call).toThrow(message)
  })
})

describe('checkPan', () => {
  const pan = (value: number, unit: VolumeUnit = 'L') => ({ name: 'Pan', size: { value, unit } })
  const L = (value: number | string) => ({ value, unit: 'L' }) as { value: number; unit: 'L' }

  it('the whole visit, not one gearcase; a pan of exactly the total holds it', () => {
    const drained = [L('1.2'), L('0.9')]
    expect(checkPan({ pan: pan(2.1) }, drained)).toMatchObject({
      verdict: 'large enough',
      pan: 'pan',
      total: mL(2100),
    })
    expect(codes(checkPan({ pan: pan(2.1) }, drained))).toEqual([
      'fill/pan-large-enough',
      'fill/pan-nearly-full',
    ])
    expect(checkPan({ pan: pan(2.099999) }, drained).verdict).toBe('empty between')
    expect(checkPan({ pan: pan(2.100001) }, drained).verdict).toBe('large enough')
  })

  it('nearly full is above 90 %', () => {
    expect(codes(checkPan({ pan: pan(10) }, [L('9')]))).toEqual(['fill/pan-large-enough'])
    const overfull = checkPan({ pan: pan(10) }, [L('9.000001')])
    expect(overfull.reasons[1]).toEqual({ code: 'fill/pan-nearly-full', params: { pan: 'Pan', percent: 90 } })
  })

  it('the smallest that does; none for all: the smallest for the largest draining; none at all', () => {
    const set = { big: pan(10), mid: pan(5), small: pan(1) }
    expect(checkPan(set, [L(2), L(2)]).pan).toBe('mid')
    expect(checkPan(set, [L(4), L(4), L(4)])).toMatchObject({ verdict: 'empty between', pan: 'mid' })
    const none = checkPan(set, [L(12)])
    expect(none).toMatchObject({ verdict: 'too small', total: mL(12_000) })
    expect(none).not.toHaveProperty('pan')
    expect(none.reasons).toEqual([{ code: 'fill/pan-too-small', params: { largest: L(12), size: L(10) } }])
    expect(codes(checkPan({}, [L(1)]))).toEqual(['fill/no-pan'])
  })

  it('a pan of 0 L, as a document may hold it, is too small for any oil', () => {
    expect(checkPan({ pan: pan(0) }, [L(1)]).verdict).toBe('too small')
    expect(checkPan({ pan: pan(0) }, []).verdict).toBe('large enough')
  })

  it('nothing drained fits any pan', () => {
    expect(checkPan({ pan: pan(1) }, [])).toMatchObject({ verdict: 'large enough', total: mL(0) })
  })

  it('sums ten tenths exactly, in mixed units', () => {
    expect(
      checkPan(
        { pan: pan(1) },
        Array.from({ length: 10 }, () => L(0.1)),
      ).verdict,
    ).toBe('large enough')
    const mixedVolumes = [L('1'), { value: '1', unit: 'qt_us' } as const]
    expect(checkPan({ pan: pan(1946.352946, 'mL') }, mixedVolumes).verdict).toBe('large enough')
    expect(checkPan({ pan: pan(1946.352945, 'mL') }, mixedVolumes).verdict).toBe('empty between')
  })

  it('a larger pan never makes it worse, and the order does not matter (law)', () => {
    const rank = { 'large enough': 2, 'empty between': 1, 'too small': 0 }
    const volumes = fc.array(fc.integer({ min: 0, max: 50 }), { maxLength: 5 })
    law(50, volumes, fc.integer({ min: 1, max: 120 }), (list, size) => {
      const ask = (value: number, order: number[]) => checkPan({ pan: pan(value) }, order.map(L))
      expect(ask(size, [...list].reverse())).toEqual(ask(size, list))
      expect(rank[ask(size + 1, list).verdict]).toBeGreaterThanOrEqual(rank[ask(size, list).verdict])
      expect(ask(size, list).verdict === 'large enough').toBe(
        list.reduce((sum, item) => sum + item, 0) <= size,
      )
    })
  })

  it.each([
    [() => checkPan({ pan: pan(-1) }, []), /pans.pan.size/],
    [() => checkPan({}, [L(-1)]), /volumes\[0\].value must be a number, 0 or more/],
    // @ts-expect-error
    [() => checkPan({}, 'all'), /volumes must be a list/],
    // @ts-expect-error
    [() => checkPan(null, []), /pans must be an object/],
    // @ts-expect-error
    [() => checkPan({ pan: null }, []), /pans.pan must be an object/],
  ])('misuse %#', (call, message) => {
    expect(call).toThrow(message)
  })
})
