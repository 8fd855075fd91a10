import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { judgeFacts } from '../../src/spec/judgeFacts.js'
import { judgePart } from '../../src/spec/judgePart.js'
import { findCandidates } from '../../src/spec/resolveVariant.js'
import type { Condition, Identity, SpecSheet } from '../../src/v1/spec.js'
import { readFixture } from '../support/fixtures.js'
import { law } from '../support/law.js'

const sheet = {
  machine: {
    make: 'Hallbrekka',
    model: 'Tind',
    type: 'carrier',
    variants: {
      early: { name: 'early', when: { modelYears: { to: 2019 } } },
      late: { name: 'late', when: { modelYears: { from: 2020 } } },
    },
    axles: {},
    supports: {},
  },
}
const judge = (condition: Condition, identity: Identity) =>
  judgeFacts(condition, identity, findCandidates(sheet, identity))
const answer = (condition: Condition, identity: Identity) => judge(condition, identity).verdict

test('an empty condition, and empty parts of one, hold for every machine', () => {
  for (const condition of [{}, { modelYears: {} }, { serials: {} }])
    expect(judge(condition, {})).toEqual({ verdict: 'yes', reasons: [] })
})

test('an empty list holds for none', () => {
  expect(answer({ variants: [] }, { variant: 'early' })).toBe('no')
  expect(answer({ market: [] }, { market: 'NO' })).toBe('no')
})

describe('model years: both ends belong to the range', () => {
  test.each([
    [2018, 'no'],
    [2019, 'yes'],
    [2021, 'yes'],
    [2022, 'no'],
  ])('%i', (modelYear, expected) => {
    expect(answer({ modelYears: { from: 2019, to: 2021 } }, { modelYear })).toBe(expected)
  })
  test('open ends, and a year that is not given', () => {
    expect(answer({ modelYears: { from: 2019 } }, { modelYear: 9999 })).toBe('yes')
    expect(answer({ modelYears: { to: 2019 } }, { modelYear: 1901 })).toBe('yes')
    expect(judge({ modelYears: { from: 2019 } }, {})).toEqual({
      verdict: 'cannot tell',
      missing: ['modelYear'],
      reasons: [{ code: 'spec/fact-missing', params: { fact: 'modelYear' } }],
    })
  })
})

describe('serial numbers: a prefix and a number of fixed width', () => {
  const range = { prefix: 'KA', from: '004500', to: '004599' }
  test.each([
    // Just below, at and just above either end.
    ['KA004499', 'no'],
    ['KA004500', 'yes'],
    ['KA004599', 'yes'],
    ['KA004600', 'no'],
    // Another prefix of the same form means another machine.
    ['KB004550', 'no'],
    // Any other form is `cannot tell`.
    ['KA4550', 'cannot tell'],
    ['KA0004550', 'cannot tell'],
    ['KA00455X', 'cannot tell'],
    ['ka004550', 'cannot tell'],
    ['004550', 'cannot tell'],
    ['KA 004550', 'cannot tell'],
    ['KA00455\n', 'cannot tell'],
    ['KA٠٠٤٥٥٠', 'cannot tell'],
    ['', 'cannot tell'],
  ])('%j', (serial, expected) => {
    expect(answer({ serials: range }, { serial })).toBe(expected)
  })

  test('a prefix alone', () => {
    expect(answer({ serials: { prefix: 'KA' } }, { serial: 'KA7' })).toBe('yes')
    expect(answer({ serials: { prefix: 'KA' } }, { serial: 'KB7' })).toBe('no')
    expect(answer({ serials: { prefix: 'KA' } }, { serial: 'KAX7' })).toBe('cannot tell')
  })

  test('no prefix: numbers of the width alone', () => {
    expect(answer({ serials: { from: '100' } }, { serial: '100' })).toBe('yes')
    expect(answer({ serials: { from: '100' } }, { serial: '099' })).toBe('no')
    expect(answer({ serials: { from: '100' } }, { serial: 'K100' })).toBe('cannot tell')
    expect(answer({ serials: { from: '100' } }, { serial: '1000' })).toBe('cannot tell')
  })

  test('a range whose ends differ in width, or are no numbers, decides nothing', () => {
    for (const serialRange of [{ from: '99', to: '100' }, { from: '1A' }, { from: '' }])
      expect(judge({ serials: serialRange }, { serial: '99' })).toMatchObject({
        verdict: 'cannot tell',
        missing: [],
        reasons: [{ code: 'spec/serial-range-unreadable' }],
      })
  })
})

test('markets match exactly; other capitals are `cannot tell`', () => {
  expect(answer({ market: ['NO', 'SE'] }, { market: 'SE' })).toBe('yes')
  expect(answer({ market: ['NO', 'SE'] }, { market: 'FI' })).toBe('no')
  expect(judge({ market: ['NO'] }, { market: 'no' })).toMatchObject({
    verdict: 'cannot tell',
    missing: ['market'],
    reasons: [{ code: 'spec/market-case-differs' }],
  })
})

describe('variants', () => {
  test('found by the other facts', () => {
    expect(answer({ variants: ['late'] }, { modelYear: 2020 })).toBe('yes')
    expect(answer({ variants: ['late'] }, { modelYear: 2019 })).toBe('no')
    expect(judge({ variants: ['late'] }, {})).toMatchObject({ verdict: 'cannot tell', missing: ['variant'] })
  })
  test('still answered where every candidate, or none, is in the list', () => {
    expect(answer({ variants: ['early', 'late'] }, {})).toBe('yes')
    expect(answer({ variants: ['other'] }, {})).toBe('no')
  })
  test('never answered on a contradiction', () => {
    expect(answer({ variants: ['late'] }, { variant: 'late', modelYear: 2010 })).toBe('cannot tell')
  })
})

