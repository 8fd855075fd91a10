import { describe, expect, it } from 'vitest'
import type { Param, Reason } from '../../src/base/finding.js'
import type { Say } from '../../src/message/catalogue.js'
import { threadTexts } from '../../src/message/en/thread.js'
import { torqueTexts } from '../../src/message/en/torque.js'
import { parseThread } from '../../src/thread/parseThread.js'
import { calculateProofLoad } from '../../src/torque/calculateProofLoad.js'
import { checkPlugsSwapped } from '../../src/torque/checkPlugsSwapped.js'
import { findTorqueSlip } from '../../src/torque/findTorqueSlip.js'
import { judgeTurns, readTurnsBand } from '../../src/torque/judgeTurns.js'
import { judgeWrenchSetting } from '../../src/torque/judgeWrenchSetting.js'
import { readCalibrationInputs } from '../../src/torque/readCalibrationInputs.js'
import { checkWrench, chooseWrenches, clampLoad } from '../../src/v1/torque.js'
import { clickWrench, limits, nominal, torque } from './wrenches.js'

const texts: Readonly<Record<string, (params: never, say: Say) => string>> = {
  ...threadTexts,
  ...torqueTexts,
}

const say: Say = {
  number: (value, digits = 3) => String(Number(value.toFixed(digits))),
  quantity: (value) => {
    const { value: size, unit } = value as { value: Param; unit: Param }
    if (size === undefined || unit === undefined) throw new Error(`no quantity: ${JSON.stringify(value)}`)
    return `${String(size)} ${String(unit)}`
  },
  date: (value) => value,
  list: (items) => items.join(' and '),
  count: (value, candidate, other) => `${value} ${value === 1 ? candidate : other}`,
  reason: (value) => renderReason(value as unknown as Reason),
}

function renderReason({ code, params }: Reason): string {
  const text = texts[code]
  if (text === undefined) throw new Error(`no text for ${code}`)
  return text(params as never, say)
}

const BY_2017 = { iso6789: '2017' } as const
const BY_2003 = { iso6789: '2003' } as const
const clickTo100 = clickWrench(10, 100)
const NOT_STATED = { kind: 'not stated', threadCondition: 'dry' } as const
const turns = (max?: string) =>
  ({ kind: 'turns', min: '2', threadCondition: 'sealant', ...(max === undefined ? {} : { max }) }) as const
const plug = (value: string, thread?: string) =>
  ({
    torque: { kind: 'nominal', value, unit: 'N.m' },
    housing: 'steel',
    ...(thread === undefined ? {} : { thread }),
  }) as const
const bolt = (text: string) => {
  const read = parseThread(text)
  if (!read.ok || read.value.kind === 'pipe') throw new Error(text)
  return read.value
}
const load = (value: number) =>
  clampLoad({
    torque: { value, unit: 'N.m' },
    thread: bolt('M10'),
    propertyClass: '8.8',
    nutFactor: 0.2,
    scatterPercent: 25,
  })
const used = (cyclesSince: number) =>
  readCalibrationInputs(clickWrench(10, 100, 1, { calibration: { date: '2030-03-01', cyclesSince } }))
const angled = (thenAngle: object) =>
  torque({ kind: 'limits', min: '39', max: '49', unit: 'N.m' }, { thenAngle: { unit: 'deg', ...thenAngle } })
const declaredRange = { min: { value: 20, unit: 'N.m' }, max: { value: 80, unit: 'N.m' } } as const
const electronic = clickWrench(10, 100, 0.1, {
  type: 'electronic',
  accuracy: { kind: 'of reading', percent: 2 },
})
const crowfoot = { extension: { value: 6, unit: 'in' } } as const

