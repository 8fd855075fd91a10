import { describe, expect, it } from 'vitest'
import { parseThread } from '../../src/thread/parseThread.js'
import { calculateProofLoad } from '../../src/torque/calculateProofLoad.js'
import { checkPlugsSwapped } from '../../src/torque/checkPlugsSwapped.js'
import { findTorqueSlip } from '../../src/torque/findTorqueSlip.js'
import { judgeTurns, readTurnsBand } from '../../src/torque/judgeTurns.js'
import { judgeWrenchSetting } from '../../src/torque/judgeWrenchSetting.js'
import { nutFactor } from '../../src/torque/nutFactor.js'
import { readCalibrationInputs } from '../../src/torque/readCalibrationInputs.js'
import { adaptorSetting, checkWrench, chooseWrenches, clampLoad } from '../../src/v1/torque.js'
import { clickWrench, limits } from './wrenches.js'

const BY_2017 = { iso6789: '2017' } as const
const M10 = (() => {
  const read = parseThread('M10')
  if (!read.ok || read.value.kind !== 'metric') throw new Error('M10')
  return read.value
})()

const CYCLE: Record<string, unknown> = {}
CYCLE['self'] = CYCLE
const DEEP = (() => {
  let nest: unknown = 'x'
  for (let level = 0; level < 9000; level += 1) nest = [nest]
  return nest
})()
const PROTO = JSON.parse('{"__proto__": {"kind": "torque"}}')
const NONSENSE: readonly unknown[] = [
  undefined,
  null,
  true,
  7,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  'x'.repeat(100_000),
  '__proto__',
  [],
  {},
  CYCLE,
  DEEP,
  PROTO,
  () => 1,
  Symbol('s'),
  12n,
]

/** Throws a TypeError or RangeError with a short message that names the argument. */
function misuse(call: () => unknown): void {
  let thrownValue: unknown
  try {
    call()
  } catch (error) {
    thrownValue = error
  }
  expect(thrownValue instanceof TypeError || thrownValue instanceof RangeError).toBe(true)
  expect((thrownValue as Error).message).toMatch(/ must /)
  expect((thrownValue as Error).message.length).toBeLessThan(300)
}

