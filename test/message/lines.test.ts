import { describe, expect, it } from 'vitest'
import { ACTIONS } from '../../src/procedure/index.js'
import { cardModel } from '../../src/v1/card.js'
import { en } from '../../src/v1/message/en.js'
import type { StepParams } from '../../src/v1/message.js'
import { planExamples } from '../card/planExamples.js'
import { planOf } from '../service/goodMachines/goodMachine.js'
import { GOOD_MACHINES } from '../service/goodMachines/index.js'
import { cardOf } from '../support/planExample.js'

const PLUG: StepParams = { part: 'drain plug', seal: 'crush washer' }
const FULL: StepParams = {
  ...PLUG,
  torque: '9.3 lbf·ft',
  setting: '9.5 lbf·ft',
  wrench: 'quarter-inch wrench',
  socket: '8 mm hex key',
}

function write(actions: readonly (keyof typeof ACTIONS)[], ...params: readonly StepParams[]) {
  const found = en.lines.find(({ actions: lineActions }) => lineActions.join() === actions.join())
  return found?.full(...actions.map((action, place) => ({ do: action, ...(params[place] ?? params[0]) })))
}

describe('the English of lines', () => {
  it('is of actions that the table has, each row once', () => {
    expect(
      en.lines.flatMap(({ actions: lineActions }) =>
        lineActions.filter((action) => !Object.hasOwn(ACTIONS, action)),
      ),
    ).toEqual([])
    expect(new Set(en.lines.map(({ actions: lineActions }) => lineActions.join())).size).toBe(en.lines.length)
  })

  it('joins what is done with one plug, with the socket in it', () => {
    expect(
      write(['clean around', 'crack loose', 'nip by hand'], {
        ...FULL,
        part: 'fill plug',
        beforeDraining: true,
      }),
    ).toBe(
      'Clean around the fill plug, crack it loose with the 8 mm hex key and turn it back in by hand. If it stays tight, leave the oil in.',
    )
    expect(write(['clean around', 'crack loose', 'take out'], { part: 'cap', drive: 'hand' })).toBe(
      'Clean around the cap, unscrew it and take it out.',
    )
  })

  it('fits a plug with its seal, figure and setting', () => {
    expect(write(['fit new seal', 'fit', 'tighten'], FULL)).toBe(
      'Fit the drain plug with a new crush washer and turn it in by hand until it is finger tight. Tighten it to 9.3 lbf·ft: set 9.5 lbf·ft on the quarter-inch wrench.',
    )
    expect(write(['fit', 'tighten'], { ...PLUG, turns: '2–3' })).toBe(
      'Turn the drain plug in by hand until it is finger tight. Then tighten it 2–3 turns more.',
    )
    expect(write(['fit', 'tighten'], { ...PLUG, gap: 'cannot tell' })).toContain(
      'The torque is not known here: see the manual.',
    )
    expect(write(['fit', 'tighten'], { ...FULL, hasStages: true })).toContain(
      'set 9.5 lbf·ft on the quarter-inch wrench for the last stage.',
    )
  })

  it('says that the fill plug lets air in only of another plug than the drain', () => {
    const fill = { part: 'fill plug', isOther: true } as const
    expect(write(['take out', 'let drain'], fill, { wait: '10 min' })).toBe(
      'Take out the fill plug to let air in. Let the oil drain until it only drips, at least 10 min.',
    )
    expect(write(['take out', 'let drain'], PLUG)).toBeUndefined()
  })

  it('leaves sealant, covers, grease and a refill with its additive to the texts of their steps', () => {
    for (const params of [
      { ...PLUG, seal: 'thread sealant' },
      { ...PLUG, cover: { pattern: 'crosswise' } },
    ] as const)
      expect(write(['take off old seal', 'wipe the seal face'], params)).toBeUndefined()
    expect(
      write(['measure the oil', 'pour the oil', 'wait for the hose'], { volume: '1 L', fluid: 'grease' }),
    ).toBeUndefined()
    expect(
      write(['measure the oil', 'pour the oil', 'wait for the hose'], {
        volume: '1 L',
        totalVolume: '1.1 L',
      }),
    ).toBeUndefined()
  })
})

const cards = [
  ...planExamples().map(([name, plan]) => [name, cardOf(plan)] as const),
  ...Object.entries(GOOD_MACHINES).map(([name, machine]) => [name, cardModel(planOf(machine), en)] as const),
]
const linesOf = ([name, card]: (typeof cards)[number]) =>
  card.sections
    .flatMap(({ parts }) => parts)
    .flatMap((part) => (part.kind === 'steps' ? part.groups.flatMap(({ steps }) => steps) : []))
    .map((step) => ({ name, steps: step.steps, text: step.full.map(({ text }) => text).join('') }))

describe('the lines of every example and good machine', () => {
  const tables = cards.map((card) => [card[0], linesOf(card)] as const)
  it.each(tables)(
    '%s: at most a third of its steps, in sentences that can be read in one breath',
    (_name, lines) => {
      const steps = lines.flatMap((line) => line.steps)
      expect(new Set(steps).size).toBe(steps.length)
      expect(lines.length).toBeLessThanOrEqual(steps.length * 0.4)
      for (const { text } of lines) {
        expect(text).not.toMatch(/undefined|null|\[object|\.\.|,,| {2}|[\ue000-\uf8ff]/)
        for (const sentence of text.split(/(?<=[.!]) (?=\p{Lu})/u)) {
          expect(sentence, text).toMatch(/^\p{Lu}.*\.$/u)
          expect(sentence.split(' ').length, sentence).toBeLessThanOrEqual(40)
        }
      }
    },
  )

  it('the first example has at most 24, the short job about half of its steps at most', () => {
    const counts = Object.fromEntries(
      tables.map(([name, lines]) => [name, [lines.flatMap((line) => line.steps).length, lines.length]]),
    )
    console.info(
      Object.entries(counts)
        .map(([name, [steps, lines]]) => `${name}: ${steps} steps, ${lines} lines`)
        .join('\n'),
    )
    expect(counts['tind-4/log']?.[1]).toBeLessThanOrEqual(24)
    expect(counts['kvist-2/log']?.[1]).toBeLessThanOrEqual(18)
  })
})