/** One call for each code at least. */
function everyReason(): Reason[] {
  const answers: { readonly reasons: readonly Reason[] }[] = [
    checkWrench(clickTo100, limits('39', '49'), BY_2017),
    checkWrench(clickTo100, limits('40', '41'), BY_2017),
    checkWrench(clickTo100, limits('14', '16'), BY_2017),
    checkWrench(clickTo100, limits('1', '2'), BY_2017),
    checkWrench(clickTo100, limits('14', '16'), BY_2003),
    checkWrench(clickTo100, limits('140', '160'), BY_2017),
    checkWrench(clickWrench(10, 100, 1, { declaredRange }), limits('14', '16'), BY_2017),
    checkWrench(clickWrench(10, 100, 1, { declaredRange }), limits('84', '86'), BY_2017),
    checkWrench(clickTo100, limits('40.1', '40.2'), BY_2017),
    checkWrench(clickWrench(10, 10), limits('9.9', '10.5'), BY_2017),
    checkWrench(electronic, limits('12', '12'), BY_2017),
    checkWrench(
      clickWrench(1, 100, 1, { accuracy: { kind: 'of full scale', percent: 5 } }),
      limits('4', '5'),
      BY_2017,
    ),
    checkWrench(clickTo100, nominal('40.5'), BY_2017),
    checkWrench(clickTo100, nominal('40'), { ...BY_2017, tolerancePercent: 10 }),
    checkWrench(clickTo100, torque({ kind: 'limits', min: '40', unit: 'N.m' }), BY_2017),
    checkWrench(clickTo100, torque({ kind: 'limits', max: '40', unit: 'N.m' }), BY_2017),
    checkWrench(clickTo100, limits('50', '40'), BY_2017),
    checkWrench(clickTo100, NOT_STATED, BY_2017),
    checkWrench(clickTo100, turns('3'), BY_2017),
    checkWrench(clickTo100, turns(), BY_2017),
    checkWrench(clickTo100, angled({ kind: 'nominal', value: '90' }), BY_2017),
    checkWrench(clickTo100, angled({ kind: 'limits', min: '85', max: '95' }), BY_2017),
    checkWrench(clickTo100, angled({ kind: 'limits', min: '85' }), BY_2017),
    checkWrench(clickTo100, angled({ kind: 'limits', max: '95' }), BY_2017),
    checkWrench(clickWrench(10, 100, 1, { type: 'beam' }), limits('39', '49'), BY_2017),
    checkWrench(
      clickTo100,
      torque(
        { kind: 'nominal', value: '40', unit: 'N.m' },
        { stages: [{ kind: 'nominal', value: '5', unit: 'N.m' }] },
      ),
      BY_2017,
    ),
    checkWrench(clickWrench(10, 100, 1, { leverLength: { value: 12, unit: 'in' } }), limits('39', '49'), {
      ...BY_2017,
      adaptor: crowfoot,
    }),
    checkWrench(clickTo100, limits('39', '49'), { ...BY_2017, adaptor: crowfoot }),
    checkWrench(clickTo100, limits('39', '49'), { ...BY_2017, adaptor: { kind: 'crowfoot' } }),
    ...(chooseWrenches(
      { middle: clickTo100 },
      [{ on: '/a', tightening: limits('39', '49'), drive: '3/4 in' }],
      BY_2017,
    ).uncovered[0]?.wrenches ?? []),
    findTorqueSlip(plug('35').torque, 'M18x1.5', 'aluminium'),
    findTorqueSlip(plug('3.5').torque, 'M18x1.5', 'aluminium'),
    findTorqueSlip({ kind: 'nominal', value: '900', unit: 'cN.m' }, 'M18x1.5', 'aluminium'),
    findTorqueSlip({ kind: 'nominal', value: '300', unit: 'cN.m' }, 'M18x1.5', 'aluminium'),
    findTorqueSlip(plug('35').torque, undefined, 'aluminium'),
    findTorqueSlip(plug('35').torque, 'M18,5', 'aluminium'),
    findTorqueSlip(plug('35').torque, 'G 1/2', 'aluminium'),
    findTorqueSlip(plug('35').torque, 'R 1/2', 'aluminium'),
    checkPlugsSwapped(plug('30', 'M20x1.5'), plug('55', 'M14x1.5')),
    checkPlugsSwapped(plug('55', 'M20x1.5'), plug('30', 'M14x1.5')),
    checkPlugsSwapped(plug('55', 'M20x1.5'), plug('30', 'M20x1.5')),
    calculateProofLoad(bolt('M10'), '5.6'),
    calculateProofLoad(bolt('M24'), '9.8'),
    calculateProofLoad(bolt('3/8-16 UNC'), '8.8'),
    calculateProofLoad(bolt('1-8 UNC'), 'grade 2'),
    load(30),
    load(300),
    used(5000),
    used(4999),
    readCalibrationInputs(clickTo100),
    readTurnsBand(nominal('40')),
    readTurnsBand(turns('3')),
    readTurnsBand(turns()),
    judgeTurns(turns('3'), 2.5),
    judgeTurns(turns(), 2),
    judgeTurns(turns('3'), 1),
    judgeTurns(turns('3'), 4),
    judgeWrenchSetting(clickTo100, { value: 40.5, unit: 'N.m' }, '2017'),
  ]
  const threads = ['x', '1/2 BSP', 'M11', 'M18x9', 'G 5/7', '1/2-18 NPT', 'M18x1.7', 'M'.repeat(65)]
  return [
    ...answers.flatMap(({ reasons }) => reasons),
    ...threads.flatMap((text) => parseThread(text).findings.map(({ code, params }) => ({ code, params }))),
  ]
}

describe('texts of thread and torque', () => {
  it('every code is emitted by some call, and every emitted code has a text', () => {
    const emittedCodes = new Set(everyReason().map(({ code }) => code))
    expect([...emittedCodes].sort()).toEqual(Object.keys(texts).sort())
  })

  it('every text is a plain sentence with its figures filled in', () => {
    for (const reason of everyReason()) {
      const text = renderReason(reason)
      expect(text).toMatch(/^[A-Z0-9“±].*[.]$/s)
      expect(text).not.toMatch(/undefined|NaN|\[object|Infinity| {2}/)
    }
  })

  it('says what to set, and what is missing', () => {
    const lines = checkWrench(clickTo100, limits('39', '49'), BY_2017).reasons.map(renderReason)
    expect(lines).toEqual([
      'Set 44 N.m: the mark inside the band nearest to its middle, 44 N.m.',
      'With ±4 % of reading the actual torque is 42.30769230769231 N.m to 45.833333333333336 N.m, inside 39 N.m to 49 N.m.',
    ])
    expect(checkWrench(clickTo100, NOT_STATED, BY_2017).reasons.map(renderReason)).toEqual([
      'The sheet states no torque. See the manual.',
    ])
  })
})