test('one part that fails decides, whatever else is open; missing facts are those of the open parts', () => {
  const condition = { modelYears: { from: 2020 }, market: ['NO'], serials: { prefix: 'K' } }
  expect(answer(condition, { modelYear: 2019 })).toBe('no')
  expect(judge(condition, { modelYear: 2020 })).toMatchObject({
    verdict: 'cannot tell',
    missing: ['serial', 'market'],
  })
  expect(answer(condition, { modelYear: 2020, market: 'NO', serial: 'K1' })).toBe('yes')
})

test('law: a yes or no never changes when a missing fact becomes known, and all facts together decide', () => {
  const year = fc.integer({ min: 2017, max: 2022 })
  const bound = fc.option(year, { nil: undefined })
  const digits = fc.constantFrom('01', '02', '03', '04')
  const condition = fc.record(
    {
      variants: fc.subarray(['early', 'late', 'other']),
      modelYears: fc.tuple(bound, bound).map(([from, to]) => ({
        ...(from === undefined ? {} : { from }),
        ...(to === undefined ? {} : { to }),
      })),
      serials: fc.record(
        { prefix: fc.constantFrom('K', 'L'), from: digits, to: digits },
        { requiredKeys: ['prefix'] },
      ),
      market: fc.subarray(['NO', 'SE']),
    },
    { requiredKeys: [] },
  )
  const allFacts = fc.record({
    modelYear: year,
    serial: fc.tuple(fc.constantFrom('K', 'L'), digits).map((parts) => parts.join('')),
    market: fc.constantFrom('NO', 'SE', 'FI'),
  })
  const facts = fc.subarray(['modelYear', 'serial', 'market'] as const)
  law(500, condition, allFacts, facts, (when, known, left) => {
    const knownPart: Identity = Object.fromEntries(left.map((fact) => [fact, known[fact]]))
    const before = judge(when, knownPart)
    const after = judge(when, known)
    expect(after.verdict).not.toBe('cannot tell')
    if (before.verdict !== 'cannot tell') expect(before.verdict).toBe(after.verdict)
    else expect(before.missing.length).toBeGreaterThan(0)
  })
})

describe('judgePart', () => {
  const taper = readFixture('taper-plug.sheet.json') as unknown as SpecSheet
  const cover = readFixture('cover-no-drain.sheet.json') as unknown as SpecSheet

  test('a part without a condition is on every machine', () => {
    expect(judgePart(taper, {}, '/gearcases/transfer/openings/fill')).toEqual({
      verdict: 'yes',
      reasons: [
        { code: 'spec/part-on-every-machine', params: { path: '/gearcases/transfer/openings/fill' } },
      ],
    })
  })
  test('its own condition', () => {
    expect(judgePart(taper, { serial: 'HV24999' }, '/shields/belly').verdict).toBe('no')
    expect(judgePart(taper, { serial: 'HV25000' }, '/shields/belly').verdict).toBe('yes')
    expect(judgePart(taper, {}, '/shields/belly')).toMatchObject({
      verdict: 'cannot tell',
      missing: ['serial'],
    })
    expect(judgePart(cover, { market: 'FI' }, '/gearcases/rear/covers/side-cover').verdict).toBe('yes')
    expect(judgePart(cover, { market: 'NO' }, '/gearcases/rear/covers/side-cover').verdict).toBe('no')
  })
  test('the condition of the containing part, from a part inside', () => {
    const inside = {
      ...taper,
      gearcases: {
        transfer: { ...taper.gearcases['transfer'], appliesTo: { market: ['NO'] } },
      },
    } as unknown as SpecSheet
    const path = '/gearcases/transfer/openings/drain/tightening'
    expect(judgePart(inside, { market: 'SE' }, path).verdict).toBe('no')
    expect(judgePart(inside, { market: 'NO' }, path)).toMatchObject({
      verdict: 'yes',
      reasons: [
        { code: 'spec/part-on-some-machines', params: { path: '/gearcases/transfer' } },
        { code: 'spec/market-listed' },
      ],
    })
    expect(judgePart(inside, {}, path).verdict).toBe('cannot tell')
  })
  test('misuse throws', () => {
    expect(() => judgePart(taper, {}, '/gearcases/none')).toThrow(RangeError)
    expect(() => judgePart(taper, {}, 'gearcases')).toThrow(RangeError)
    expect(() => judgePart(taper, {}, '/__proto__')).toThrow(RangeError)
    expect(() => judgePart(taper, {}, 3 as never)).toThrow(TypeError)
    expect(() => judgeFacts(null as never, {}, findCandidates(sheet, {}))).toThrow(TypeError)
    const judge =
      (condition: unknown, identity: unknown = {}) =>
      () =>
        judgeFacts(
          condition as Condition,
          identity as Identity,
          findCandidates(sheet as never, identity as Identity),
        )
    expect(judge({ serials: null })).toThrow(
      /^condition\.serials must be an object, got null; parse the document first$/,
    )
    expect(judge({ serials: { from: 5 } })).toThrow(/^condition\.serials\.from must be a string, got 5/)
    expect(judge({ market: ['NO', 5] })).toThrow(/^condition\.market\[1\] must be a string/)
    expect(judge({ modelYears: { from: Symbol('s') } })).toThrow(
      /^condition\.modelYears\.from must be a number/,
    )
    expect(judge({}, { serial: 4512 })).toThrow(
      /^identity\.serial must be a string, got 4512; omit unknown facts$/,
    )
  })
})
