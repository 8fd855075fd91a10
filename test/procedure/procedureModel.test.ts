import fc from 'fast-check'
import { expect, test } from 'vitest'
import { validateProcedure } from '../../src/v1/procedure.js'
import type { Action, ProcedureDocument, SpecSheet, Step } from '../../src/v1/spec.js'
import { command, modelLaw } from '../support/law.js'
import { build, makeCase, makeSheet } from './sheets.js'
import { simulateProcedure } from './simulateProcedure.js'

// Steps in any order, sensible or not: where each plug is, and which mistakes each step makes, against a model of two
// plugs and a pan that knows nothing of the table of actions. A missing step is reported once, and then counts as done.

const BOX = '/gearcases/box'
const sheet: SpecSheet = makeSheet({ box: makeCase('gearbox', { out: 'drain plug' }) })
const built = build(sheet, ['change'])

type Plug = 'fill' | 'drain'

interface Model {
  readonly position: Record<Plug, 'tight' | 'cracked' | 'nipped' | 'out' | 'in'>
  fillEverCracked: boolean
  /** Then the order of the plugs no longer matters. */
  oilOut: boolean
  pan: boolean
}

interface Real {
  procedure: ProcedureDocument
}

/** What the model knows of; a step may make other mistakes too. */
const WATCHED = [
  'fill-not-cracked',
  'fill-plug-loose',
  'plug-not-cracked',
  'no-pan',
  'drain-not-out',
  'fill-not-vented',
]

/** Adds a step, and compares its mistakes and the positions after it. */
function addStep(model: Model, real: Real, action: Action, on: string, mistakes: readonly string[]): void {
  const step: Step = { id: `step-${real.procedure.steps.length}`, do: action, on }
  real.procedure = { ...real.procedure, steps: [...real.procedure.steps, step] }
  const at = `/steps/${real.procedure.steps.length - 1}`
  const found = validateProcedure(real.procedure, sheet)
    .filter(({ path }) => path === at || path.startsWith(`${at}/`))
    .map(({ code }) => code.replace('procedure/', ''))
  expect(found.filter((code) => WATCHED.includes(code)).sort()).toEqual([...mistakes].sort())
  const { openings } = simulateProcedure(real.procedure, sheet).end
  for (const plug of ['fill', 'drain'] as const) {
    const [, state] = Object.entries(openings).find(([key]) => key.includes(`/openings/${plug}`)) ?? []
    expect(state?.position, `${plug} after ${action} ${on}`).toBe(model.position[plug])
  }
}

const placeOf = (plug: Plug) => `${BOX}/openings/${plug}`

/** The steps that a loosened or removed drain needs, each reported if it is missing. */
function needPan(model: Model): readonly string[] {
  if (model.pan) return []
  model.pan = true
  return ['no-pan']
}

/** The fill plug is loosened before the drain plug, and turned in again by hand. */
function needFillFirst(model: Model): readonly string[] {
  if (!model.fillEverCracked) {
    model.fillEverCracked = true
    // A forgotten fill plug is one mistake, not two.
    if (model.position.fill === 'tight') model.position.fill = 'nipped'
    return ['fill-not-cracked']
  }
  if (model.position.fill !== 'cracked') return []
  model.position.fill = 'nipped'
  return ['fill-plug-loose']
}

function needCracked(model: Model, plug: Plug): readonly string[] {
  if (model.position[plug] !== 'tight') return []
  model.position[plug] = 'cracked'
  if (plug === 'fill') model.fillEverCracked = true
  return ['plug-not-cracked']
}

function loosen(plug: Plug) {
  return command<Model, Real>(`crack ${plug}`, (model, real) => {
    const mistakes = plug === 'fill' ? [] : [...(model.oilOut ? [] : needFillFirst(model)), ...needPan(model)]
    if (plug === 'fill') model.fillEverCracked = true
    model.position[plug] = 'cracked'
    addStep(model, real, 'crack loose', placeOf(plug), mistakes)
  })
}

function takeOut(plug: Plug) {
  return command<Model, Real>(`take out ${plug}`, (model, real) => {
    const mistakes = [...needCracked(model, plug), ...(plug === 'drain' ? needPan(model) : [])]
    model.position[plug] = 'out'
    addStep(model, real, 'take out', placeOf(plug), mistakes)
  })
}

function turn(plug: Plug, action: 'nip by hand' | 'fit' | 'tighten', position: Model['position'][Plug]) {
  return command<Model, Real>(`${action} ${plug}`, (model, real) => {
    model.position[plug] = position
    addStep(model, real, action, placeOf(plug), [])
  })
}

const placePan = command<Model, Real>('place the pan', (model, real) => {
  model.pan = true
  addStep(model, real, 'place the pan', placeOf('drain'), [])
})

const drain = command<Model, Real>('let drain', (model, real) => {
  const mistakes: string[] = []
  for (const [plug, mistake] of [
    ['drain', 'drain-not-out'],
    ['fill', 'fill-not-vented'],
  ] as const) {
    if (model.position[plug] === 'out' || (plug === 'fill' && model.oilOut)) continue
    mistakes.push(mistake)
    model.position[plug] = 'out'
  }
  model.oilOut = true
  addStep(model, real, 'let drain', placeOf('drain'), mistakes)
})

test('any steps: plugs are where the model says, and each step has exactly the mistakes that it makes', () => {
  const plug = fc.constantFrom<Plug>('fill', 'drain')
  modelLaw<Model, Real>(
    60,
    [
      plug.map(loosen),
      plug.map(takeOut),
      plug.map((one) => turn(one, 'nip by hand', 'nipped')),
      plug.map((one) => turn(one, 'fit', 'in')),
      plug.map((one) => turn(one, 'tighten', 'tight')),
      fc.constant(placePan),
      fc.constant(drain),
    ],
    () => ({
      model: {
        position: { fill: 'tight', drain: 'tight' },
        fillEverCracked: false,
        oilOut: false,
        pan: false,
      },
      real: { procedure: { ...built, steps: [] } },
    }),
  )
})
