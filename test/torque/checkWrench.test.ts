import { describe, expect, it } from 'vitest'
import type { TorqueUnit } from '../../src/quantity/unit.js'
import type { Tightening } from '../../src/spec/leaf.js'
import type { StatedValue } from '../../src/spec/specValue.js'
import type { TorqueWrench } from '../../src/spec/toolbox.js'
import { checkWrench, type WrenchOptions } from '../../src/v1/torque.js'
import { ISO_6789_BANDS, ISO_6789_DEVIATIONS, ISO_6789_RANGES } from '../published/torqueIso6789.js'
import { clickWrench, limits, nominal, nominalWith, torque } from './wrenches.js'

const BY_2017 = { iso6789: '2017' } as const
const BY_2003 = { iso6789: '2003' } as const

const codes = (wrench: TorqueWrench, tightening: Tightening, options: WrenchOptions = BY_2017) =>
  checkWrench(wrench, tightening, options).reasons.map(({ code }) => code)

const judge = (wrench: TorqueWrench, tightening: Tightening, options: WrenchOptions = BY_2017) => {
  const { verdict, setting } = checkWrench(wrench, tightening, options)
  return [verdict, setting?.setting.value]
}

describe('checkWrench: published values', () => {
  it.each(ISO_6789_BANDS)('set to $setting N·m the actual torque is $least to $most N·m', (row) => {
    const wrench = clickWrench(1, row.highest)
    const { setting } = checkWrench(wrench, nominal(String(row.setting)), {
      ...BY_2017,
      tolerancePercent: 20,
    })
    const digits = (printed: string) => printed.split('.')[1]?.length ?? 0
    const { min, max } = setting?.trueBand.newtonMetres ?? { min: { value: 0 }, max: { value: 0 } }
    expect(min.value.toFixed(digits(row.least))).toBe(row.least)
    expect(max.value.toFixed(digits(row.most))).toBe(row.most)
  })

  it.each(ISO_6789_RANGES)('10 to 100 N·m holds $target: 2017 $in2017, 2003 $in2003', (row) => {
    const wrench = clickWrench(10, 100)
    const wideTolerance = { tolerancePercent: 4.9 }
    const now = codes(wrench, nominalWith(row.target, '0', '0'), { ...BY_2017, ...wideTolerance })
    expect(now.includes('torque/above-highest-mark')).toBe(!row.in2017)
    // house rule: what the older edition left out is still pointed out
    expect(now.includes('torque/low-on-scale')).toBe(row.in2017 && !row.in2003)
    const fitIn2003 = checkWrench(wrench, nominalWith(row.target, '0', '0'), { ...BY_2003, ...wideTolerance })
    expect(fitIn2003.verdict === 'does not fit').toBe(!row.in2003)
  })

  it('±6 % up to and including 10 N·m, ±4 % above (ISO 6789, R2)', () => {
    const percentOf = (wrench: TorqueWrench) => checkWrench(wrench, nominal('8'), BY_2017).setting?.deviation
    for (const { maximum, percent } of ISO_6789_DEVIATIONS)
      expect(percentOf(clickWrench(1, maximum, 0.1))).toEqual({ percent, of: 'reading' })
    const declaredRange = { min: { value: 1, unit: 'N.m' }, max: { value: 10, unit: 'N.m' } } as const
    expect(percentOf(clickWrench(1, 12, 0.1, { declaredRange: declaredRange }))?.percent).toBe(6)
  })

  it('takes the wider error where two scales disagree about 10 N·m', () => {
    const scales = [
      { unit: 'N.m', lowest: 2, highest: 10, graduation: 0.5 },
      { unit: 'lbf.in', lowest: 20, highest: 90, graduation: 5 },
    ] as const
    const { setting } = checkWrench(clickWrench(1, 2, 1, { scales }), nominal('8'), BY_2017)
    expect(setting?.deviation.percent).toBe(6)
  })
})

