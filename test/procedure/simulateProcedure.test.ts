import { describe, expect, test } from 'vitest'
import { findTroubles } from '../../src/procedure/findTroubles.js'
import { readContext } from '../../src/procedure/readContext.js'
import type { Action } from '../../src/v1/spec.js'
import { law } from '../support/law.js'
import { build, makeCase, makeSheet, sharedSheet, VARIETY, varietySheet, visitArbitrary } from './sheets.js'
import { simulateProcedure } from './simulateProcedure.js'

describe('laws', () => {
  test('the same steps give the same states, one for each step', () => {
    law(40, visitArbitrary, ({ sheet, services }) => {
      const procedure = build(sheet, services)
      const firstRun = simulateProcedure(procedure, sheet)
      expect(simulateProcedure(procedure, sheet)).toEqual(firstRun)
      expect(firstRun.states).toHaveLength(procedure.steps.length)
      expect(firstRun.end).toEqual(firstRun.states.at(-1))
      expect(JSON.parse(JSON.stringify(firstRun))).toEqual(firstRun)
    })
  })

  test('at the end of a built procedure everything is tight, on its wheels and dry', () => {
    law(40, visitArbitrary, ({ sheet, services }) => {
      const { end } = simulateProcedure(build(sheet, services), sheet)
      for (const part of [...Object.values(end.openings), ...Object.values(end.covers)])
        expect(part.position).toBe('tight')
      expect(Object.values(end.shields)).not.toContain('off')
      expect([end.lifted, end.recorded, end.usedOil === 'in the pan']).toEqual([[], true, false])
    })
  })

  test('the order of keys in the sheet orders the work and changes nothing of its end', () => {
    law(40, visitArbitrary, ({ sheet, services }) => {
      const reversedSheet = {
        ...sheet,
        gearcases: Object.fromEntries(Object.entries(sheet.gearcases).reverse()),
      }
      const procedure = build(sheet, services)
      const firstEnd = simulateProcedure(procedure, sheet).end
      const secondEnd = simulateProcedure(build(reversedSheet, services), reversedSheet).end
      const isDone = (action: Action) => procedure.steps.some((step) => step.do === action)
      // Rolling turns every wheel, and the pans must be away. So the wheel positions, and the pans that were put back
      // for a level check, depend on the last roll. After an oil change the pans are put away with the used oil.
      const compared = (gearcases: (typeof firstEnd)['gearcases']) =>
        Object.fromEntries(
          Object.entries(gearcases).map(([key, gearcase]) => {
            if (!isDone('roll the machine')) return [key, gearcase]
            const { wheelMark: _mark, panPlaced, ...rest } = gearcase
            return [key, isDone('take used oil away') ? { ...rest, panPlaced } : rest]
          }),
        )
      expect(compared(secondEnd.gearcases)).toEqual(compared(firstEnd.gearcases))
      expect(secondEnd.openings).toEqual(firstEnd.openings)
    })
  })
})

