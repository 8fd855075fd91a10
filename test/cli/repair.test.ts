import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { validateProcedure } from '../../src/v1/procedure.js'
import type { ProcedureDocument, SpecSheet, Step } from '../../src/v1/spec.js'
import { memoryIo } from '../support/memoryIo.js'
import { exampleText } from '../support/writeMistakes.js'

// Ten faulty procedures, for a person who knows the job: `SHOW_REPAIRS=1` prints each repair.

const sheetText = exampleText('tind-4', 'sheet.json')
const sheet: SpecSheet = JSON.parse(sheetText)
const validProcedure: ProcedureDocument = JSON.parse(exampleText('tind-4', 'procedure.json'))

const withoutSteps = (...ids: readonly string[]) => validProcedure.steps.filter(({ id }) => !ids.includes(id))

function moved(id: string, before: string): readonly Step[] {
  const step = validProcedure.steps.find((candidate) => candidate.id === id)
  const otherSteps = withoutSteps(id)
  const place = otherSteps.findIndex((candidate) => candidate.id === before)
  if (step === undefined || place === -1) throw new Error(`no step ${id} or ${before}`)
  return otherSteps.toSpliced(place, 0, step)
}

function noted(steps: readonly Step[], notes: Readonly<Record<string, string>>): readonly Step[] {
  return steps.map((step) => (notes[step.id] === undefined ? step : { ...step, note: notes[step.id] ?? '' }))
}

const FRONT = '/gearcases/front/openings'
const REAR = '/gearcases/rear/openings'

/** A list of steps as it hangs on many workshop walls. */
const WALL_LIST: readonly Step[] = [
  { id: 'a', do: 'raise the machine', on: '/machine/supports/front-frame', note: 'jack behind the door' },
  { id: 'b', do: 'take out', on: `${FRONT}/drain`, note: 'thread is worn: easy' },
  { id: 'c', do: 'let drain', on: `${FRONT}/drain` },
  { id: 'd', do: 'fit', on: `${FRONT}/drain` },
  { id: 'e', do: 'tighten', on: `${FRONT}/drain` },
  { id: 'f', do: 'take out', on: `${FRONT}/fill` },
  { id: 'g', do: 'pour the oil', on: `${FRONT}/fill`, note: 'long funnel' },
  { id: 'h', do: 'fit', on: `${FRONT}/fill` },
  { id: 'i', do: 'take out', on: `${REAR}/drain` },
  { id: 'j', do: 'let drain', on: `${REAR}/drain` },
  { id: 'k', do: 'fit', on: `${REAR}/drain` },
  { id: 'l', do: 'pour the oil', on: `${REAR}/fill` },
  { id: 'm', do: 'lower the machine' },
]

interface Case {
  readonly what: string
  readonly steps: readonly Step[]
  /** The first line that names the mistake. */
  readonly first: RegExp
  readonly stopped: 'done' | 'rebuilt'
  readonly notes?: readonly string[]
}

const CASES: readonly Case[] = [
  { what: 'no chocks', steps: withoutSteps('chock-rear'), first: /No wheel is chocked/, stopped: 'done' },
  { what: 'a jack alone', steps: withoutSteps('stands-front-frame'), first: /jack/, stopped: 'done' },
  {
    what: 'the engine runs, and nothing is recorded',
    ...{ steps: withoutSteps('stop', 'record'), first: /engine/, stopped: 'done' },
  },
  { what: 'no pan', steps: withoutSteps('rear-pan-drain', 'record'), first: /pan/, stopped: 'done' },
  {
    what: 'the rear fill plug is cracked when the oil is out',
    ...{ steps: moved('rear-crack-fill', 'rear-take-out-fill'), first: /fill/, stopped: 'done' },
  },
  {
    what: 'the hose comes out at once, and no leak check',
    ...{
      steps: withoutSteps('front-hose-fill', 'front-leaks', 'front-leaks-2'),
      first: /./,
      stopped: 'done',
    },
  },
  {
    what: 'figures lost, ids doubled',
    steps: validProcedure.steps.map(({ values: _values, ...step }, place) => ({
      ...step,
      id: `step-${place % 50}`,
    })),
    ...{ first: /figures and ids filled in/, stopped: 'done' },
  },
  {
    what: 'every second step is missing',
    steps: noted(
      validProcedure.steps.filter((_step, place) => place % 2 === 1),
      { 'front-crack-fill': 'left-hand side of the frame' },
    ),
    ...{
      first: /manual|protect|level|chock|engine/,
      stopped: 'rebuilt',
      notes: ['left-hand side of the frame'],
    },
  },
  {
    what: 'the list on the wall',
    ...{ steps: WALL_LIST, first: /./, stopped: 'rebuilt' },
    notes: ['jack behind the door', 'thread is worn: easy', 'long funnel'],
  },
  {
    what: 'steps of their own, and the safety left out',
    steps: noted(
      [
        ...withoutSteps(
          'stop',
          'chock-rear',
          'stands-front-frame',
          'front-pan-drain',
          'rear-hose-fill',
          'lower',
        ),
        { id: 'wash', do: 'wipe down', on: '/gearcases/rear' },
      ],
      { wash: 'wash the plate as well', 'rear-crack-fill': 'use the long bar' },
    ),
    ...{
      first: /engine|chock|jack/,
      stopped: 'rebuilt',
      notes: ['wash the plate as well', 'use the long bar'],
    },
  },
]

describe('ten broken procedures', () => {
  it.each(CASES)('$what', async ({ what, steps, first, stopped, notes = [] }) => {
    const invalidProcedure = { ...validProcedure, steps }
    const files = { 'set/procedure.json': JSON.stringify(invalidProcedure), 'set/sheet.json': sheetText }
    const io = memoryIo(files)
    const code = await runCommand(['repair', 'set', '--out', 'good.json'], io)
    const out = io.out.join('\n')
    if (process.env['SHOW_REPAIRS'] !== undefined) console.log(`\n## ${what}\n${out}`)
    expect(code).toBe(0)
    expect(out.split('\n')[1]).toMatch(first)
    expect(out.includes('usual order')).toBe(stopped === 'rebuilt')
    const repairedProcedure: ProcedureDocument = JSON.parse(io.written.get('good.json') ?? '')
    expect(validateProcedure(repairedProcedure, sheet)).toEqual([])
    const keptNotes = repairedProcedure.steps.flatMap(({ note }) => note ?? [])
    expect(keptNotes).toEqual(expect.arrayContaining([...notes]))
  })
})
