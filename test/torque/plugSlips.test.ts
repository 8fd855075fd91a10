import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { TorqueUnit } from '../../src/quantity/unit.js'
import type { StatedValue } from '../../src/spec/specValue.js'
import { checkPlugsSwapped } from '../../src/torque/checkPlugsSwapped.js'
import { findTorqueSlip } from '../../src/torque/findTorqueSlip.js'
import { law } from '../support/law.js'

const stated = (value: string, unit: TorqueUnit): StatedValue<TorqueUnit> => ({
  kind: 'nominal',
  value,
  unit,
})

describe('findTorqueSlip', () => {
  // by hand, M18×1.5 in aluminium: 11.5 to 61.25 N·m = 8.48 to 45.2 lbf·ft
  it.each([
    ['26', 'lbf.in', '×12', 'lbf.ft', 312],
    ['312', 'lbf.ft', '÷12', 'lbf.in', 26],
    ['3.6', 'N.m', '×9.80665', 'kgf.m', 35.30394],
    ['35', 'kgf.m', '÷9.80665', 'N.m', 3.5690067],
  ] as const)('%s %s: %s, so %s was meant', (value, unit, factor, meant, becomes) => {
    const { verdict, unitMistakes, reasons } = findTorqueSlip(stated(value, unit), 'M18x1.5', 'aluminium')
    expect(verdict).toBe('slip')
    expect([unitMistakes[0]?.factor, unitMistakes[0]?.meant]).toEqual([factor, meant])
    expect(unitMistakes[0]?.becomes.value).toBeCloseTo(becomes, 5)
    expect(unitMistakes[0]?.becomes.unit).toBe(unit)
    expect(reasons.map(({ code }) => code)).toContain('torque/unit-slip')
  })

  it('a usual figure is no slip, whatever its unit', () => {
    for (const [value, unit] of [
      ['35', 'N.m'],
      ['26', 'lbf.ft'],
      ['312', 'lbf.in'],
      ['3.6', 'kgf.m'],
    ] as const)
      expect(findTorqueSlip(stated(value, unit), 'M18 x 1.5', 'aluminium')).toMatchObject({
        verdict: 'usual',
        unitMistakes: [],
      })
  })

  it('the ends of the band are usual, just outside is not: 11.5 and 61.25 N·m', () => {
    const verdict = (value: string) => findTorqueSlip(stated(value, 'N.m'), 'M18x1.5', 'aluminium').verdict
    expect(['11.5', '61.25'].map(verdict)).toEqual(['usual', 'usual'])
    expect(['11.499999', '61.250001'].map(verdict)).toEqual(['unusual', 'unusual'])
    // and the corrected figure: 11.5/12 is 0.958333…, 11.5/9.80665 is 1.172673…
    expect(['0.958334', '0.958333'].map(verdict)).toEqual(['slip', 'unusual'])
  })

  it('limits count by their middle, one limit by itself', () => {
    const at = (candidate: StatedValue<TorqueUnit>) =>
      findTorqueSlip(candidate, 'M18x1.5', 'aluminium').verdict
    expect(at({ kind: 'limits', min: '1', max: '61', unit: 'N.m' })).toBe('usual')
    expect(at({ kind: 'limits', min: '3', max: '4', unit: 'N.m' })).toBe('slip')
    expect(at({ kind: 'limits', max: '35', unit: 'N.m' })).toBe('usual')
    expect(at({ kind: 'nominal with tolerance', value: '7', minus: '1', plus: '1', unit: 'N.m' })).toBe(
      'unusual',
    )
  })

  it('cannot tell without a thread, with one that cannot be read, or one that no table lists', () => {
    const codes = (thread: string | undefined) =>
      findTorqueSlip(stated('35', 'N.m'), thread, 'steel').reasons.map(({ code }) => code)
    expect(codes(undefined)).toEqual(['torque/thread-missing'])
    expect(codes('1/2 BSP')).toEqual(['torque/thread-unreadable'])
    expect(codes('G 1/2')).toEqual(['thread/plug-not-in-table'])
    expect(codes('R 1/2')).toEqual(['thread/taper-plug'])
  })

  it('every usual figure that unitMistakes is found, both ways', () => {
    law(
      50,
      fc.integer({ min: 12, max: 61 }),
      fc.constantFrom(
        ['lbf.in', 0.1129848290276167, 12, '÷12'] as const,
        ['N.m', 1, 1 / 12, '×12'] as const,
        ['N.m', 1, 1 / 9.80665, '×9.80665'] as const,
        ['kgf.m', 9.80665, 9.80665, '÷9.80665'] as const,
      ),
      (newtonMetres, [unit, size, ratio, factor]) => {
        const printed = ((newtonMetres * ratio) / size).toFixed(4)
        const { verdict, unitMistakes } = findTorqueSlip(stated(printed, unit), 'M18x1.5', 'aluminium')
        expect(verdict).toBe('slip')
        expect(unitMistakes.map((slip) => slip.factor)).toContain(factor)
      },
    )
  })
})

