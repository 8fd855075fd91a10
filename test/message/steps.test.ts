import { describe, expect, it } from 'vitest'
import { en } from '../../src/message/en/index.js'
import type { StepParams } from '../../src/v1/message.js'
import type { Action } from '../../src/v1/spec.js'

/**
 * Rules for procedures after ASD-STE100, section 5, as summarised second hand: at most 20 words a sentence, one
 * instruction a sentence, imperative, a leading condition with a comma; articles kept, no -ing forms but technical names.
 */
const VERBS =
  'Read Put Park Run Stop Set Take Chock Raise Make Lower Keep Turn Clean Crack Let Allow Extract Inspect Remove Record Look Wipe Fit Apply Tighten Wait Pour Measure Add Check Write Do Follow Find Slacken Break Rest Screw Go Put Replace Top Leave Push Carry Send Secure Roll Release Drain Flush Fill Tag Move Press Give Scrape Unscrew'.split(
    ' ',
  )
const CONDITIONS = /^(If|Where|When|Before|After) /
/** Sentences that give information and no instruction. */
const INFORMATION =
  /^(The manual gives|The torque|The quantity|The oil is right|The level is right|The order|A leak needs|With its additive)/
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

/** Every action with every kind of params: nothing known, all known, by torque, by turns, and both gaps. */
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
  ['cover in stages', { ...PARTS, torque: '10\u00a0N·m, then 25\u00a0N·m', staged: true, cover: COVER }],
  ['an additive after the oil', { ...VALUES, additiveOrder: 'oil first', together: '1.4\u00a0L' }],
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
const words = (sentence: string) => sentence.split(/ +/).filter((word) => /[\p{L}\p{N}]/u.test(word))

describe('the English steps', () => {
  it('cover every action', () => {
    // Counted by hand in the list of actions of the procedure document.
    expect(ACTIONS).toHaveLength(57)
  })

  it.each(SENTENCES)('%s (%s): %s', (_action, _name, sentence) => {
    expect(sentence).toMatch(/^\p{Lu}.*\.$/u)
    expect(words(sentence).length).toBeLessThanOrEqual(20)
    const main = CONDITIONS.test(sentence) ? sentence.slice(sentence.indexOf(', ') + 2) : sentence
    if (CONDITIONS.test(sentence)) expect(sentence).toContain(', ')
    const [first = ''] = words(main)
    const isInstruction = VERBS.some(
      (verb) => verb.toLowerCase() === first.toLowerCase().replace(/[:,]$/, ''),
    )
    expect(isInstruction || INFORMATION.test(main)).toBe(true)
    const later = words(main).slice(1)
    for (const [place, word] of later.entries()) {
      const joins = ['and', 'then', 'or'].includes(later[place - 1] ?? '')
      if (joins)
        expect(VERBS.map((verb) => verb.toLowerCase())).not.toContain(word.toLowerCase().replace(/[.,]$/, ''))
    }
    for (const word of words(sentence)) {
      const bare = word.replace(/[^\p{L}-]/gu, '')
      if (bare.endsWith('ing')) expect(bare).toMatch(ING_NAMES)
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
        expect(sentence).toContain('the fill plug')
      }
    }
  })

  it('tell the torque, the setting, the turns and the gap apart', () => {
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
