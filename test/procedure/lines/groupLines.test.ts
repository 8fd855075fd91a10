import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { groupLines, type ProcedureLine } from '../../../src/procedure/lines/groupLines.js'
import { LINE_TABLE } from '../../../src/procedure/lines/lineTable.js'
import { ACTION_NAMES } from '../../../src/spec/index.js'
import type { Step } from '../../../src/v1/spec.js'
import { law } from '../../support/law.js'
import { build, visitArbitrary } from '../sheets.js'

const linesOf = (steps: readonly Step[]): readonly ProcedureLine[] =>
  groupLines(
    steps.map(({ id, do: action, on, at, values }) => ({
      id,
      do: action,
      ...(on !== undefined && { on }),
      ...(at?.instance !== undefined && { instance: at.instance }),
      ...(values?.['onlyIf'] !== undefined && { condition: values['onlyIf'] }),
    })),
  )
const FRONT = '/gearcases/front'
const FILL = `${FRONT}/openings/fill`
const DRAIN = `${FRONT}/openings/drain`
const step = (id: string, action: Step['do'], on?: string, more: Partial<Step> = {}): Step => ({
  id,
  do: action,
  ...(on !== undefined && { on }),
  ...more,
})
const idsOf = (...steps: readonly Step[]) => linesOf(steps).map((line) => line.steps)

describe('laws', () => {
  it('the lines one after the other are the steps again, in the builder’s order and in any other', () => {
    const shuffledVisit = fc.tuple(visitArbitrary, fc.array(fc.nat()), fc.nat())
    law(100, shuffledVisit, ([{ sheet, services }, swaps, drop]) => {
      const { steps } = build(sheet, services)
      const ownSteps = steps.filter((_, place) => place % 7 !== drop % 11)
      for (const place of swaps) {
        const [first, second] = [place % ownSteps.length, (place * 31 + drop) % ownSteps.length]
        const [firstStep, secondStep] = [ownSteps[first], ownSteps[second]] as const
        if (firstStep !== undefined && secondStep !== undefined)
          [ownSteps[first], ownSteps[second]] = [secondStep, firstStep]
      }
      for (const list of [steps, ownSteps])
        expect(linesOf(list).flatMap((line) => line.steps)).toEqual(list.map(({ id }) => id))
    })
  })

  it('no line has two conditions, or two parts except for a vent, a leak check and a nipped plug', () => {
    law(50, visitArbitrary, ({ sheet, services }) => {
      const { steps } = build(sheet, services)
      for (const { kind, steps: ids } of linesOf(steps)) {
        const joinedSteps = ids.map((id) => steps.find((candidate) => candidate.id === id) as Step)
        expect(new Set(joinedSteps.map(({ values }) => values?.['onlyIf'])).size).toBe(1)
        if (kind === 'drain' || kind === 'leaks' || kind === 'turn') continue
        const parts = joinedSteps
          .filter(({ do: action }) => !['top up', 'nip by hand', 'take out'].includes(action))
          .flatMap(({ on, at }) =>
            on?.split('/')[4] ? [`${on.split('/').slice(0, 5).join('/')} ${at?.instance}`] : [],
          )
        expect(new Set(parts).size, ids.join(' ')).toBeLessThanOrEqual(1)
      }
    })
  })
})

describe('groupLines', () => {
  it('has a line for every action', () => {
    const known = new Set(LINE_TABLE.flatMap(({ slots }) => slots.flatMap(({ of }) => of)))
    expect(ACTION_NAMES.filter((action) => !known.has(action))).toEqual([])
  })

  it('joins the drain plug, the fill plug that lets air in, and the draining', () => {
    const drain = [
      step('pan', 'place the pan', DRAIN),
      step('clean', 'clean around', DRAIN),
      step('crack', 'crack loose', DRAIN),
      step('out', 'take out', DRAIN),
      step('vent', 'take out', FILL),
      step('drain', 'let drain', DRAIN),
    ]
    expect(linesOf([...drain, step('look', 'inspect the oil', FRONT)])).toEqual([
      { kind: 'drain', steps: ['pan', 'clean', 'crack', 'out', 'vent', 'drain'], on: DRAIN },
      { kind: 'inspect', steps: ['look'] },
    ])
  })

  it('keeps the order of a writer, and joins less', () => {
    expect(idsOf(step('nip', 'nip by hand', FILL), step('crack', 'crack loose', FILL))).toEqual([
      ['nip'],
      ['crack'],
    ])
  })

  it('joins no steps on two plugs, of two sides or of two conditions', () => {
    const clean = step('clean', 'clean around', FILL)
    expect(idsOf(clean, step('crack', 'crack loose', DRAIN))).toEqual([['clean'], ['crack']])
    const at = { instance: 'left' }
    expect(
      idsOf({ ...clean, at }, step('crack', 'crack loose', FILL, { at: { instance: 'right' } })),
    ).toEqual([['clean'], ['crack']])
    const values = { onlyIf: `${FILL}/appliesTo` }
    expect(idsOf(clean, step('crack', 'crack loose', FILL, { values }))).toEqual([['clean'], ['crack']])
    expect(idsOf(clean, step('crack', 'crack loose', FILL))).toEqual([['clean', 'crack']])
  })

  it('reads the level again with the plug out, and closes the plug in a line of its own', () => {
    const steps = (
      ['clean around', 'crack loose', 'take out', 'check the level', 'top up', 'fit', 'tighten'] as const
    ).map((action) => step(action.replaceAll(' ', '-'), action, FILL))
    expect(linesOf(steps).map(({ kind, steps: ids }) => [kind, ids.length])).toEqual([
      ['level', 5],
      ['close', 2],
    ])
    expect(linesOf(steps.slice(3)).map(({ kind, steps: ids }) => [kind, ids.length])).toEqual([['level', 4]])
  })

  it('is one round of all gearcases for leaks', () => {
    const rear = '/gearcases/rear'
    const steps = [
      step('wipe', 'wipe down', FRONT),
      step('front', 'check for leaks', FRONT),
      step('rear', 'check for leaks', rear),
    ]
    expect(idsOf(...steps)).toEqual([['wipe', 'front', 'rear']])
  })
})
