import { describe, expect, test } from 'vitest'
import { procedureTexts } from '../../src/message/en/procedure.js'
import { stepTexts } from '../../src/message/en/steps.js'
import { HAZARDS } from '../../src/procedure/actionRow.js'
import { findCautions } from '../../src/procedure/findCautions.js'
import { NEEDS } from '../../src/procedure/needs.js'
import { ACTIONS, buildProcedure } from '../../src/v1/procedure.js'
import type { Step } from '../../src/v1/spec.js'
import { MINOR_INJURIES, Z535_WORDS } from '../published/signalWords.js'
import { build, makeCase, makeOpening, makeSheet, SEALANT, TURNS, varietySheet } from './sheets.js'

const rows = Object.entries(ACTIONS)

describe('the table', () => {
  test('has every action that has a text, and no other', () => {
    expect(Object.keys(ACTIONS).sort()).toEqual(Object.keys(stepTexts).sort())
  })

  test.each(rows)(
    '%s: its needs have texts and cures, its hazards have texts, its time is stated',
    (_action, row) => {
      for (const name of row.needs) {
        expect(Object.keys(procedureTexts)).toContain(`procedure/${name}`)
        expect(Object.keys(NEEDS)).toContain(name)
      }
      for (const hazard of row.hazards) expect(Object.keys(procedureTexts)).toContain(hazard.code)
      expect(row.minutes === 'planned' || (Number.isInteger(row.minutes) && row.minutes > 0)).toBe(true)
      expect(row.changes.length).toBeGreaterThan(0)
      expect(row.on.length).toBeGreaterThan(0)
    },
  )

  test('short words make ids, and no two actions have the same', () => {
    const words = rows.map(([, row]) => row.short)
    for (const word of words) expect(word).toMatch(/^[a-z][a-z-]*$/)
    expect(new Set(words).size).toBe(words.length)
  })

  // The worst that each hazard can do, judged here: a machine that falls or rolls, exhaust in a closed room.
  const WORST: Readonly<Record<keyof typeof HAZARDS, string>> = {
    mayMove: 'could kill or injure seriously',
    exhaust: 'could kill or injure seriously',
    lifting: 'could kill or injure seriously',
    parkingBrake: 'could kill or injure seriously',
    stands: 'could kill or injure seriously',
    ramps: 'could kill or injure seriously',
    rolling: 'could kill or injure seriously',
    hotOil: 'could injure slightly or moderately',
    oilOnSkin: 'could injure slightly or moderately',
    wheelTurns: 'could injure slightly or moderately',
    sharpScraper: 'could injure slightly or moderately',
    mustNotRun: 'no injury',
    chips: 'no injury',
    usedOil: 'no injury',
    weepingWasher: 'no injury',
    weepingTaper: 'no injury',
  }

  test.each(Z535_WORDS)('$word is of what $worst', ({ word, worst }) => {
    const named = Object.entries(HAZARDS).flatMap(([name, { signal }]) => (signal === word ? [name] : []))
    expect(named).toEqual(
      Object.keys(HAZARDS).filter((name) => WORST[name as keyof typeof HAZARDS] === worst),
    )
    if (word === 'danger') expect(named).toEqual([])
  })

  test.each(MINOR_INJURIES)('$injury ask for CAUTION: $hazard', ({ hazard }) => {
    expect(HAZARDS[hazard].signal).toBe('caution')
  })

  test('danger is used of nothing, warning of what could kill, notice of damage alone', () => {
    const signals = new Map(
      rows.flatMap(([, row]) => row.hazards.map((hazard) => [hazard.code, hazard.signal] as const)),
    )
    const of = (word: string) =>
      [...signals]
        .filter(([, signal]) => signal === word)
        .map(([code]) => code)
        .sort()
    expect(of('danger')).toEqual([])
    expect(of('warning')).toEqual([
      'procedure/caution-exhaust',
      'procedure/caution-lifting',
      'procedure/caution-machine-may-move',
      'procedure/caution-parking-brake',
      'procedure/caution-ramps',
      'procedure/caution-rolling',
      'procedure/caution-stands',
    ])
    expect(of('notice')).toEqual([
      'procedure/caution-chips',
      'procedure/caution-must-not-run',
      'procedure/caution-used-oil',
      'procedure/caution-weeping-taper',
      'procedure/caution-weeping-washer',
    ])
  })
})