describe('checkWrench: which mark', () => {
  it('takes the mark nearest to the nominal, or to the middle of two limits', () => {
    expect(judge(clickWrench(10, 100), limits('39', '49'))).toEqual(['fits', 44])
    expect(judge(clickWrench(10, 100), nominalWith('40', '5', '9'))).toEqual(['fits', 40])
    expect(judge(clickWrench(10, 100, 5), nominalWith('42', '4', '4'))).toEqual(['fits', 40])
  })

  it('ties go lower', () => {
    expect(judge(clickWrench(10, 100), limits('40', '45'))).toEqual(['fits', 42])
    expect(judge(clickWrench(10, 100, 2), nominalWith('41', '3', '3'))).toEqual(['fits', 40])
  })

  it('never leaves the band for a nearer mark', () => {
    // 41 is nearer to 40.9 than 40, but only 40 is inside 39.5 to 40.95
    expect(judge(clickWrench(10, 100), nominalWith('40.9', '1.4', '0.05'))[1]).toBe(40)
  })

  it('ends of the band belong to it; just outside no mark is inside', () => {
    const wrench = clickWrench(10, 100)
    expect(judge(wrench, limits('40', '40.9'))[1]).toBe(40)
    expect(judge(wrench, limits('39.1', '40'))[1]).toBe(40)
    const outside = checkWrench(wrench, limits('40.000001', '40.999999'), BY_2017)
    expect(outside.verdict).toBe('does not fit')
    expect(outside.reasons).toEqual([
      {
        code: 'torque/no-mark-in-band',
        params: {
          band: { min: { value: 40.000001, unit: 'N.m' }, max: { value: 40.999999, unit: 'N.m' } },
          unit: 'N.m',
          below: { value: 40, unit: 'N.m' },
          above: { value: 41, unit: 'N.m' },
        },
      },
    ])
  })

  it('reads JSON numbers by their shortest decimal: three steps of 0.1 are 0.3', () => {
    const { setting } = checkWrench(clickWrench(0.1, 0.9, 0.1), limits('0.3', '0.3'), BY_2017)
    expect(setting?.setting).toEqual({ value: 0.3, unit: 'N.m' })
  })

  it('counts marks from the lowest: 5, 7, 9 on a scale from 5 in steps of 2', () => {
    expect(judge(clickWrench(5, 25, 2), limits('8', '9'))[1]).toBe(9)
    expect(judge(clickWrench(5, 25, 2), limits('8', '8.5'))[0]).toBe('does not fit')
  })

  it('a scale whose highest is no whole step ends at the last mark', () => {
    expect(judge(clickWrench(10, 75, 10), limits('71', '75'))[0]).toBe('does not fit')
    expect(judge(clickWrench(10, 75, 10), limits('65', '75'))[1]).toBe(70)
  })

  it('looks at every scale and converts exactly', () => {
    // 35 lbf·ft = 47.4536281915990 N·m (reference, exact): marks 47 N·m is 0.454 away, 35 lbf·ft is exact
    const scales = [
      { unit: 'N.m', lowest: 20, highest: 100, graduation: 1 },
      { unit: 'lbf.ft', lowest: 15, highest: 75, graduation: 1 },
    ] as const
    const wrench = clickWrench(20, 100, 1, { scales })
    const { setting } = checkWrench(wrench, nominalWith('35', '4', '4', 'lbf.ft'), BY_2017)
    expect(setting?.scale).toBe(1)
    expect(setting?.setting).toEqual({ value: 35, unit: 'lbf.ft' })
    expect(setting?.trueBand.newtonMetres.min.value).toBeCloseTo(47.453628191599 / 1.04, 9)
    const metric = checkWrench(clickWrench(20, 100), nominalWith('35', '4', '4', 'lbf.ft'), BY_2017)
    expect(metric.setting?.setting).toEqual({ value: 47, unit: 'N.m' })
    // 47 N·m = 34.6654210160315 lbf·ft (reference)
    expect(metric.setting?.atFastener.value).toBeCloseTo(34.6654210160315, 12)
    expect(metric.setting?.shareOfFullScale).toBe(0.47)
  })

  it('stays on the scale in the sheet’s unit whenever one of its marks lies in the band', () => {
    // 77 N·m = 56.7920727 lbf·ft is 0.21 nearer to the nominal than 57 lbf·ft; not worth a conversion
    const scales = [
      { unit: 'lbf.ft', lowest: 20, highest: 150, graduation: 1 },
      { unit: 'N.m', lowest: 27, highest: 200, graduation: 1 },
    ] as const
    const wrench = clickWrench(1, 2, 1, { scales })
    const set = (tightening: Tightening) => checkWrench(wrench, tightening, BY_2017).setting?.setting
    expect(set(nominalWith('77.3', '2', '2'))).toEqual({ value: 77, unit: 'N.m' })
    expect(set(nominalWith('77.3', '0.1', '0.1'))).toEqual({ value: 57, unit: 'lbf.ft' })
    expect(set(limits('56', '57.6', 'lbf.ft'))).toEqual({ value: 57, unit: 'lbf.ft' })
    // a nominal without a tolerance has no band: the nearest mark of all scales
    expect(set(nominal('77.3'))).toEqual({ value: 57, unit: 'lbf.ft' })
  })

  it('where two scales give the same torque, the one in the sheet’s unit is taken, else the first', () => {
    const scales = [
      { unit: 'kgf.cm', lowest: 100, highest: 1000, graduation: 10 },
      { unit: 'kgf.m', lowest: 1, highest: 10, graduation: 0.1 },
    ] as const
    const wrench = clickWrench(1, 2, 1, { scales })
    expect(checkWrench(wrench, nominal('4', 'kgf.m'), BY_2017).setting?.scale).toBe(1)
    expect(checkWrench(wrench, nominal('400', 'kgf.cm'), BY_2017).setting?.scale).toBe(0)
    expect(checkWrench(wrench, nominal('39.2266', 'N.m'), BY_2017).setting?.scale).toBe(0)
  })

  it('the first printed figure decides; others are for show', () => {
    const stated = {
      kind: 'limits',
      min: '39',
      max: '49',
      unit: 'N.m',
      printed: [{ kind: 'limits', min: '100', max: '200', unit: 'lbf.ft' }],
    } as const
    expect(judge(clickWrench(10, 100), torque(stated))).toEqual(['fits', 44])
  })
})

