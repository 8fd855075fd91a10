import { describe, expect, it } from 'vitest'
import { cardModel, renderText } from '../../src/v1/card.js'
import { en } from '../../src/v1/message/en.js'
import { kitContents } from '../../src/v1/service.js'
import { planOf } from './goodMachines/goodMachine.js'
import { GOOD_MACHINES } from './goodMachines/index.js'

/** One machine's card in one line. */
function cardOf(name: string): string {
  const machine = GOOD_MACHINES[name]
  if (machine === undefined) throw new Error(name)
  return renderText(cardModel(planOf(machine), en)).replaceAll(/\s+/g, ' ')
}

const textBetween = (name: string, from: string, to: string): string => {
  const text = cardOf(name)
  return text.slice(text.indexOf(from), text.indexOf(to))
}

const stepsOf = (name: string) => textBetween(name, 'Order of work', 'Waiting times')
const toolsOf = (name: string) => textBetween(name, 'Tools, parts', 'Order of work')

describe('what a technician reads on the card of', () => {
  it('a tractor axle: the level plug is cracked before the oil is out, and the fill plug after the run only if needed', () => {
    const steps = stepsOf('tractor axle with two drains')
    expect(steps.indexOf('Clean around the oil check plug and crack it loose')).toBeLessThan(
      steps.indexOf('around the left drain plug'),
    )
    const afterRun = steps.slice(steps.indexOf('Run the machine for a few minutes'))
    const onFill = afterRun.match(
      /[^\]]*\b(Clean|Crack|Take out|Wipe|Inspect|Turn|Tighten)\b[^\]]*fill plug/g,
    )
    expect(onFill).toHaveLength(2)
    for (const step of onFill ?? []) expect(step).toContain('Only if the level is low')
  })

  it('a tracked dumper: it has tracks, it moves and is not turned, and each side is looked at', () => {
    const steps = stepsOf('tracked dumper')
    expect(steps).toContain('each wheel or track')
    expect(steps).toContain(
      'Move the machine slowly. Stop when the mark for the drain plug (left) of the final drive is at the bottom.',
    )
    expect(steps).not.toContain('Turn the wheel')
    expect(steps).toContain('that you opened for oil: left; right.')
  })

  it('a bevel box with grease: nothing is poured, dripped or heated in a funnel', () => {
    const steps = stepsOf('bevel box with semi-fluid grease')
    expect(steps).toContain('Let the grease run out. Scrape out the rest.')
    expect(steps).toContain('Measure out 320 cm³ of semi-fluid gear grease NLGI 00, EP.')
    expect(steps).toContain('Press the 320 cm³ of grease in slowly through the hole of the filler screw.')
    expect(steps).not.toMatch(/Pour|only drips|drips from the hose|clean jug|leave the oil in/)
    expect(toolsOf('bevel box with semi-fluid grease')).not.toContain('Funnel')
  })

  it('a splash plate: clips are pushed in, with a trim tool and no torque', () => {
    const steps = stepsOf('splash plate with clips')
    expect(steps).toContain(
      'Put the splash plate back with all its fasteners. Push each clip in until it locks.',
    )
    expect(toolsOf('splash plate with clips')).toContain('Trim tool for clips · splash plate; lower trim')
  })

  it('a gearbox without a drain: the pump is on the list, a hand cap needs no wrench and is no tool', () => {
    expect(toolsOf('suction only')).toContain('A suction pump')
    expect(toolsOf('suction only')).not.toContain('By hand')
    expect(stepsOf('suction only')).toContain('Turn the fill plug with dipstick in and tighten it by hand.')
  })

  it('a loader: what was secured is released before the run and at the end, and not for a roll to the mark', () => {
    const steps = stepsOf('loader axle with wheel ends')
    const releaseSteps = steps.match(/Release what you secured for the work: bucket, articulation\./g)
    expect(releaseSteps).toHaveLength(2)
    expect(steps.indexOf('Release what you secured')).toBeGreaterThan(
      steps.lastIndexOf('Move the machine slowly'),
    )
    expect(steps).toContain('The lock bar stays in: drive straight.')
    const tools = toolsOf('loader axle with wheel ends')
    expect(tools).toContain('Measure with 1 litre jug in 5 pours.')
  })

  it('taper plugs: the plug and its seat are wiped, since there is no seal face', () => {
    expect(stepsOf('cart transaxle')).not.toContain('seal face at')
    expect(stepsOf('cart transaxle')).toContain('Wipe the drain plug and its seat clean.')
    expect(cardOf('cart transaxle')).not.toContain('first click')
  })

  it('a jack and stands whose places begin with a word such as under', () => {
    const steps = stepsOf('cart transaxle')
    expect(steps).toContain('with the jack (centre of the rear axle tube)')
    expect(steps).not.toContain('at under')
  })

  it('a sump with filters: one off after the other while the drain is open, looked into, and what to buy and to note', () => {
    const name = 'transmission-hydraulic sump with filter'
    const steps = stepsOf(name)
    const order = [
      'Let the oil drain until it only drips.',
      'Put a pan under the hydraulic filter. Leave one under the open drain.',
      'Screw the hydraulic filter off slowly.',
      'Inspect the hydraulic filter for metal. If it contains chips, flakes or pieces, stop',
      'Wipe its ring with new oil.',
      'Tighten the hydraulic filter 0.75–1 turns after the ring touches.',
      'Take out the suction strainer.',
      'Clean the suction strainer with solvent.',
      'Put the suction strainer back in.',
      'Tighten the bolts of the strainer cover',
      'Fit the drain plug with a new O-ring',
      'Measure 13.5 L of Tverrelv UTF 3 in a clean jug and pour it in',
      'Run the machine for a few minutes.',
      'Check each plug and joint',
    ]
    const places = order.map((text) => steps.indexOf(text))
    expect(places).not.toContain(-1)
    expect(places).toEqual(places.toSorted((place, other) => place - other))
    expect(toolsOf(name)).toContain('1 × spin-on filter, TL-8810')
    expect(toolsOf(name)).toContain('Solvent, and a tray to wash the strainer in.')
    const machine = GOOD_MACHINES[name]
    if (machine === undefined) throw new Error(name)
    const planned = planOf(machine)
    expect(renderText(cardModel(planned, en))).toMatch(/Found inside: suction strainer: .*clean.*pieces/)
    expect(kitContents(planned.value).buy.filters).toEqual([
      { name: 'TL-8810 spin-on filter', kind: 'spin-on filter', part: 'TL-8810', count: 1 },
    ])
  })
})