describe('texts', () => {
  const say = {
    number: String,
    quantity: JSON.stringify,
    date: String,
    list: (items: readonly string[]) => items.join(', '),
    count: (value: number, candidate: string, other: string) => `${value} ${value === 1 ? candidate : other}`,
    reason: JSON.stringify,
  }
  const fullWords = {
    step: 'front-fit-drain',
    part: 'drain plug',
    gearcase: 'front differential',
    instance: 'left',
    action: 'fit',
    required: ['opening', 'machine'],
    known: ['left', 'right'],
    on: '/nowhere',
    name: 'tightening',
    pointer: '/a',
    found: '/b',
    named: 'one',
    namedRevision: '1',
    sheet: 'two',
    revision: '2',
    service: 'change',
    missing: ['serial'],
    signal: 'warning',
    shield: 'front skid plate',
    because: 'wheel must turn',
  }
  test.each(Object.entries(procedureTexts))('%s', (_code, text) => {
    const write = text as (params: unknown, say: unknown) => string
    const sentence = write(fullWords, say)
    expect(sentence).toMatch(/^[A-Z0-9“].*[.”]$/)
    expect(sentence).not.toMatch(/undefined|NaN|\[object/)
    const shortText = write(
      { ...fullWords, part: undefined, gearcase: undefined, instance: undefined, step: undefined, known: [] },
      say,
    )
    expect(shortText).not.toMatch(/NaN|\[object/)
    expect(write({ ...fullWords, part: undefined }, say)).not.toMatch(/NaN|\[object/)
    expect(write({ ...fullWords, gearcase: undefined, instance: undefined }, say)).not.toMatch(/NaN|\[object/)
  })
})

describe('findCautions', () => {
  const taper = makeSheet({
    box: {
      ...makeCase('box', {}),
      openings: {
        fill: makeOpening('fill plug', [{ role: 'fill' }], { seals: [SEALANT], tightening: TURNS }),
        drain: makeOpening('drain plug', [{ role: 'drain' }]),
      },
    },
  })
  const codesOf = (step: Step) => findCautions(taper, step).map((caution) => caution.code)

  test('more torque never helps a plug with a washer; a taper plug has its turns', () => {
    expect(codesOf({ id: 'a', do: 'tighten', on: '/gearcases/box/openings/drain' })).toEqual([
      'procedure/caution-weeping-washer',
    ])
    expect(codesOf({ id: 'a', do: 'tighten', on: '/gearcases/box/openings/fill' })).toEqual([
      'procedure/caution-weeping-taper',
    ])
    expect(codesOf({ id: 'a', do: 'check for leaks', on: '/gearcases/box' })).toEqual([
      'procedure/caution-weeping-washer',
      'procedure/caution-weeping-taper',
    ])
    expect(codesOf({ id: 'a', do: 'check for leaks' })).toEqual([])
    expect(codesOf({ id: 'a', do: 'tighten', on: '/gearcases/__proto__/openings/fill' })).toEqual([])
    expect(codesOf({ id: 'a', do: 'tighten', on: 'no pointer' })).toEqual([])
  })

  test('lifting warns, reading does not', () => {
    expect(findCautions(taper, { id: 'a', do: 'raise the machine' })).toEqual([
      { code: 'procedure/caution-lifting', params: { signal: 'warning' } },
      { code: 'procedure/caution-parking-brake', params: { signal: 'warning' } },
    ])
    expect(codesOf({ id: 'a', do: 'read the manual' })).toEqual([])
  })

  test('hot oil is a caution, and a warning where the oil is hot; no other word changes', () => {
    const out: Step = { id: 'a', do: 'take out', on: '/gearcases/box/openings/drain' }
    const wordsOf = (isOilHot: boolean) =>
      findCautions(taper, out, isOilHot).map(({ code, params }) => [code, params['signal']])
    expect(wordsOf(false)).toEqual([
      ['procedure/caution-hot-oil', 'caution'],
      ['procedure/caution-oil-on-skin', 'caution'],
    ])
    expect(wordsOf(true)).toEqual([
      ['procedure/caution-hot-oil', 'warning'],
      ['procedure/caution-oil-on-skin', 'caution'],
    ])
  })

  test('every step of a built procedure can be asked', () => {
    for (const step of build(varietySheet, ['change']).steps)
      for (const caution of findCautions(varietySheet, step))
        expect(Object.keys(procedureTexts)).toContain(caution.code)
  })
})

describe('texts reach every finding that building can give', () => {
  test('for an unknown machine', () => {
    const sheet = makeSheet({ rear: makeCase('rear', { drainOnSome: { variants: ['winch'] } }) })
    for (const finding of buildProcedure({ sheet, identity: {}, services: ['change', 'none'] }).findings)
      expect(Object.keys(procedureTexts)).toContain(finding.code)
  })
})