describe('misuse by the programmer throws, and says what must be', () => {
  const wrench = clickWrench(10, 100)
  const band = limits('39', '49')
  const call = (argument: unknown) => argument as never

  it.each(NONSENSE.map((value, at) => [at, value] as const))('nonsense %i in every argument', (_, value) => {
    misuse(() => checkWrench(call(value), band, BY_2017))
    misuse(() => checkWrench(wrench, call(value), BY_2017))
    misuse(() => checkWrench(wrench, band, call(value)))
    misuse(() => checkWrench(wrench, band, { iso6789: call(value) }))
    misuse(() => judgeWrenchSetting(call(value), { value: 40, unit: 'N.m' }, '2017'))
    misuse(() => judgeWrenchSetting(wrench, call(value), '2017'))
    misuse(() => chooseWrenches({ wrench }, [{ on: '/a', tightening: call(value) }], BY_2017))
    misuse(() => chooseWrenches({ wrench: call(value) }, [{ on: '/a', tightening: band }], BY_2017))
    misuse(() => chooseWrenches({ wrench }, [call(value)], BY_2017))
    misuse(() => chooseWrenches({ wrench }, [], call(value)))
    misuse(() => adaptorSetting(call(value)))
    misuse(() => findTorqueSlip(call(value), 'M18x1.5', 'steel'))
    misuse(() => checkPlugsSwapped(call(value), call(value)))
    misuse(() => calculateProofLoad(call(value), '8.8'))
    misuse(() => clampLoad(call(value)))
    misuse(() => nutFactor(call(value)))
    misuse(() => readCalibrationInputs(call(value)))
    misuse(() => readTurnsBand(call(value)))
    misuse(() => judgeTurns(call(value), 2))
  })

  it('wrenches', () => {
    const scale = { unit: 'N.m', lowest: 10, highest: 100, graduation: 1 } as const
    const scales = (change: object) => clickWrench(10, 100, 1, { scales: [{ ...scale, ...change } as never] })
    for (const change of [
      { unit: 'J' },
      { unit: 'mm' },
      { unit: '__proto__' },
      { lowest: -1 },
      { lowest: '10' },
      { lowest: 101 },
      { highest: 0 },
      { highest: Number.POSITIVE_INFINITY },
      { highest: 1e9 + 1 },
      { graduation: 0 },
      { graduation: -1 },
      { graduation: Number.NaN },
    ])
      misuse(() => checkWrench(scales(change), band, BY_2017))
    for (const change of [
      { type: 'hydraulic' },
      { scales: [] },
      { scales: 'none' },
      { scales: [null] },
      { accuracy: null },
      { accuracy: { kind: 'good' } },
      { accuracy: { kind: 'of reading', percent: 0 } },
      { accuracy: { kind: 'of reading', percent: 100 } },
      { accuracy: { kind: 'of full scale', percent: Number.NaN } },
      { declaredRange: { min: { value: -1, unit: 'N.m' }, max: { value: 9, unit: 'N.m' } } },
      { declaredRange: { min: { value: 1, unit: 'N.m' }, max: { value: 0, unit: 'N.m' } } },
      { declaredRange: { min: { value: 1, unit: 'L' }, max: { value: 9, unit: 'N.m' } } },
    ])
      misuse(() => checkWrench(clickWrench(10, 100, 1, change as never), band, BY_2017))
  })

  it('tightenings', () => {
    const stated = (torque: object) => ({ kind: 'torque', threadCondition: 'dry', torque }) as never
    for (const torque of [
      { kind: 'nominal', value: 40, unit: 'N.m' },
      { kind: 'nominal', value: '40,5', unit: 'N.m' },
      { kind: 'nominal', value: '1e3', unit: 'N.m' },
      { kind: 'nominal', value: '-4', unit: 'N.m' },
      { kind: 'nominal', value: '40', unit: 'ft-lb' },
      { kind: 'nominal with tolerance', value: '40', minus: '4', unit: 'N.m' },
      { kind: 'nominal with tolerance', value: '40', plus: '4', unit: 'N.m' },
      { kind: 'limits', unit: 'N.m' },
      { kind: 'limits', min: 'x', unit: 'N.m' },
      { kind: 'limits', max: '0x1F', unit: 'N.m' },
      { kind: 'not stated' },
      { kind: 'about', value: '40', unit: 'N.m' },
    ])
      misuse(() => checkWrench(wrench, stated(torque), BY_2017))
    misuse(() => readTurnsBand({ kind: 'turns', min: '1,5', threadCondition: 'dry' }))
    misuse(() => readTurnsBand({ kind: 'turns', min: '1', max: call(3), threadCondition: 'dry' }))
    misuse(() =>
      checkWrench(
        wrench,
        { ...band, stages: [{ kind: 'nominal', value: '', unit: 'N.m' }] } as never,
        BY_2017,
      ),
    )
  })

  it('options and numbers, with their range', () => {
    for (const tolerancePercent of [0, -1, 100, Number.NaN, '10'])
      misuse(() => checkWrench(wrench, band, { ...BY_2017, tolerancePercent: call(tolerancePercent) }))
    for (const angle of [-1, 181, Number.NaN]) {
      const adaptor = { extension: { value: 10, unit: 'mm' }, angle: { value: angle, unit: 'deg' } } as const
      misuse(() => checkWrench(wrench, band, { ...BY_2017, adaptor }))
      misuse(() =>
        adaptorSetting({
          ...adaptor,
          torque: { value: 1, unit: 'N.m' },
          leverLength: { value: 1, unit: 'm' },
        }),
      )
    }
    misuse(() => checkWrench(wrench, band, { ...BY_2017, adaptor: { extension: { value: -1, unit: 'mm' } } }))
    misuse(() => checkWrench(wrench, band, { ...BY_2017, adaptor: call(null) }))
    misuse(() => checkWrench(wrench, band, { ...BY_2017, adaptor: { kind: call('bent') } }))
    misuse(() => chooseWrenches({ wrench }, [], { ...BY_2017, adaptors: call([]) }))
    misuse(() => chooseWrenches({ wrench }, [], { ...BY_2017, adaptors: { crowfoot: call(7) } }))
    misuse(() => chooseWrenches({ wrench }, [{ on: '/a', tightening: band, drive: call(0.5) }], BY_2017))
    misuse(() => chooseWrenches({ wrench: { ...wrench, drive: call(null) } }, [], BY_2017))
    misuse(() => chooseWrenches({ wrench }, call('tasks'), BY_2017))
    const lever = clickWrench(10, 100, 1, { leverLength: { value: 0, unit: 'mm' } })
    misuse(() => checkWrench(lever, band, { ...BY_2017, adaptor: { extension: { value: 1, unit: 'mm' } } }))
    for (const turns of [-1, Number.NaN, '2'])
      misuse(() => judgeTurns(call({ kind: 'not stated' }), call(turns)))
    const bolt = {
      torque: { value: 40, unit: 'N.m' },
      thread: M10,
      propertyClass: '8.8',
      nutFactor: 0.2,
      scatterPercent: 25,
    } as const
    for (const change of [
      { nutFactor: 0.049 },
      { nutFactor: 1.01 },
      { scatterPercent: -1 },
      { scatterPercent: 100 },
      { propertyClass: 8.8 },
      { torque: { value: 0, unit: 'N.m' } },
    ])
      misuse(() => clampLoad({ ...bolt, ...change } as never))
    const friction = {
      thread: M10,
      threadFriction: 0.1,
      headFriction: 0.1,
      bearingDiameter: { value: 13, unit: 'mm' },
    } as const
    for (const change of [
      { threadFriction: 0.019 },
      { headFriction: 1.01 },
      { bearingDiameter: { value: 0, unit: 'mm' } },
      { bearingDiameter: { value: 1, unit: 'in' } },
    ])
      misuse(() => nutFactor({ ...friction, ...change } as never))
    misuse(() =>
      readCalibrationInputs(
        clickWrench(10, 100, 1, { calibration: { date: '2030-01-01', cyclesSince: -1 } }),
      ),
    )
    misuse(() =>
      checkPlugsSwapped(
        { torque: { kind: 'nominal', value: '4', unit: 'N.m' }, thread: 'M18x1.5', housing: call('wood') },
        call({}),
      ),
    )
  })

  it('ends of the numeric ranges belong as the doc comments say', () => {
    const bolt = { torque: { value: 40, unit: 'N.m' }, thread: M10, propertyClass: '8.8' } as const
    for (const [factor, scatterPercent] of [
      [0.05, 0],
      [1, 99.9],
    ] as const)
      expect(clampLoad({ ...bolt, nutFactor: factor, scatterPercent }).verdict).toBe('load')
    for (const friction of [0.02, 1])
      expect(
        nutFactor({
          thread: M10,
          threadFriction: friction,
          headFriction: friction,
          bearingDiameter: { value: 13, unit: 'mm' },
        }),
      ).toBeGreaterThan(0)
    expect(checkWrench(clickWrench(1, 1e9, 1e-6), limits('3', '3'), BY_2017).setting?.setting.value).toBe(3)
    expect(checkWrench(clickWrench(1e-7, 1e-6, 1e-7), limits('3', '4'), BY_2017).verdict).toBe('does not fit')
  })

  it('a toolbox of wrenches under hostile ids is only data', () => {
    const wrenches = JSON.parse(JSON.stringify({ constructor: wrench, toString: wrench }))
    expect(chooseWrenches(wrenches, [{ on: '/a', tightening: band }], BY_2017).wrenches).toEqual([
      'constructor',
    ])
    expect(findTorqueSlip({ kind: 'nominal', value: '35', unit: 'N.m' }, '__proto__', 'steel').verdict).toBe(
      'cannot tell',
    )
  })
})

