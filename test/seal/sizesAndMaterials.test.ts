import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { materialSuits } from '../../src/seal/materialSuits.js'
import type { CrushWasher, Elastomer } from '../../src/spec/leaf.js'
import { parseThread } from '../../src/thread/parseThread.js'
import { checkORing, checkWasherFit } from '../../src/v1/seal.js'
import { AS568, DIN_7603, ELASTOMERS } from '../published/seals.js'
import { law } from '../support/law.js'

type Size = NonNullable<CrushWasher['size']>
const size = (inside: string, outside: string, thickness = '1.5'): Size => ({
  inside,
  outside,
  thickness,
  unit: 'mm',
})
const celsius = (value: number) => ({ value, unit: 'degC' }) as const
const codes = (verdict: { reasons: readonly { code: string }[] }) => verdict.reasons.map(({ code }) => code)

describe('checkWasherFit', () => {
  it.each(DIN_7603)('DIN 7603: %s with %s × %s × %s', (thread, inside, outside, thickness) => {
    expect(checkWasherFit(thread, size(inside, outside, thickness)).verdict).toBe('in the table')
  })

  it('no ring of the table goes with the thread of another row, unless its inside is the same', () => {
    for (const [thread] of DIN_7603) {
      for (const [other, inside, outside, thickness] of DIN_7603) {
        const own = thread.split('x')[0] === other.split('x')[0]
        expect(checkWasherFit(thread, size(inside, outside, thickness)).verdict).toBe(
          own ? 'in the table' : 'does not fit',
        )
      }
    }
  })

  it.each([
    ['M18x1.5', size('17.99', '22'), 'does not fit', 'seal/washer-too-small'],
    ['M18x1.5', size('18.2', '22'), 'plausible', 'seal/washer-plausible'],
    ['M18x1.5', size('19', '23'), 'plausible', 'seal/washer-plausible'],
    ['M18x1.5', size('19.01', '23'), 'does not fit', 'seal/washer-too-wide'],
    ['M18x1.5', size('18', '19.99'), 'doubtful', 'seal/washer-rim-too-narrow'],
    ['M18x1.5', size('18', '20'), 'plausible', 'seal/washer-plausible'],
    ['M18x1.5', size('18', '22', '0.49'), 'doubtful', 'seal/washer-thickness-doubtful'],
    ['M18x1.5', size('18', '22', '0.5'), 'plausible', 'seal/washer-plausible'],
    ['M18x1.5', size('18', '22', '4'), 'plausible', 'seal/washer-plausible'],
    ['M18x1.5', size('18', '22', '4.01'), 'doubtful', 'seal/washer-thickness-doubtful'],
    ['M10', size('10', '13.5', '1'), 'plausible', 'seal/washer-plausible'],
    ['G 1/2', size('21', '26'), 'plausible', 'seal/washer-plausible'],
    ['G 1/2', size('20.5', '26'), 'does not fit', 'seal/washer-too-small'],
    ['G 2', size('60', '70'), 'cannot tell', 'seal/pipe-size-not-known'],
    ['3/4-16 UNF', size('19.5', '25'), 'plausible', 'seal/washer-plausible'],
    ['1/2-14 NPT', size('21', '26'), 'does not fit', 'seal/taper-thread-takes-no-washer'],
    ['M18', undefined, 'cannot tell', 'seal/size-not-stated'],
    ['about 18', size('18', '22'), 'cannot tell', 'seal/thread-not-read'],
  ] as [string, Size | undefined, string, string][])('%s with %j: %s', (thread, washer, answer, code) => {
    const judged = checkWasherFit(thread, washer)
    expect(judged.verdict).toBe(answer)
    expect(codes(judged)).toContain(code)
  })

  it('takes a thread already read', () => {
    const read = parseThread('M18x1.5')
    expect(read.ok && checkWasherFit(read.value, size('18', '22')).verdict).toBe('in the table')
  })

  it('fits on one unbroken stretch of insides (law)', () => {
    const tenths = fc.integer({ min: 1, max: 400 })
    law(
      50,
      fc.constantFrom('M14x1.5', 'M18x1.5', 'M22x1.5', 'G 3/8'),
      tenths,
      tenths,
      (thread, first, second) => {
        const goes = (tenth: number) =>
          checkWasherFit(thread, size((tenth / 10).toFixed(1), '60')).verdict !== 'does not fit'
        const [low, high] = [Math.min(first, second), Math.max(first, second)]
        if (goes(low) && goes(high)) expect(goes(Math.floor((low + high) / 2))).toBe(true)
      },
    )
  })

  it.each([
    // @ts-expect-error
    [() => checkWasherFit(null, size('18', '22')), /thread must be an object/],
    [() => checkWasherFit('M18', size('0', '22')), /size.inside/],
    [() => checkWasherFit('M18', size('18', 'wide')), /size.outside/],
    // @ts-expect-error
    [() => checkWasherFit('M18', 5), /size must be an object/],
    // @ts-expect-error
    [() => checkWasherFit('M18', { ...size('18', '22'), thickness: 1.5 }), /size.thickness/],
  ])('misuse %#', (call, message) => {
    expect(call).toThrow(message)
  })
})