describe('checkWrench: ends of the range, at, just below and just above', () => {
  const wrench = clickWrench(10, 100)

  it('the lowest mark belongs to the range (2017)', () => {
    expect(judge(wrench, limits('9', '10'))[1]).toBe(10)
    expect(codes(wrench, limits('9', '9.999999'))).toEqual(['torque/below-lowest-mark'])
    expect(judge(wrench, limits('9', '10.000001'))[1]).toBe(10)
  })

  it('20 % of full scale belongs to the range (2003)', () => {
    expect(judge(wrench, limits('19', '20'), BY_2003)[1]).toBe(20)
    expect(codes(wrench, limits('19', '19.999999'), BY_2003)).toEqual(['torque/below-fifth-of-scale'])
    expect(judge(wrench, limits('19', '20.000001'), BY_2003)[1]).toBe(20)
    expect(judge(wrench, limits('18', '22'), BY_2003)).toEqual(['fits', 20])
  })

  it('2003 still needs a mark: a scale that starts above 20 % keeps its lowest', () => {
    expect(codes(clickWrench(40, 100), limits('30', '39'), BY_2003)).toEqual(['torque/below-lowest-mark'])
  })

  it('the highest mark belongs to the range', () => {
    expect(judge(wrench, limits('100', '110'))[1]).toBe(100)
    expect(judge(wrench, limits('99.999999', '110'))[1]).toBe(100)
    expect(codes(wrench, limits('100.000001', '110'))).toEqual(['torque/above-highest-mark'])
  })

  it('below 20 % is reported under 2017, at 20 % it is not', () => {
    expect(judge(wrench, limits('18', '20'))).toEqual(['fits with care', 19])
    expect(codes(wrench, limits('18', '20'))).toContain('torque/low-on-scale')
    expect(codes(wrench, limits('20', '20'))).not.toContain('torque/low-on-scale')
  })

  it('the declared range comes before marks and editions, in any unit', () => {
    const declaredRange = { min: { value: 15, unit: 'N.m' }, max: { value: 900, unit: 'kgf.cm' } } as const
    const declared = clickWrench(10, 100, 1, { declaredRange })
    for (const options of [BY_2017, BY_2003]) {
      expect(judge(declared, limits('14', '15'), options)[1]).toBe(15)
      expect(codes(declared, limits('14', '14.999999'), options)).toEqual(['torque/below-declared-range'])
      // 900 kgf·cm = 88.25985 N·m exactly
      expect(judge(declared, limits('88', '95'), options)[1]).toBe(88)
      expect(codes(declared, limits('88.259851', '95'), options)).toEqual(['torque/above-declared-range'])
      expect(codes(declared, limits('88.25985', '95'), options)).toEqual(['torque/no-mark-in-band'])
      expect(codes(declared, limits('14.5', '16.5'), options)).not.toContain('torque/low-on-scale')
    }
  })

  it('each scale gives its own refusal', () => {
    const scales = [
      { unit: 'N.m', lowest: 10, highest: 50, graduation: 1 },
      { unit: 'lbf.ft', lowest: 50, highest: 100, graduation: 1 },
    ] as const
    const twoScales = clickWrench(1, 2, 1, { scales })
    expect(codes(twoScales, limits('52', '60'))).toEqual([
      'torque/above-highest-mark',
      'torque/below-lowest-mark',
    ])
  })

  it('a mark at zero is no setting', () => {
    expect(codes(clickWrench(0, 100), limits('0', '0.5'))).toEqual(['torque/no-mark-in-band'])
    expect(codes(clickWrench(0, 100), limits('0', '0'))).toEqual(['torque/below-lowest-mark'])
    expect(judge(clickWrench(0, 100), limits('0', '1'))[1]).toBe(1)
  })
})