describe('an option or fact that is not known', () => {
  const wrench = clickWrench(10, 100)
  const band = limits('39', '49')

  it('is refused by name, with a similar one', () => {
    const misspeltOptions = { ...BY_2017, tolerancePercnt: 10 } as typeof BY_2017
    expect(() => checkWrench(wrench, band, misspeltOptions)).toThrow(/tolerancePercnt.*tolerancePercent/)
    expect(() => checkWrench(wrench, band, { ...BY_2017, edition: '2017' } as typeof BY_2017)).toThrow(
      TypeError,
    )
    const tasks = [{ on: '/a', tightening: band, drives: '1/2 in' }] as unknown as Parameters<
      typeof chooseWrenches
    >[1]
    expect(() => chooseWrenches({ wrench }, tasks, BY_2017)).toThrow(/tasks\[0\].*drives.*drive/)
    expect(() => chooseWrenches({ wrench }, [], { ...BY_2017, adaptor: {} } as typeof BY_2017)).toThrow(
      /adaptor.*adaptors/,
    )
  })
})

describe('a verdict', () => {
  it('narrows: what fits has its setting', () => {
    const fit = checkWrench(clickWrench(10, 100), limits('39', '49'), BY_2017)
    if (fit.verdict !== 'fits') throw new Error(fit.verdict)
    // no question mark: this line compiles only if the union narrows
    expect(fit.setting.setting).toEqual({ value: 44, unit: 'N.m' })
  })
})
