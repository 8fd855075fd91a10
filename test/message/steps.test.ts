import { describe, expect, it } from 'vitest'
import { en } from '../../src/message/en/index.js'
import type { StepParams } from '../../src/v1/message.js'
import type { Action } from '../../src/v1/spec.js'

/**
 * Rules for procedures from ASD-STE100, section 5, from a secondary source: at most 20 words and one instruction per
 * sentence, imperative, a leading condition with a comma, articles kept, no -ing forms except technical names.
 */
const VERBS =
  'Read Put Park Run Stop Set Take Chock Raise Make Lower Keep Turn Clean Crack Let Allow Extract Inspect Remove Record Look Wipe Fit Apply Tighten Wait Pour Measure Add Check Write Do Follow Find Slacken Break Rest Screw Go Put Replace Top Leave Push Carry Send Secure Roll Release Drain Flush Fill Hold Tag Move Press Give Scrape Unscrew Drive'.split(
    ' ',
  )
const CONDITIONS = /^(If|Where|When|Before|After) /
/** Sentences that give information, not an instruction. */
const INFORMATION =
  /^(The manual gives|The torque|The quantity|The oil must|The level must|On a glass|The order|A leak needs|Together with the additive)/
const ING_NAMES = /^(opening|O-ring|ring|parking|housing|jacking|nothing)$/i

const PARTS: StepParams = { part: 'lower drain plug', gearcase: 'front differential', instance: 'left' }
const VALUES: StepParams = {
  place: 'right side of the housing',
  sealant: 'station sealant',
  oil: '80W-90\u00a0GL-5',
  volume: '450\u00a0mL',
  wrench: 'half-inch click wrench',
  setting: '22.5\u00a0N·m',
  wait: '6\u00a0min',
  temperature: '30–50\u00a0°C',
  additive: 'friction additive',
}

const BY_HOLE = {
  method: 'to level hole',
  attitude: 'level on its wheels',
  engine: 'stopped',
  afterFilling: true,
} as const
const BY_STICK = {
  method: 'dipstick',
  attitude: 'level on stands',
  engine: 'running',
  afterFilling: false,
} as const
const LEVEL = { below: '0–5\u00a0mm', levelTemperature: '40–50\u00a0°C', minutes: '10\u00a0min' }
const COVER = { bolts: 10, pattern: 'crosswise' } as const

const SPIN_ON = { kind: 'spin-on filter', screwed: true, renewed: true } as const

