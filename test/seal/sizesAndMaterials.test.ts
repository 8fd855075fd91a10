import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { judgeSealMaterial } from '../../src/seal/judgeSealMaterial.js'
import type { CrushWasher, Elastomer } from '../../src/spec/seal.js'
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
const inches = (inside: string, outside: string): Size => ({
  inside,
  outside,
  thickness: '0.06',
  unit: 'in',
})
const celsius = (value: number) => ({ value, unit: 'degC' }) as const
const codes = (verdict: { reasons: readonly { code: string }[] }) => verdict.reasons.map(({ code }) => code)

describe('checkWasherFit', () => {
  it.each(DIN_7603)('DIN 7603: %s with %s × %s × %s', (thread, inside, outside, thickness) => {
    expect(checkWasherFit(thread, size(inside, outside, thickness)).verdict).toBe('in the table')
  })

  it('no ring of the table fits the thread of another row, unless its inside diameter is the same', () => {
    for (const [thread] of DIN_7603) {
      for (const [other, inside, outside, thickness] of DIN_7603) {
        const hasSameDiameter = thread.split('x')[0] === other.split('x')[0]
        expect(checkWasherFit(thread, size(inside, outside, thickness)).verdict).toBe(
          hasSameDiameter ? 'in the table' : 'does not fit',
        )
      }
    }
  })

  it.each([
    ['M18x1.5', size('17.99', '22'), 'does not fit', 'seal/washer-bore-too-small'],
    ['M18x1.5', size('18.2', '22'), 'plausible', 'seal/washer-plausible'],
    ['M18x1.5', size('19', '23'), 'plausible', 'seal/washer-plausible'],
    ['M18x1.5', size('19.01', '23'), 'does not fit', 'seal/washer-bore-too-large'],
    ['M18x1.5', size('18', '19.99'), 'doubtful', 'seal/washer-rim-too-narrow'],
    ['M18x1.5', size('18', '20'), 'plausible', 'seal/washer-plausible'],
    ['M18x1.5', size('18', '22', '0.49'), 'doubtful', 'seal/washer-thickness-doubtful'],
    ['M18x1.5', size('18', '22', '0.5'), 'plausible', 'seal/washer-plausible'],
    ['M18x1.5', size('18', '22', '4'), 'plausible', 'seal/washer-plausible'],
    ['M18x1.5', size('18', '22', '4.01'), 'doubtful', 'seal/washer-thickness-doubtful'],
    ['M10', size('10', '13.5', '1'), 'plausible', 'seal/washer-plausible'],
    ['G 1/2', size('21', '26'), 'plausible', 'seal/washer-plausible'],
    ['G 1/2', size('20.5', '26'), 'does not fit', 'seal/washer-bore-too-small'],
    ['Rp 1/16', size('8', '12'), 'cannot tell', 'seal/pipe-size-not-known'],
    // the printed rounding is included: 33 is 32.5 to 33.5 mm, and 19 fits over 19.05 mm
    ['G 1', size('33', '39', '2'), 'plausible', 'seal/washer-plausible'],
    ['G 1', size('33.0', '39', '2'), 'does not fit', 'seal/washer-bore-too-small'],
    ['G 1 1/4', size('42', '49', '2'), 'plausible', 'seal/washer-plausible'],
    ['3/4-16 UNF', size('19', '25'), 'plausible', 'seal/washer-plausible'],
    ['3/4-16 UNF', size('18', '25'), 'does not fit', 'seal/washer-bore-too-small'],
    ['M18x1.5', size('20', '24'), 'does not fit', 'seal/washer-bore-too-large'],
    ['3/4-16 UNF', inches('0.75', '1.00'), 'plausible', 'seal/washer-plausible'],
    ['3/4-16 UNF', inches('0.700', '1.000'), 'does not fit', 'seal/washer-bore-too-small'],
    ['3/4-16 UNF', inches('0.80', '1.00'), 'does not fit', 'seal/washer-bore-too-large'],
    ['3/4-16 UNF', inches('0.75', '0.80'), 'doubtful', 'seal/washer-rim-too-narrow'],
    ['M18x1.5', inches('0.72', '0.94'), 'plausible', 'seal/washer-plausible'],
    ['3/4-16 UNF', size('19.5', '25'), 'plausible', 'seal/washer-plausible'],
    ['1/2-14 NPT', size('21', '26'), 'does not fit', 'seal/taper-thread-takes-no-washer'],
    ['M18', undefined, 'cannot tell', 'seal/size-not-stated'],
    ['about 18', size('18', '22'), 'cannot tell', 'seal/thread-unreadable'],
  ] as [string, Size | undefined, string, string][])('%s with %j: %s', (thread, washer, answer, code) => {
    const judgement = checkWasherFit(thread, washer)
    expect(judgement.verdict).toBe(answer)
    expect(codes(judgement)).toContain(code)
  })

  it.each(['captive', 'profile ring'] as const)(
    'a %s is held in an undercut: smaller is no mistake',
    (form) => {
      expect(codes(checkWasherFit('M18x1.5', size('15.7', '22'), form))).toEqual(['seal/ring-held-on-plug'])
      expect(checkWasherFit('M18x1.5', size('14', '22'), form).verdict).toBe('cannot tell')
      expect(checkWasherFit('M18x1.5', size('13.4', '22'), form).verdict).toBe('does not fit')
      expect(checkWasherFit('M18x1.5', size('20', '24'), form).verdict).toBe('does not fit')
      expect(checkWasherFit('M18x1.5', size('15.7', '22'), 'flat').verdict).toBe('does not fit')
    },
  )

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
        const isPressFit = (tenth: number) =>
          checkWasherFit(thread, size((tenth / 10).toFixed(1), '60')).verdict !== 'does not fit'
        const [low, high] = [Math.min(first, second), Math.max(first, second)]
        if (isPressFit(low) && isPressFit(high)) expect(isPressFit(Math.floor((low + high) / 2))).toBe(true)
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
    const judgement = checkORing({ designation: `-${dash}`, size: { inside, section, unit: 'mm' } })
    expect(judgement.verdict).toBe('agrees')
    expect(judgement.row?.inside.value.toFixed(2)).toBe(Number(inside).toFixed(2))
    // outside = inside + 2 · section, within two roundings of 0.005 mm
    const outside = Number(inside) + 2 * Number(section)
    expect(Math.abs((judgement.row?.outside.value ?? 0) - outside)).toBeLessThanOrEqual(0.015 + 1e-9)
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
    ['P22A', 'agrees'],
    ['p22', 'agrees'],
    ['JIS B 2401 G45', 'agrees'],
    ['1A P22', 'agrees'],
    ['P23', 'not in the table'],
    ['P214', 'not in the table'],
    ['G150', 'not in the table'],
    ['9'.repeat(10_000), 'not in the table'],
  ])('%s: %s', (designation, answer) => {
    expect(checkORing({ designation }).verdict).toBe(answer)
  })

  it('agrees exactly within half of the last printed digit and the rounding of the chart, in mm and inches (law)', () => {
    const dash = fc.constantFrom(...AS568.map(([number]) => number))
    const off = fc.integer({ min: -30, max: 30 })
    law(
      200,
      dash,
      fc.constantFrom('mm' as const, 'in' as const),
      fc.integer({ min: 1, max: 3 }),
      off,
      (number, unit, decimals, by) => {
        const { row } = checkORing({ designation: `-${number}` })
        if (row === undefined) return expect.unreachable()
        const perMm = unit === 'in' ? 1 / 25.4 : 1
        const inside = row.inside.value * perMm
        // some thousandths of the unit off, printed with one to three decimals
        const printed = (inside + by / 1000).toFixed(decimals)
        const section = (row.section.value * perMm).toFixed(3)
        const gap = Math.abs(Number(printed) - inside)
        const allowed = 0.5 * 10 ** -decimals + (unit === 'in' ? 0.0005 : 0.005)
        if (Number(printed) <= 0 || Math.abs(gap - allowed) < 1e-8) return
        const { verdict } = checkORing({
          designation: `-${number}`,
          size: { inside: printed, section, unit },
        })
        expect(verdict).toBe(gap < allowed ? 'agrees' : 'differs')
      },
    )
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
    const wrongRing = checkORing({
      designation: '-214',
      size: { inside: '24.99', section: '2.62', unit: 'mm' },
    })
    expect(codes(wrongRing)).toEqual(['seal/o-ring-differs'])
  })

  it.each([
    // JIS B 2401 from memory: inside and section, mm
    ['P10', '9.8', '1.9'],
    ['P22', '21.8', '2.4'],
    ['P22A', '21.7', '3.5'],
    ['P40', '39.7', '3.5'],
    ['G25', '24.4', '3.1'],
    ['G100', '99.4', '3.1'],
  ])('JIS %s is %s × %s mm', (designation, inside, section) => {
    const judgement = checkORing({ designation, size: { inside, section, unit: 'mm' } })
    expect(judgement.verdict).toBe('agrees')
    expect(checkORing({ size: { inside, section, unit: 'mm' } }).row?.designation).toBe(designation)
    expect(checkORing({ designation, size: { inside, section: '1.5', unit: 'mm' } }).verdict).toBe('differs')
  })

  it('compares inches as charts print them', () => {
    const at = (inside: string, section: string) =>
      checkORing({ designation: '-214', size: { inside, section, unit: 'in' } }).verdict
    expect([at('0.984', '0.139'), at('0.98', '0.14'), at('1.000', '0.139')]).toEqual([
      'agrees',
      'agrees',
      'differs',
    ])
  })

  it('reports a missing description and an unknown row', () => {
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
    [() => checkORing({ size: { inside: '-1', section: '1', unit: 'mm' } }), /ring.size must contain/],
    // @ts-expect-error
    [() => checkORing({ size: { inside: 24.99, section: 3.53, unit: 'mm' } }), /ring.size must contain/],
  ])('misuse %#', (call, message) => {
    expect(call).toThrow(message)
  })
})