describe('checkWrench: true band', () => {
  const percent = (value: number, of: 'of reading' | 'of full scale' = 'of reading') =>
    clickWrench(10, 100, 1, { accuracy: { kind: of, percent: value } })

  it('±25 % of reading at 50 N·m: 40 to 66.67; the ends may touch the band', () => {
    const at = (min: string, max: string) =>
      checkWrench(
        percent(25),
        torque({ kind: 'nominal with tolerance', value: '50', minus: min, plus: max, unit: 'N.m' }),
        BY_2017,
      )
    expect(at('10', '16.666667').verdict).toBe('fits')
    expect(at('10', '16.666666').verdict).toBe('fits with care')
    expect(at('9.999999', '16.666667').verdict).toBe('fits with care')
    expect(at('10', '16.666667').setting?.trueBandInside).toBe('yes')
    expect(at('10', '16.666666').setting?.trueBandInside).toBe('no')
    expect(at('10', '16.666666').reasons.map(({ code }) => code)).toContain(
      'torque/actual-torque-out-of-band',
    )
  })

  it('±3 % of full scale 100 at 50 N·m: 47 to 53', () => {
    const { setting, verdict } = checkWrench(percent(3, 'of full scale'), limits('47', '53'), BY_2017)
    expect(verdict).toBe('fits')
    expect(setting?.trueBand.sheetUnit).toEqual({
      min: { value: 47, unit: 'N.m' },
      max: { value: 53, unit: 'N.m' },
    })
    expect(checkWrench(percent(3, 'of full scale'), limits('47.1', '52.9'), BY_2017).verdict).toBe(
      'fits with care',
    )
  })

  it('a setting as small as its full-scale error is refused; one step above it is not', () => {
    const wrench = clickWrench(1, 100, 1, { accuracy: { kind: 'of full scale', percent: 3 } })
    expect(codes(wrench, limits('2.5', '3'))).toEqual(['torque/error-as-large-as-setting'])
    expect(judge(wrench, limits('2.5', '4'))[1]).toBe(4)
  })
})

describe('checkWrench: electronic wrenches (ISO 6789:2017: step at most a quarter of the permissible error, R2)', () => {
  const electronic = (accuracy: TorqueWrench['accuracy']) =>
    clickWrench(10, 100, 0.1, { type: 'electronic', accuracy })

  it('±2 % of reading with steps of 0.1: from 20 N·m', () => {
    // by hand: 0.1 <= 0.25 · 0.02 · S, so S >= 20
    const wrench = electronic({ kind: 'of reading', percent: 2 })
    expect(judge(wrench, limits('19.9', '20'))[1]).toBe(20)
    expect(codes(wrench, limits('19.8', '19.9'))).toEqual(['torque/resolution-too-coarse'])
    expect(judge(wrench, limits('20.1', '20.1'))[1]).toBe(20.1)
    expect(judge(wrench, limits('19.8', '19.9'), { iso6789: '2003' })[0]).toBe('does not fit')
    expect(codes(wrench, limits('19.8', '19.9'), { iso6789: '2003' })).toEqual([
      'torque/below-fifth-of-scale',
    ])
  })

  it('of full scale the step is fine enough everywhere or nowhere', () => {
    // by hand: a quarter of 0.4 % of 100 is 0.1
    expect(judge(electronic({ kind: 'of full scale', percent: 0.4 }), limits('30', '30'))[1]).toBe(30)
    expect(codes(electronic({ kind: 'of full scale', percent: 0.39 }), limits('30', '30'))).toEqual([
      'torque/resolution-too-coarse',
    ])
  })

  it('the ISO figure of dial, beam and electronic wrenches was not read: cannot tell, or no fit where that is sure', () => {
    for (const type of ['dial', 'beam', 'electronic'] as const) {
      const wrench = clickWrench(10, 100, 1, { type })
      const verdict = checkWrench(wrench, limits('40', '44'), BY_2017)
      expect(verdict.verdict).toBe('cannot tell')
      expect(verdict.reasons).toEqual([{ code: 'torque/iso-figure-unknown', params: { type } }])
      expect(judge(wrench, limits('140', '144'))[0]).toBe('does not fit')
    }
  })
})