/** Every action with every kind of params: none known, all known, by torque, by turns, and both gaps. */
const CASES: readonly (readonly [string, StepParams])[] = [
  ['nothing known', {}],
  ['grease', { ...PARTS, ...VALUES, fluid: 'grease', cover: COVER }],
  ['clips', { ...PARTS, drive: 'clip', gap: 'not stated', how: 'bucket, articulation' }],
  ['by hand', { ...PARTS, drive: 'hand', gap: 'not stated' }],
  ['only the part', PARTS],
  [
    'all, by torque',
    { ...PARTS, ...VALUES, torque: '20–25\u00a0N·m', wheelMark: 'mark down', seal: 'crush washer' },
  ],
  ['torque without wrench', { ...PARTS, torque: '20–25\u00a0N·m', wheelMark: 'mark level', seal: 'o-ring' }],
  ['by turns', { ...PARTS, turns: '2–3', wheelMark: 'mark up', seal: 'liquid gasket' }],
  ['not stated', { ...PARTS, gap: 'not stated', seal: 'not stated' }],
  ['a level hole', { ...PARTS, ...LEVEL, level: { ...BY_HOLE, afterFilling: false } }],
  ['a level hole after filling', { ...PARTS, ...LEVEL, level: BY_HOLE, stopAt: '1045\u00a0mL' }],
  ['a dipstick, screwed in', { ...PARTS, level: { ...BY_STICK, reading: 'screwed in' } }],
  ['a dipstick, resting', { ...PARTS, level: { ...BY_STICK, reading: 'resting' } }],
  ['a sight glass', { ...PARTS, level: { ...BY_STICK, method: 'sight glass' } }],
  ['by quantity', { ...PARTS, level: { ...BY_STICK, method: 'by quantity' } }],
  ['upright cover', { ...PARTS, torque: '25\u00a0N·m', cover: { ...COVER, position: 'upright' } }],
  ['bottom pan', { ...PARTS, bead: '3\u00a0mm', cover: { ...COVER, position: 'bottom' } }],
  ['cover with bearings', { ...PARTS, turns: '2', cover: { ...COVER, carriesBearings: true } }],
  ['cover in stages', { ...PARTS, torque: '10\u00a0N·m, then 25\u00a0N·m', hasStages: true, cover: COVER }],
  ['an additive after the oil', { ...VALUES, additiveOrder: 'oil first', totalVolume: '1.4\u00a0L' }],
  ['a spin-on filter', { ...PARTS, turns: '0.75', filter: SPIN_ON }],
  ['a spin-on filter by torque', { ...PARTS, torque: '25\u00a0N·m', filter: SPIN_ON }],
  ['a strainer', { ...PARTS, filter: { kind: 'strainer', screwed: false, renewed: false } }],
  ['a screwed strainer', { ...PARTS, filter: { kind: 'strainer', screwed: true, renewed: false } }],
  ['a cartridge', { ...PARTS, filter: { kind: 'cartridge filter', screwed: false, renewed: true } }],
  ['cannot tell', { ...PARTS, gap: 'cannot tell', seal: 'none' }],
]

const ACTIONS = Object.keys(en.steps) as Action[]
const SENTENCES = ACTIONS.flatMap((action) =>
  CASES.flatMap(([name, params]) =>
    en.steps[action]
      .full(params)
      .split(/(?<=[.!])\s+/)
      .map((sentence) => [action, name, sentence] as const),
  ),
)
const isInstruction = (text: string) =>
  VERBS.some((verb) => verb.toLowerCase() === text.split(/[ :,]/)[0]?.toLowerCase().replace(/\.$/, ''))
const words = (sentence: string) => sentence.split(/ +/).filter((word) => /[\p{L}\p{N}]/u.test(word))