describe('judgeSealMaterial', () => {
  const ask = (material: Elastomer, degrees: number) =>
    judgeSealMaterial(material, 'mineral gear oil', celsius(degrees))

  it.each(ELASTOMERS)(
    '%s, oil %s: %d to %d °C, special %d to %d °C',
    (material, oil, min, max, specialMin, specialMax) => {
      if (oil === 'E') {
        for (const degrees of [-60, min, 20, max, 300]) expect(ask(material, degrees).verdict).toBe('no')
        return
      }
      const expectedAnswer = oil === 'C' ? 'ask' : 'yes'
      expect([min, max, 20].map((degrees) => ask(material, degrees).verdict)).toEqual([
        expectedAnswer,
        expectedAnswer,
        expectedAnswer,
      ])
      for (const [limit, special, step] of [
        [min, specialMin, -0.001],
        [max, specialMax, 0.001],
      ] as const) {
        expect(ask(material, limit + step).verdict).toBe(special === limit ? 'no' : 'ask')
        expect(ask(material, special).verdict).toBe(special === limit ? expectedAnswer : 'ask')
        expect(ask(material, special + step).verdict).toBe('no')
      }
    },
  )

  it('names why', () => {
    expect(codes(ask('NBR', 20))).toEqual(['seal/material-suitable'])
    expect(codes(ask('EPDM', 20))).toEqual(['seal/material-unsuitable'])
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

  it.each([
    ['NBR', 80, 120],
    ['HNBR', 120, 150],
    ['FKM', 150, 200],
  ] as const)(
    'in hypoid EP oil %s works continuously up to %d °C (a seal maker’s chart)',
    (material, max, most) => {
      const hypoid = (degrees: number) => judgeSealMaterial(material, 'hypoid EP oil', celsius(degrees))
      expect(hypoid(max).verdict).toBe('yes')
      expect(hypoid(max + 0.1)).toMatchObject({
        verdict: 'ask',
        reasons: [{ code: 'seal/above-continuous-limit' }],
      })
      expect(hypoid(most + 0.1).verdict).toBe('no')
      expect(ask(material, max + 0.1).verdict).toBe('yes')
    },
  )

  it('other families are judged in hypoid EP oil as in any gear oil, silicone as poor', () => {
    expect(codes(judgeSealMaterial('VMQ', 'hypoid EP oil', celsius(20)))).toEqual(['seal/material-poor'])
    expect(judgeSealMaterial('EPDM', 'hypoid EP oil', celsius(20)).verdict).toBe('no')
    expect(judgeSealMaterial('FFKM', 'hypoid EP oil', celsius(200)).verdict).toBe('yes')
  })

  it('212 °F is 100 °C, where NBR still lasts', () => {
    expect(judgeSealMaterial('NBR', 'mineral gear oil', { value: 212, unit: 'degF' }).verdict).toBe('yes')
    expect(judgeSealMaterial('NBR', 'mineral gear oil', { value: 213, unit: 'degF' }).verdict).toBe('ask')
  })

  it.each([
    // @ts-expect-error
    [() => judgeSealMaterial('constructor', 'mineral gear oil', celsius(20)), /material must be one of/],
    // @ts-expect-error
    [() => judgeSealMaterial('NBR', 'water', celsius(20)), /medium must be/],
    [() => judgeSealMaterial('NBR', 'mineral gear oil', celsius(Number.NaN)), /finite/],
    // @ts-expect-error
    [() => judgeSealMaterial('NBR', 'mineral gear oil', { value: 20, unit: 'mm' }), /temperature.unit/],
    // @ts-expect-error
    [() => judgeSealMaterial('NBR', 'mineral gear oil', 20), /temperature must be an object/],
  ])('misuse %#', (call, message) => {
    expect(call).toThrow(message)
  })
})