describe('checkWrench: what the manual does not say', () => {
  const wrench = clickWrench(10, 100)

  it('a bare nominal on a mark fits with care, and says that the band is not stated', () => {
    const { verdict, setting, band, reasons } = checkWrench(wrench, nominal('40'), BY_2017)
    expect([verdict, setting?.setting.value, setting?.trueBandInside, band]).toEqual([
      'fits with care',
      40,
      'cannot tell',
      undefined,
    ])
    expect(reasons.map(({ code }) => code)).toEqual(['torque/setting-chosen', 'torque/band-not-stated'])
  })

  it('9.3 lbf·ft on a wrench of 40 to 200 lbf·in gets the nearest mark, 112 lbf·in, 0.4 % above', () => {
    const scales = [{ unit: 'lbf.in', lowest: 40, highest: 200, graduation: 1 }] as const
    const { verdict, setting, reasons } = checkWrench(
      clickWrench(1, 2, 1, { scales }),
      nominal('9.3', 'lbf.ft'),
      BY_2017,
    )
    expect([verdict, setting?.setting]).toEqual(['fits with care', { value: 112, unit: 'lbf.in' }])
    expect(reasons.map(({ code }) => code)).toEqual(['torque/nearest-mark', 'torque/band-not-stated'])
    // by hand: 9.3 × 12 = 111.6; (112 − 111.6) ÷ 111.6 = 0.35842 %
    expect(reasons[0]?.params['percent']).toBeCloseTo(0.358423, 6)
    expect(reasons[0]?.params['nominal']).toEqual({ value: 9.3, unit: 'lbf.ft' })
  })

  it('a bare nominal between two marks gets the nearer one, below it too, and the lower of two as near', () => {
    const below = checkWrench(wrench, nominal('40.4'), BY_2017)
    expect(below.setting?.setting.value).toBe(40)
    // by hand: (40 − 40.4) ÷ 40.4 = −0.990099 %
    expect(below.reasons[0]?.params['percent']).toBeCloseTo(-0.990099, 6)
    expect(judge(wrench, nominal('40.5'))).toEqual(['fits with care', 40])
    expect(judge(wrench, nominal('40.6'))).toEqual(['fits with care', 41])
    expect(checkWrench(wrench, nominal('140'), BY_2017).verdict).toBe('does not fit')
    expect(checkWrench(wrench, nominal('100.1'), BY_2017).verdict).toBe('does not fit')
  })

  it('a mark further from a bare nominal than the wrench’s own error does not fit; as far as it, it does', () => {
    // by hand: 4 % of 50 is 2, so 48 and 52 may be set for 50; 4 % of 49.9 is 1.996, and 48 is 1.9 away
    const coarse = clickWrench(12, 100, 12)
    expect(judge(coarse, nominal('50'))).toEqual(['fits with care', 48])
    expect(judge(coarse, nominal('49.9'))).toEqual(['fits with care', 48])
    const outsideResult = checkWrench(coarse, nominal('50.000001'), BY_2017)
    expect([outsideResult.verdict, outsideResult.setting]).toEqual(['does not fit', undefined])
    expect(outsideResult.reasons.map(({ code }) => code)).toEqual([
      'torque/band-not-stated',
      'torque/no-mark-in-band',
    ])
    expect(outsideResult.reasons[1]?.params).toMatchObject({
      error: { percent: 4, of: 'reading' },
      below: { value: 48, unit: 'N.m' },
      above: { value: 60, unit: 'N.m' },
    })
    // 3 % of full scale 96 is 2.88, at every torque: 45.12 reaches 48, 45.119999 does not
    const accuracy = { kind: 'of full scale', percent: 3 } as const
    const ofScale = clickWrench(12, 96, 12, { accuracy })
    expect(judge(ofScale, nominal('45.12'))).toEqual(['fits with care', 48])
    expect(judge(ofScale, nominal('45.119999'))[0]).toBe('does not fit')
    expect(judge(ofScale, nominal('45'), { ...BY_2017, tolerancePercent: 10 })[1]).toBe(48)
  })

  it('where the wrench’s error is not known, a bare nominal beside its marks cannot tell', () => {
    const dial = clickWrench(10, 100, 1, { type: 'dial' })
    expect(judge(dial, nominal('40.5'))).toEqual(['cannot tell', undefined])
    expect(codes(dial, nominal('40.5'))).toEqual(['torque/band-not-stated', 'torque/iso-figure-unknown'])
  })

  it('a tolerance of the caller gives a band, and is reported', () => {
    const { verdict, band, reasons } = checkWrench(wrench, nominal('40.5'), {
      ...BY_2017,
      tolerancePercent: 10,
    })
    expect(verdict).toBe('fits')
    expect(band).toEqual({
      min: { value: 36.45, unit: 'N.m' },
      max: { value: 44.55, unit: 'N.m' },
      from: 'caller',
    })
    expect(reasons.map(({ code }) => code)).toContain('torque/tolerance-from-caller')
  })

  it('the caller’s tolerance never touches a stated band', () => {
    const options = { ...BY_2017, tolerancePercent: 50 }
    expect(checkWrench(wrench, limits('39', '49'), options)).toEqual(
      checkWrench(wrench, limits('39', '49'), BY_2017),
    )
  })

  it('not stated, turns, one limit and an empty band cannot tell', () => {
    const notStated = { kind: 'not stated', threadCondition: 'dry' } as const
    expect(codes(wrench, notStated)).toEqual(['torque/not-stated'])
    const turns = { kind: 'turns', min: '1.5', max: '3', threadCondition: 'sealant' } as const
    expect(checkWrench(wrench, turns, BY_2017).reasons).toEqual([
      { code: 'torque/by-turns', params: { min: '1.5', max: '3' } },
    ])
    expect(codes(wrench, { kind: 'turns', min: '1.5', threadCondition: 'sealant' })).toEqual([
      'torque/by-turns',
    ])
    for (const candidate of [{ min: '40' }, { max: '40' }]) {
      const answer = checkWrench(wrench, torque({ kind: 'limits', unit: 'N.m', ...candidate }), BY_2017)
      expect([answer.verdict, answer.reasons[0]?.code]).toEqual(['cannot tell', 'torque/one-limit-only'])
      expect(answer.reasons[0]?.params['which']).toBe('min' in candidate ? 'minimum' : 'maximum')
    }
    expect(codes(wrench, limits('50', '40'))).toEqual(['torque/band-empty'])
  })
})