describe('the English steps', () => {
  it('cover every action', () => {
    // Counted by hand in the list of actions of the procedure document.
    expect(ACTIONS).toHaveLength(60)
  })

  it.each(SENTENCES)('%s (%s): %s', (_action, _name, sentence) => {
    expect(sentence).toMatch(/^\p{Lu}.*\.$/u)
    expect(words(sentence).length).toBeLessThanOrEqual(20)
    // A condition ends at the first comma before a verb, since it may contain a list.
    const parts = sentence.split(', ')
    const end = parts.findIndex((part, place) => place > 0 && isInstruction(part))
    if (CONDITIONS.test(sentence)) expect(end).toBeGreaterThan(0)
    const main = CONDITIONS.test(sentence) ? parts.slice(end).join(', ') : sentence
    expect(isInstruction(main) || INFORMATION.test(main)).toBe(true)
    const later = words(main).slice(1)
    for (const [place, word] of later.entries()) {
      const isJoin = ['and', 'then', 'or'].includes(later[place - 1] ?? '')
      if (isJoin)
        expect(VERBS.map((verb) => verb.toLowerCase())).not.toContain(word.toLowerCase().replace(/[.,]$/, ''))
    }
    for (const word of words(sentence)) {
      const wordOnly = word.replace(/[^\p{L}-]/gu, '')
      if (wordOnly.endsWith('ing')) expect(wordOnly).toMatch(ING_NAMES)
    }
  })

  it.each(ACTIONS)('%s: short forms are short, and all forms name what they are given', (action) => {
    for (const [, params] of CASES) {
      const { full, short, show } = en.steps[action]
      expect(short(params).length).toBeGreaterThan(3)
      expect(words(short(params)).length).toBeLessThanOrEqual(20)
      expect(show(params)).toMatch(/\.$/)
      for (const text of [full(params), short(params), show(params)])
        expect(text).not.toMatch(/undefined|null|\[object/)
    }
  })

  it('keep an article before the part where they name one', () => {
    for (const action of ACTIONS) {
      const sentence = en.steps[action].full({ part: 'fill plug' })
      if (/fill plug/.test(sentence) && action !== 'raise the machine' && action !== 'set on stands') {
        expect(sentence).toMatch(/\b(the|a new) fill plug/)
      }
    }
  })

  it('keep torque, setting, turns and gap distinct', () => {
    const { full } = en.steps.tighten
    expect(
      full({ part: 'drain plug', torque: '20–25 N·m', setting: '22.5 N·m', wrench: 'small wrench' }),
    ).toBe('Set the small wrench to 22.5 N·m. Tighten the drain plug to 20–25 N·m.')
    expect(full({ part: 'drain plug', turns: '2–3' })).toBe(
      'Tighten the drain plug 2–3 turns past finger tight.',
    )
    expect(full({ part: 'drain plug', gap: 'not stated' })).toContain('not stated here: see the manual')
    expect(full({ part: 'drain plug', gap: 'cannot tell' })).toContain('not known here: see the manual')
  })
})

describe('what can hurt or cannot be done as printed', () => {
  const write = (action: Action, params: StepParams = {}) => en.steps[action].full(params)

  it('a machine on stands is raised off them, and the space under it is clear, before it is lowered', () => {
    expect(write('lower the machine')).toBe(
      'Make sure that no person or tool is under the machine. Raise it off the stands. Take the stands out. Lower it slowly to the ground.',
    )
  })

  it('milky oil that is already in the pan is not drained cold: its case is flushed, and the flush is', () => {
    const text = write('inspect the oil')
    expect(text).not.toContain('let the water settle')
    expect(text).toContain('If it is milky, stop: find where the water came in.')
    expect(text).toContain(
      "Flush a case that had milky oil before you refill it. Fill it with the manual's oil. Run the machine briefly. Let it cool. Drain the oil.",
    )
  })

  it('implements are down and the brake is on before the engine stops, and nothing turns after it', () => {
    expect(write('stop the engine')).toBe(
      'Lower any implement to the ground. Set the parking brake. Stop the engine. Take out the key. Wait until nothing turns.',
    )
  })

  it('a taper plug never seats: its turns count from finger tight', () => {
    expect(write('fit', { part: 'drain plug' })).toBe(
      'Turn the drain plug in by hand until it is finger tight.',
    )
  })

  it('old sealant is on both faces, and new sealant holds on dry faces only', () => {
    const params: StepParams = { part: 'rear cover', cover: COVER, seal: 'liquid gasket' }
    expect(write('take off old seal', params)).toBe(
      'Scrape the old sealant off both faces. Let none of it fall into the case.',
    )
    expect(write('take off old seal', { ...params, seal: 'gasket' })).toBe(
      'Remove the old gasket. Leave none of it on either face.',
    )
    expect(write('wipe the seal face', params)).toBe('Wipe both seal faces at the rear cover clean and dry.')
  })

  it('the machine is level and the case is drained, not the oil', () => {
    expect(write('top up', { level: BY_HOLE, stopAt: '1 L' })).toContain(
      'make sure that the machine is level and the case was fully drained.',
    )
  })

  it('the magnet to inspect has a place', () => {
    expect(write('inspect the magnet', { part: 'drain plug' })).toContain(
      'Inspect the magnet of the drain plug. If it has chips, flakes or pieces, stop:',
    )
  })

  it('a new filter has the name of its kind', () => {
    expect(write('fit filter', { part: 'hydraulic filter', filter: SPIN_ON })).toContain(
      'Take a new hydraulic filter.',
    )
  })

  it('a settling time that is not stated is in the manual', () => {
    expect(write('let settle')).toBe('Let the oil settle as long as the manual says.')
  })
})
