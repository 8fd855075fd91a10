import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { TorqueWrench } from '../../src/spec/toolbox.js'
import { checkWrench, chooseWrenches, type WrenchTask } from '../../src/v1/torque.js'
import { law } from '../support/law.js'
import { clickWrench, limits, nominal, nominalWith, torque } from './wrenches.js'

const BY_2017 = { iso6789: '2017' } as const
const nominalOf = (value: string) => ({ kind: 'nominal', value, unit: 'N.m' }) as const
const covers = (wrench: TorqueWrench, task: WrenchTask) =>
  ['fits', 'fits with care'].includes(checkWrench(wrench, task.tightening, BY_2017).verdict)

describe('chooseWrenches', () => {
  const smallWrench = clickWrench(5, 25)
  const middleWrench = clickWrench(20, 100)
  const largeWrench = clickWrench(40, 200)

  it('takes one wrench where one will do, and the one that fits plainly before one with care', () => {
    const tasks = [
      { on: '/drain', tightening: limits('39', '49') },
      { on: '/fill', tightening: limits('55', '65') },
    ]
    expect(
      chooseWrenches({ small: smallWrench, middle: middleWrench, large: largeWrench }, tasks, BY_2017)
        .wrenches,
    ).toEqual(['middle'])
    // 30 to 38 is 15 % of 240: with care under 2017
    const wideWrench = clickWrench(10, 240)
    const { wrenches, covered } = chooseWrenches(
      { wide: wideWrench, middle: middleWrench },
      [{ on: '/drain', tightening: limits('30', '38') }],
      BY_2017,
    )
    expect(wrenches).toEqual(['middle'])
    expect(covered.map(({ on, wrench, fit }) => [on, wrench, fit.verdict])).toEqual([
      ['/drain', 'middle', 'fits'],
    ])
  })

  it('equal choices go by the toolbox’s order', () => {
    const tasks = [{ on: '/drain', tightening: limits('50', '60') }]
    expect(chooseWrenches({ middle: middleWrench, large: largeWrench }, tasks, BY_2017).wrenches).toEqual([
      'middle',
    ])
    expect(chooseWrenches({ large: largeWrench, middle: middleWrench }, tasks, BY_2017).wrenches).toEqual([
      'large',
    ])
  })

  it('one that covers all beats two that fit better', () => {
    const wideWrench = clickWrench(5, 240)
    const tasks = [
      { on: '/drain', tightening: limits('10', '12') },
      { on: '/cover', tightening: limits('178', '197') },
    ]
    const { wrenches, covered } = chooseWrenches(
      { small: smallWrench, large: largeWrench, wide: wideWrench },
      tasks,
      BY_2017,
    )
    expect(wrenches).toEqual(['wide'])
    expect(covered.map(({ fit }) => fit.verdict)).toEqual(['fits with care', 'fits'])
  })

  it('lists uncovered tasks with a reason for each wrench, and ranges to buy of at most five to one', () => {
    const tasks = [
      { on: '/a', tightening: limits('39', '49') },
      { on: '/b', tightening: limits('290', '310'), drive: '1/2 in' },
      { on: '/c', tightening: nominalWith('3', '0.3', '0.3'), drive: '1/4 in' },
      { on: '/d', tightening: nominalWith('2', '0.2', '0.2') },
    ]
    const { wrenches, covered, uncovered, toBuy } = chooseWrenches(
      { middle: middleWrench, small: smallWrench },
      tasks,
      BY_2017,
    )
    expect(wrenches).toEqual(['middle'])
    expect(covered.map(({ on }) => on)).toEqual(['/a'])
    expect(uncovered.map(({ on, verdict }) => [on, verdict])).toEqual([
      ['/b', 'does not fit'],
      ['/c', 'does not fit'],
      ['/d', 'does not fit'],
    ])
    expect(
      uncovered[0]?.wrenches.map(({ wrench, reasons }) => [wrench, reasons.map(({ code }) => code)]),
    ).toEqual([
      ['middle', ['torque/above-highest-mark']],
      ['small', ['torque/above-highest-mark']],
    ])
    // by hand: one wrench of 1 to 5 covers 2 and 3 N·m, one of 100 to 500 covers 300; the narrowest bands are 0.4 and
    // 20 wide
    const newtonMetres = (value: number) => ({ value, unit: 'N.m' })
    expect(toBuy).toEqual([
      {
        from: newtonMetres(1),
        to: newtonMetres(5),
        maxStep: newtonMetres(0.4),
        drives: ['1/4 in'],
        covers: ['/c', '/d'],
      },
      {
        from: newtonMetres(100),
        to: newtonMetres(500),
        maxStep: newtonMetres(20),
        drives: ['1/2 in'],
        covers: ['/b'],
      },
    ])
  })

  it('a range reaches down to a fifth of its high end, and no further: 20 with 100, not 19.9', () => {
    const ask = (low: string) =>
      chooseWrenches(
        {},
        [
          { on: '/low', tightening: nominal(low) },
          { on: '/high', tightening: nominal('100') },
        ],
        BY_2017,
      ).toBuy.map(({ from, to }) => [from.value, to.value])
    expect(ask('20')).toEqual([[20, 100]])
    expect(ask('20.1')).toEqual([[20, 100]])
    expect(ask('19.9')).toEqual([
      [4, 20],
      [20, 100],
    ])
  })

  it('names a usual range in the sheet’s unit, in lbf·in up to 20 lbf·ft', () => {
    const ask = (...tightenings: readonly WrenchTask['tightening'][]) =>
      chooseWrenches(
        {},
        tightenings.map((tightening, at) => ({ on: `/${at}`, tightening })),
        BY_2017,
      ).toBuy.map(({ from, to }) => [from.value, to.value, to.unit])
    expect(ask(nominal('9.3', 'lbf.ft'))).toEqual([[40, 200, 'lbf.in']])
    expect(ask(nominal('20', 'lbf.ft'))).toEqual([[50, 250, 'lbf.in']])
    expect(ask(nominal('20.1', 'lbf.ft'))).toEqual([[5, 25, 'lbf.ft']])
    expect(ask(nominal('95', 'lbf.in'))).toEqual([[20, 100, 'lbf.in']])
    expect(ask(nominal('3.5', 'kgf.m'))).toEqual([[1, 5, 'kgf.m']])
    // 12 N·m is 8.9 lbf·ft, below the wrench for 30 lbf·ft; 15 N·m is 11.1. The highest torque of a wrench decides its
    // unit
    expect(ask(nominal('12'), nominal('30', 'lbf.ft'))).toEqual([
      [4, 20, 'N.m'],
      [10, 50, 'lbf.ft'],
    ])
    expect(ask(nominal('15'), nominal('30', 'lbf.ft'))).toEqual([[10, 50, 'lbf.ft']])
  })

  it('stages wider than five to one get one wrench for all of them', () => {
    const tightening = torque({ kind: 'nominal', value: '90', unit: 'N.m' }, { stages: [nominalOf('10')] })
    const { toBuy } = chooseWrenches({}, [{ on: '/cover', tightening }], BY_2017)
    expect(toBuy.map(({ from, to }) => [from.value, to.value])).toEqual([[10, 100]])
  })

  it('squares: exact, or through one drive adaptor, never through a crowfoot or an extension', () => {
    const tasks = [{ on: '/drain', tightening: limits('39', '49'), drive: '3/8 in' }]
    const plainChoice = chooseWrenches({ middle: middleWrench }, tasks, BY_2017)
    expect(plainChoice.uncovered[0]?.wrenches[0]?.reasons).toEqual([
      { code: 'torque/drive-does-not-reach', params: { wrench: '1/2 in', required: '3/8 in' } },
    ])
    const adaptor = (kind: 'drive adaptor' | 'crowfoot' | 'straight extension') =>
      ({ name: 'half to three eighths', kind, from: '1/2 in', to: '3/8 in' }) as const
    const codesWith = (kind: 'drive adaptor' | 'crowfoot' | 'straight extension') =>
      chooseWrenches({ middle: middleWrench }, tasks, {
        ...BY_2017,
        adaptors: { step: adaptor(kind) },
      }).covered.map(({ wrench, through }) => [wrench, through])
    expect(codesWith('drive adaptor')).toEqual([['middle', 'step']])
    expect(codesWith('crowfoot')).toEqual([])
    expect(codesWith('straight extension')).toEqual([])
    // with the right square drive in the toolbox, the adaptor is not needed
    const direct = clickWrench(20, 100, 1, { drive: '3/8 in' })
    expect(
      chooseWrenches({ middle: middleWrench, direct }, tasks, {
        ...BY_2017,
        adaptors: { step: adaptor('drive adaptor') },
      }).wrenches,
    ).toEqual(['direct'])
  })

  it('a square in millimetres, as JIS and ISO 1174-1 print it, is the same square', () => {
    const at = (drive: string) =>
      chooseWrenches(
        { middle: middleWrench },
        [{ on: '/drain', tightening: limits('39', '49'), drive }],
        BY_2017,
      ).wrenches
    expect(['12.7 mm', '12.5 mm', '1/2 in'].map(at)).toEqual([['middle'], ['middle'], ['middle']])
    expect(['9.5 mm', '10 mm', '12 mm', '19 mm'].map(at)).toEqual([[], [], [], []])
    const step = { name: 'step', kind: 'drive adaptor', from: '12.7 mm', to: '9.5 mm' } as const
    const tasks = [{ on: '/drain', tightening: limits('39', '49'), drive: '3/8 in' }]
    const adaptedChoice = chooseWrenches({ middle: middleWrench }, tasks, { ...BY_2017, adaptors: { step } })
    expect(adaptedChoice.covered.map(({ through }) => through)).toEqual(['step'])
  })

  it('not stated, turns and one limit are reported once, and nothing is to be bought for them', () => {
    const tasks: WrenchTask[] = [
      { on: '/a', tightening: { kind: 'not stated', threadCondition: 'dry' } },
      { on: '/b', tightening: { kind: 'turns', min: '2', max: '3', threadCondition: 'sealant' } },
      { on: '/c', tightening: { kind: 'turns', min: '2', threadCondition: 'sealant' } },
      {
        on: '/d',
        tightening: {
          kind: 'torque',
          torque: { kind: 'limits', min: '30', unit: 'N.m' },
          threadCondition: 'dry',
        },
      },
      {
        on: '/e',
        tightening: {
          kind: 'torque',
          torque: { kind: 'limits', max: '30', unit: 'N.m' },
          threadCondition: 'dry',
        },
      },
    ]
    for (const wrenches of [{ middle: middleWrench, small: smallWrench }, {}]) {
      const { uncovered, toBuy, wrenches: taken } = chooseWrenches(wrenches, tasks, BY_2017)
      expect(taken).toEqual([])
      expect(toBuy).toEqual([])
      expect(
        uncovered.map(({ verdict, wrenches: why }) => [verdict, why.map((item) => item.reasons[0]?.code)]),
      ).toEqual([
        ['cannot tell', ['torque/not-stated']],
        ['cannot tell', ['torque/by-turns']],
        ['cannot tell', ['torque/by-turns']],
        ['cannot tell', ['torque/one-limit-only']],
        ['cannot tell', ['torque/one-limit-only']],
      ])
    }
  })

  it('no wrenches, no tasks: nothing', () => {
    expect(chooseWrenches({}, [], BY_2017)).toEqual({ wrenches: [], covered: [], uncovered: [], toBuy: [] })
    expect(chooseWrenches({ middle: middleWrench }, [], BY_2017).wrenches).toEqual([])
  })

  it('20 wrenches and 500 tasks are looked at; one more throws RangeError', () => {
    const box = (count: number) =>
      Object.fromEntries(
        Array.from({ length: count }, (_, at) => [`w${at}`, clickWrench(10 * at + 1, 10 * at + 10)]),
      )
    const tasks = (count: number) =>
      Array.from({ length: count }, (_, at) => ({
        on: `/${at}`,
        tightening: nominal(String((at % 200) + 1)),
      }))
    const all = chooseWrenches(box(20), tasks(500), BY_2017)
    expect(all.wrenches).toHaveLength(20)
    expect(all.covered).toHaveLength(500)
    expect(() => chooseWrenches(box(21), [], BY_2017)).toThrow(RangeError)
    expect(() => chooseWrenches({}, tasks(501), BY_2017)).toThrow(RangeError)
  })

  const boxArb = fc
    .array(fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 60 })), { maxLength: 8 })
    .map((ranges) =>
      Object.fromEntries(
        ranges.map(([lowest, width], at) => [`w${at}`, clickWrench(lowest, lowest + width)]),
      ),
    )
  const tasksArb = fc.array(fc.integer({ min: 1, max: 130 }), { maxLength: 12 }).map((values) =>
    values.map((value, at) => ({
      on: `/${at}`,
      tightening: at % 2 === 0 ? nominal(String(value)) : nominalWith(String(value), '1', String(value)),
    })),
  )

  it('equals a search over all subsets: fewest tools, then fewest with care (300 cases)', () => {
    law(50, boxArb, tasksArb, (box, tasks) => {
      const tools = Object.entries(box)
      const reachable = tasks.filter((task) => tools.some(([, wrench]) => covers(wrench, task)))
      const verdicts = new Map(
        tools.map(([id, wrench]) => [
          id,
          tasks.map(({ tightening }) => checkWrench(wrench, tightening, BY_2017).verdict),
        ]),
      )
      let fewestTools: readonly [tools: number, careful: number] = [Number.POSITIVE_INFINITY, 0]
      for (let set = 0; set < 2 ** tools.length; set += 1) {
        const taken = tools.filter((_, at) => Math.floor(set / 2 ** at) % 2 === 1).map(([id]) => id)
        const best = tasks
          .map((_, at) => taken.map((id) => verdicts.get(id)?.[at]))
          .filter((_, at) => tools.some(([id]) => verdicts.get(id)?.[at]?.startsWith('fits')))
        if (!best.every((all) => all.some((candidate) => candidate?.startsWith('fits')))) continue
        const doubtfulCount = best.filter((all) => !all.includes('fits')).length
        if (
          taken.length < fewestTools[0] ||
          (taken.length === fewestTools[0] && doubtfulCount < fewestTools[1])
        )
          fewestTools = [taken.length, doubtfulCount]
      }
      const choice = chooseWrenches(box, tasks, BY_2017)
      const doubtfulChoices = choice.covered.filter(({ fit }) => fit.verdict !== 'fits').length
      expect([choice.wrenches.length, doubtfulChoices]).toEqual(fewestTools)
      expect(choice.covered.map(({ on }) => on)).toEqual(reachable.map(({ on }) => on))
      for (const { wrench, on } of choice.covered) {
        expect(choice.wrenches).toContain(wrench)
        const task = tasks.find((candidate) => candidate.on === on)
        const tool = box[wrench]
        expect(task && tool && covers(tool, task)).toBe(true)
      }
    })
  })

  it('does not depend on the order of the tasks', () => {
    law(50, boxArb, tasksArb, (box, tasks) => {
      const forward = chooseWrenches(box, tasks, BY_2017)
      const reversedChoice = chooseWrenches(box, [...tasks].reverse(), BY_2017)
      expect(reversedChoice.wrenches).toEqual(forward.wrenches)
      expect(reversedChoice.toBuy.map(({ from, to }) => [from, to])).toEqual(
        forward.toBuy.map(({ from, to }) => [from, to]),
      )
      const named = (choice: typeof forward) =>
        choice.covered.map(({ on, wrench }) => `${on} ${wrench}`).sort()
      expect(named(reversedChoice)).toEqual(named(forward))
    })
  })

  it('the proposed wrench covers the uncovered tasks, at 20 % of full scale or more', () => {
    law(50, tasksArb, (tasks) => {
      const { toBuy, uncovered } = chooseWrenches({}, tasks, BY_2017)
      const byTask = new Map(tasks.map((task) => [task.on, task]))
      let covered = 0
      for (const { from, to, covers: names } of toBuy) {
        expect(from.value * 5).toBeGreaterThanOrEqual(to.value)
        const boughtWrench = clickWrench(Math.max(1, from.value), to.value)
        for (const on of names) {
          const task = byTask.get(on)
          expect(
            task && checkWrench(boughtWrench, task.tightening, { iso6789: '2003' }).setting,
          ).toBeDefined()
          covered += 1
        }
      }
      expect(covered).toBe(uncovered.length)
    })
  })
})