describe('checkPlugsSwapped', () => {
  const plug = (value: string, thread?: string, unit: TorqueUnit = 'N.m') => ({
    torque: stated(value, unit),
    housing: 'steel' as const,
    ...(thread === undefined ? {} : { thread }),
  })

  it('M20 with 30 and M14 with 55 N·m look swapped; the other way round they do not', () => {
    expect(checkPlugsSwapped(plug('30', 'M20x1.5'), plug('55', 'M14x1.5')).verdict).toBe('looks swapped')
    expect(checkPlugsSwapped(plug('55', 'M20x1.5'), plug('30', 'M14x1.5')).verdict).toBe('no sign')
    expect(checkPlugsSwapped(plug('55', 'M14x1.5'), plug('30', 'M20x1.5')).verdict).toBe('looks swapped')
  })

  it('compares in N·m whatever the units', () => {
    // 40.6 lbf·ft is about 55 N·m
    expect(checkPlugsSwapped(plug('30', 'M20x1.5'), plug('40.6', 'M14x1.5', 'lbf.ft')).verdict).toBe(
      'looks swapped',
    )
  })

  it('a factor of 1.5 is the limit: at, just below and just above', () => {
    // by hand: M24×1.5 and M12×1.5 in steel have one figure each, 70 and 35. Fill (M24) 40, drain (M12) x > 40:
    // as printed 70/40 · x/35, exchanged 70/x · 40/35 for x <= 70, so the gain is (x/40)²: 1.5 at x = 48.98979…
    expect(checkPlugsSwapped(plug('40', 'M24x1.5'), plug('48.989794', 'M12x1.5')).verdict).toBe('no sign')
    expect(checkPlugsSwapped(plug('40', 'M24x1.5'), plug('48.989795', 'M12x1.5')).verdict).toBe(
      'looks swapped',
    )
    // exactly 1.5 in doubles: 60/40 · … with fill 60, drain 90 > 70: as printed 70/60 · 90/35, exchanged 90/70 · 60/35
    expect(checkPlugsSwapped(plug('60', 'M24x1.5'), plug('90', 'M12x1.5')).verdict).toBe('no sign')
  })

  it('a small reversal is no sign: manuals differ', () => {
    expect(checkPlugsSwapped(plug('40', 'M18x1.5'), plug('45', 'M14x1.5')).verdict).toBe('no sign')
  })

  it('cannot tell without a thread, off the table, or with the same usual torque', () => {
    const codes = (fill: ReturnType<typeof plug>, drain: ReturnType<typeof plug>) =>
      checkPlugsSwapped(fill, drain).reasons.map(({ code }) => code)
    expect(codes(plug('40'), plug('40', 'M14x1.5'))).toEqual(['torque/thread-missing'])
    expect(codes(plug('40', 'G 1/2'), plug('40', 'R 1/2'))).toEqual([
      'thread/plug-not-in-table',
      'thread/taper-plug',
    ])
    expect(codes(plug('30', 'M18x1.5'), plug('60', 'M18x1.5'))).toEqual(['torque/same-plug-figures'])
  })

  it('never says swapped both ways', () => {
    const thread = fc.constantFrom('M10x1', 'M12x1.5', 'M14x1.5', 'M18x1.5', 'M20x1.5', 'M24x1.5')
    const value = fc.integer({ min: 5, max: 200 }).map(String)
    law(50, thread, thread, value, value, (candidate, other, first, second) => {
      const asPrinted = checkPlugsSwapped(plug(first, candidate), plug(second, other)).verdict
      const exchanged = checkPlugsSwapped(plug(second, candidate), plug(first, other)).verdict
      expect(asPrinted === 'looks swapped' && exchanged === 'looks swapped').toBe(false)
    })
  })
})