describe('checkORing', () => {
  it.each(AS568)('AS568 -%s is %s mm inside, %s mm section', (dash, inside, section) => {
    const judged = checkORing({ designation: `-${dash}`, size: { inside, section, unit: 'mm' } })
    expect(judged.verdict).toBe('agrees')
    expect(judged.row?.inside.value.toFixed(2)).toBe(Number(inside).toFixed(2))
    // outside = inside + 2 · section, within what two roundings of 0.005 mm leave
    const outside = Number(inside) + 2 * Number(section)
    expect(Math.abs((judged.row?.outside.value ?? 0) - outside)).toBeLessThanOrEqual(0.015 + 1e-9)
    expect(checkORing({ size: { inside, section, unit: 'mm' } })).toMatchObject({
      verdict: 'found',
      row: { designation: `-${dash}` },
    })
  })

  it.each([
    ['AS568-214', 'agrees'],
    ['as 568 214', 'agrees'],
    ['AS568A-214', 'agrees'],
    ['214', 'agrees'],
    ['-200', 'not in the table'],
    ['-325', 'not in the table'],
    ['P22A', 'not in the table'],
    ['9'.repeat(10_000), 'not in the table'],
  ])('%s: %s', (designation, answer) => {
    expect(checkORing({ designation }).verdict).toBe(answer)
  })

  it('a size that belongs to another ring differs; -012 is 9.2456 mm and reads as 9.2, 9.25 or 9.24', () => {
    const at = (inside: string) =>
      checkORing({ designation: '-012', size: { inside, section: '1.78', unit: 'mm' } }).verdict
    expect(at('9.2')).toBe('agrees')
    expect(at('9.25')).toBe('agrees')
    expect(at('9.24')).toBe('agrees')
    expect(at('9.26')).toBe('differs')
    expect(at('9.23')).toBe('differs')
    expect(at('12.42')).toBe('differs')
    const wrong = checkORing({ designation: '-214', size: { inside: '24.99', section: '2.62', unit: 'mm' } })
    expect(codes(wrong)).toEqual(['seal/o-ring-differs'])
  })

  it('says where nothing is described or no row is known', () => {
    expect(codes(checkORing({}))).toEqual(['seal/o-ring-not-described'])
    expect(codes(checkORing({ size: { inside: '33.33', section: '3.53', unit: 'mm' } }))).toEqual([
      'seal/o-ring-size-not-in-table',
    ])
  })

  it.each([
    // @ts-expect-error
    [() => checkORing(undefined), /ring must be an object/],
    // @ts-expect-error
    [() => checkORing({ designation: 214 }), /ring.designation/],
    // @ts-expect-error
    [() => checkORing({ size: 'small' }), /ring.size must be an object/],
    [() => checkORing({ size: { inside: '-1', section: '1', unit: 'mm' } }), /ring.size must hold/],
    // @ts-expect-error
    [() => checkORing({ size: { inside: 24.99, section: 3.53, unit: 'mm' } }), /ring.size must hold/],
  ])('misuse %#', (call, message) => {
    expect(call).toThrow(message)
  })
})

describe('materialSuits', () => {
  const ask = (material: Elastomer, degrees: number) =>
    materialSuits(material, 'mineral gear oil', celsius(degrees))

  it.each(ELASTOMERS)(
    '%s, oil %s: %d to %d °C, special %d to %d °C',
    (material, oil, min, max, specialMin, specialMax) => {
      if (oil === 'E') {
        for (const degrees of [-60, min, 20, max, 300]) expect(ask(material, degrees).verdict).toBe('no')
        return
      }
      const good = oil === 'C' ? 'ask' : 'yes'
      expect([min, max, 20].map((degrees) => ask(material, degrees).verdict)).toEqual([good, good, good])
      for (const [limit, special, step] of [
        [min, specialMin, -0.001],
        [max, specialMax, 0.001],
      ] as const) {
        expect(ask(material, limit + step).verdict).toBe(special === limit ? 'no' : 'ask')
        expect(ask(material, special).verdict).toBe(special === limit ? good : 'ask')
        expect(ask(material, special + step).verdict).toBe('no')
      }
    },
  )

  it('names why', () => {
    expect(codes(ask('NBR', 20))).toEqual(['seal/material-suits'])
    expect(codes(ask('EPDM', 20))).toEqual(['seal/material-never'])
    expect(codes(ask('VMQ', 20))).toEqual(['seal/material-poor'])
    expect(codes(ask('CR', -45))).toEqual(['seal/temperature-needs-special-compound', 'seal/material-poor'])
    expect(codes(ask('NBR', 121))).toEqual(['seal/temperature-outside-material'])
    expect(ask('ACM', 20)).toMatchObject({
      verdict: 'ask',
      reasons: [{ code: 'seal/material-limits-not-known' }],
    })
    expect(ask('not stated', 20)).toMatchObject({
      verdict: 'cannot tell',
      reasons: [{ code: 'seal/material-not-stated' }],
    })
  })

  it('212 °F is 100 °C, where NBR still lasts', () => {
    expect(materialSuits('NBR', 'mineral gear oil', { value: 212, unit: 'degF' }).verdict).toBe('yes')
    expect(materialSuits('NBR', 'mineral gear oil', { value: 213, unit: 'degF' }).verdict).toBe('ask')
  })

  it.each([
    // @ts-expect-error
    [() => materialSuits('constructor', 'mineral gear oil', celsius(20)), /material must be one of/],
    // @ts-expect-error
    [() => materialSuits('NBR', 'water', celsius(20)), /medium must be/],
    [() => materialSuits('NBR', 'mineral gear oil', celsius(Number.NaN)), /finite/],
    // @ts-expect-error
    [() => materialSuits('NBR', 'mineral gear oil', { value: 20, unit: 'mm' }), /temperature.unit/],
    // @ts-expect-error
    [() => materialSuits('NBR', 'mineral gear oil', 20), /temperature must be an object/],
  ])('misuse %#', (call, message) => {
    expect(call).toThrow(message)
  })
})