describe('checkWrench: stages, angle, adaptor', () => {
  it('the worst stage decides, and its reasons are given', () => {
    const stagedTorque = torque(
      { kind: 'limits', min: '80', max: '90', unit: 'N.m' },
      {
        stages: [
          { kind: 'limits', min: '40', max: '50', unit: 'N.m' },
          { kind: 'nominal', value: '5', unit: 'N.m' },
        ],
      },
    )
    const { verdict, setting, stages, reasons } = checkWrench(clickWrench(10, 100), stagedTorque, BY_2017)
    expect(verdict).toBe('does not fit')
    expect(setting).toBeUndefined()
    expect(stages.map((stage) => stage.verdict)).toEqual(['fits', 'does not fit'])
    expect(
      reasons.filter(({ code }) => code === 'torque/stage').map(({ params }) => params['stage']),
    ).toEqual([2, 2])
  })

  it('from worst to best: does not fit, cannot tell, fits with care, fits', () => {
    const fits = { kind: 'limits', min: '39', max: '49', unit: 'N.m' } as const
    const narrowBand = { kind: 'limits', min: '40', max: '41', unit: 'N.m' } as const
    const oneLimit = { kind: 'limits', max: '40.5', unit: 'N.m' } as const
    const beyond = { kind: 'nominal', value: '400', unit: 'N.m' } as const
    const fitOfStages = (...[last, ...stages]: readonly [typeof fits, ...StatedValue<TorqueUnit>[]]) =>
      checkWrench(clickWrench(10, 100), torque(last, { stages }), BY_2017).verdict
    expect(fitOfStages(fits, fits)).toBe('fits')
    expect(fitOfStages(fits, narrowBand, fits)).toBe('fits with care')
    expect(fitOfStages(fits, narrowBand, oneLimit)).toBe('cannot tell')
    expect(fitOfStages(fits, beyond, oneLimit, narrowBand)).toBe('does not fit')
  })

  it('an angle after the torque is reported and changes no verdict', () => {
    for (const [thenAngle, angle] of [
      [{ kind: 'nominal', value: '90', unit: 'deg' }, { nominal: '90' }],
      [
        { kind: 'limits', min: '85', max: '95', unit: 'deg' },
        { min: '85', max: '95' },
      ],
      [{ kind: 'limits', min: '85', unit: 'deg' }, { min: '85' }],
      [{ kind: 'limits', max: '95', unit: 'deg' }, { max: '95' }],
    ] as const) {
      const stated = torque({ kind: 'limits', min: '39', max: '49', unit: 'N.m' }, { thenAngle })
      const { verdict, reasons } = checkWrench(clickWrench(10, 100), stated, BY_2017)
      expect(verdict).toBe('fits')
      expect(reasons.at(-1)).toEqual({ code: 'torque/angle-after-torque', params: { angle } })
    }
  })

  it('a 6 in crowfoot on a 12 in wrench: 20 lbf·ft on the scale for 30 at the fastener (wrench maker, R)', () => {
    const wrench = clickWrench(1, 2, 1, {
      scales: [{ unit: 'lbf.ft', lowest: 10, highest: 75, graduation: 1 }],
      leverLength: { value: 12, unit: 'in' },
    })
    const adaptor = { extension: { value: 6, unit: 'in' } } as const
    const { setting, reasons } = checkWrench(wrench, nominalWith('30', '3', '3', 'lbf.ft'), {
      ...BY_2017,
      adaptor,
    })
    expect(setting?.setting).toEqual({ value: 20, unit: 'lbf.ft' })
    expect(setting?.atFastener).toEqual({ value: 30, unit: 'lbf.ft' })
    // by hand: 30/1.04 and 30/0.96
    expect(setting?.trueBand.sheetUnit.min.value).toBeCloseTo(28.846153846, 8)
    expect(setting?.trueBand.sheetUnit.max.value).toBeCloseTo(31.25, 8)
    expect(reasons.map(({ code }) => code)).toContain('torque/adaptor-changes-setting')
  })

  it('square to the handle it corrects nothing; without a lever length it is `cannot tell`', () => {
    const wrench = clickWrench(10, 100, 1, { leverLength: { value: 400, unit: 'mm' } })
    const squareExtension = {
      extension: { value: 7, unit: 'cm' },
      angle: { value: 90, unit: 'deg' },
    } as const
    const plainFit = checkWrench(wrench, limits('39', '49'), BY_2017)
    expect(checkWrench(wrench, limits('39', '49'), { ...BY_2017, adaptor: squareExtension }).setting).toEqual(
      plainFit.setting,
    )
    expect(codes(clickWrench(10, 100), limits('39', '49'), { ...BY_2017, adaptor: squareExtension })).toEqual(
      ['torque/lever-length-missing'],
    )
  })

  it('straight extensions and drive adaptors change nothing; a crowfoot without its extension is `cannot tell`', () => {
    const wrench = clickWrench(10, 100)
    const plainFit = checkWrench(wrench, limits('39', '49'), BY_2017)
    const extension = { value: 150, unit: 'mm' } as const
    for (const kind of ['straight extension', 'drive adaptor'] as const)
      expect(checkWrench(wrench, limits('39', '49'), { ...BY_2017, adaptor: { kind, extension } })).toEqual(
        plainFit,
      )
    expect(codes(wrench, limits('39', '49'), { ...BY_2017, adaptor: { kind: 'crowfoot' } })).toEqual([
      'torque/extension-missing',
    ])
  })

  it('an adaptor that reaches back to the hand is refused', () => {
    const wrench = clickWrench(10, 100, 1, { leverLength: { value: 40, unit: 'cm' } })
    const back = (value: number) =>
      ({ extension: { value, unit: 'mm' }, angle: { value: 180, unit: 'deg' } }) as const
    expect(() => checkWrench(wrench, limits('39', '49'), { ...BY_2017, adaptor: back(400) })).toThrow(
      RangeError,
    )
    expect(checkWrench(wrench, limits('39', '49'), { ...BY_2017, adaptor: back(399) }).verdict).toBe(
      'does not fit',
    )
  })
})