describe('states', () => {
  const procedure = build(varietySheet, ['hub-change'])
  const { states, start } = simulateProcedure(procedure, varietySheet)
  const stateAfter = (id: string) => states[procedure.steps.findIndex((step) => step.id === id)]

  test('a plug is kept by pointer and instance, its wheel by gearcase and instance', () => {
    const plug = (side: string) => `/gearcases/hub/openings/fill@${side}`
    expect(start.openings[plug('left')]?.position).toBe('tight')
    expect(stateAfter('hub-left-crack-fill')?.openings[plug('left')]?.position).toBe('cracked')
    expect(stateAfter('hub-left-crack-fill')?.openings[plug('right')]?.position).toBe('tight')
    expect(stateAfter('hub-left-take-out-fill-2')?.openings[plug('left')]?.outAt).toEqual([
      'mark down',
      'mark level',
    ])
    expect(stateAfter('hub-left-turn-fill-2')?.gearcases['/gearcases/hub@left']?.wheelMark).toBe('mark level')
    expect(stateAfter('hub-left-turn-fill-2')?.gearcases['/gearcases/hub@right']?.wheelMark).toBe('not known')
    expect(stateAfter('hub-left-drain-fill')?.gearcases['/gearcases/hub@left']?.oil).toBe('out')
    expect(stateAfter('hub-left-pour-fill')?.gearcases['/gearcases/hub@left']?.oil).toBe('new')
  })

  test('cracking a plug uses up its washer', () => {
    const seal = '/gearcases/hub/openings/fill/seals/0@left'
    expect(start.seals[seal]).toBe('undisturbed')
    expect(stateAfter('hub-left-crack-fill')?.seals[seal]).toBe('used')
    expect(stateAfter('hub-left-old-seal-fill')?.seals[seal]).toBe('off')
    expect(stateAfter('hub-left-new-seal-fill')?.seals[seal]).toBe('new')
  })

  test('one pour fills every gearcase that shares the oil', () => {
    const sharedProcedure = build(sharedSheet, ['change'])
    const { end } = simulateProcedure(sharedProcedure, sharedSheet)
    expect(end.gearcases['/gearcases/gearbox']?.oil).toBe('new')
    expect(end.gearcases['/gearcases/axle']?.oil).toBe('new')
  })

  test('a step that says too little leaves the state as it was', () => {
    const oddProcedure = { ...procedure, steps: [{ id: 'odd', do: 'take out', on: '/nowhere' } as const] }
    const run = simulateProcedure(oddProcedure, varietySheet)
    expect(run.end).toEqual(run.start)
    expect(run.findings[0]?.code).toBe('procedure/unknown-part')
  })

  test('no steps: the end is the start', () => {
    const run = simulateProcedure({ ...procedure, steps: [] }, varietySheet)
    expect(run.end).toEqual(run.start)
    expect(run.states).toEqual([])
  })

  test('chocks, jack and stands of a writer who names no part stand for all', () => {
    const write = (names: readonly ('chock the wheels' | 'raise the machine' | 'set on stands')[]) => ({
      ...procedure,
      steps: names.map((name, place) => ({ id: `s${place}`, do: name })),
    })
    const { end } = simulateProcedure(
      write(['chock the wheels', 'raise the machine', 'set on stands']),
      varietySheet,
    )
    expect([end.chocked, end.lifted, end.onStands]).toEqual([
      ['front', 'rear'],
      ['front-beam', 'rear-beam'],
      ['front-beam', 'rear-beam'],
    ])
    const bare = { ...varietySheet, machine: { ...varietySheet.machine, axles: {} } }
    expect(simulateProcedure(write(['chock the wheels']), bare).end.chocked).toEqual(['wheels'])
  })
})

describe('the work grows with the steps, not with their square', () => {
  /** How often a list or map of the whole machine is read, and the number of items read. */
  function countVisits(times: number): { readonly steps: number; readonly visits: number } {
    const sheet = makeSheet(
      Object.fromEntries(
        Array.from({ length: times }, (_, copy) =>
          Object.entries(VARIETY).map(([id, options]) => [`${id}-${copy}`, makeCase(id, options)] as const),
        ).flat(),
      ),
    )
    const procedure = build(sheet, ['change'])
    const { context } = readContext(procedure, sheet)
    let visits = 0
    const watchedList = <T>(list: readonly T[]): readonly T[] =>
      new Proxy(list, {
        get(target, key, receiver) {
          if (/^\d+$/.test(String(key))) visits += 1
          return Reflect.get(target, key, receiver)
        },
      })
    class WatchedMap<Value> extends Map<string, Value> {
      override *values() {
        for (const item of super.values()) {
          visits += 1
          yield item
        }
        return undefined
      }
    }
    const { indexedSheet } = context
    const watchedLayout = {
      ...indexedSheet,
      gearcases: new WatchedMap(indexedSheet.gearcases),
      shields: new WatchedMap(indexedSheet.shields),
      parts: new WatchedMap(indexedSheet.parts),
      instances: watchedList(indexedSheet.instances),
      securedItems: watchedList(indexedSheet.securedItems),
    }
    expect(findTroubles(sheet, { ...context, indexedSheet: watchedLayout }, procedure).troubles).toEqual([])
    return { steps: procedure.steps.length, visits }
  }

  test('eight times the gearcases: eight times the steps, and no more looks at the machine for each', () => {
    const [oneVisit, eightVisits] = [countVisits(1), countVisits(8)]
    expect(eightVisits.steps / oneVisit.steps).toBeGreaterThan(7)
    expect(eightVisits.visits / eightVisits.steps).toBeLessThan((1.5 * oneVisit.visits) / oneVisit.steps)
  })
})
