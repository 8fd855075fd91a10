import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { resolveVariant, type Variant } from '../../src/v1/spec.js'
import { law } from '../support/law.js'

const sheetOf = (variants: Record<string, Variant>) => ({
  machine: { make: 'Hallbrekka', model: 'Tind', type: 'carrier', variants, axles: {}, supports: {} },
})
const bySerial = sheetOf({
  short: { name: 'short bed', when: { serials: { prefix: 'TS', from: '00001', to: '09999' } } },
  long: { name: 'long bed', when: { serials: { prefix: 'TL', from: '00001', to: '09999' } } },
})
const byYear = sheetOf({
  early: { name: 'early', when: { modelYears: { to: 2019 } } },
  late: { name: 'late', when: { modelYears: { from: 2020 }, market: ['NO'] } },
})
const codes = (reasons: readonly { readonly code: string }[]) => reasons.map((reason) => reason.code)

describe('selected', () => {
  test('by conditions: one holds and the others fail', () => {
    expect(resolveVariant(bySerial, { serial: 'TL00418' })).toEqual({
      verdict: 'selected',
      variant: 'long',
      by: 'conditions',
      reasons: [
        { code: 'spec/variant-selected', params: { variant: 'long' } },
        {
          code: 'spec/serial-in-range',
          params: { serial: 'TL00418', prefix: 'TL', from: '00001', to: '09999' },
        },
      ],
    })
    expect(resolveVariant(byYear, { modelYear: 2020, market: 'NO' })).toMatchObject({ variant: 'late' })
    expect(resolveVariant(byYear, { modelYear: 2019 })).toMatchObject({ variant: 'early' })
  })

  test('by the log, where its word is not contradicted', () => {
    expect(resolveVariant(bySerial, { variant: 'short' })).toEqual({
      verdict: 'selected',
      variant: 'short',
      by: 'stated',
      reasons: [{ code: 'spec/variant-stated', params: { variant: 'short' } }],
    })
    expect(resolveVariant(bySerial, { variant: 'short', serial: 'TS00001' })).toMatchObject({ by: 'stated' })
    // A serial that cannot be read contradicts nothing.
    expect(resolveVariant(bySerial, { variant: 'short', serial: 'worn off' })).toMatchObject({ by: 'stated' })
  })

  test('as the only variant of the sheet', () => {
    expect(resolveVariant(sheetOf({ base: { name: 'base' } }), {})).toEqual({
      verdict: 'selected',
      variant: 'base',
      by: 'only variant',
      reasons: [{ code: 'spec/variant-only', params: { variant: 'base' } }],
    })
  })
})

describe('cannot tell', () => {
  test('names the missing facts and the candidates', () => {
    const nothing = resolveVariant(byYear, {})
    expect(nothing).toMatchObject({
      verdict: 'cannot tell',
      missing: ['variant', 'modelYear', 'market'],
      candidates: ['early', 'late'],
    })
    const noMarket = resolveVariant(byYear, { modelYear: 2021 })
    expect(noMarket).toMatchObject({
      verdict: 'cannot tell',
      missing: ['variant', 'market'],
      candidates: ['late'],
    })
  })

  test('a variant without a condition stays a candidate until the log names one', () => {
    const mixedSheet = sheetOf({
      plain: { name: 'plain' },
      late: { name: 'late', when: { modelYears: { from: 2020 } } },
    })
    expect(resolveVariant(mixedSheet, { modelYear: 2021 })).toMatchObject({
      verdict: 'cannot tell',
      missing: ['variant'],
      candidates: ['plain', 'late'],
    })
    expect(resolveVariant(mixedSheet, { modelYear: 2019 })).toMatchObject({
      verdict: 'cannot tell',
      candidates: ['plain'],
    })
    expect(resolveVariant(mixedSheet, { variant: 'plain', modelYear: 2019 })).toMatchObject({
      variant: 'plain',
    })
  })

  test('two conditions that both hold', () => {
    const overlapping = sheetOf({
      one: { name: 'one', when: { modelYears: { to: 2020 } } },
      two: { name: 'two', when: { modelYears: { from: 2020 } } },
    })
    expect(resolveVariant(overlapping, { modelYear: 2020 })).toMatchObject({
      verdict: 'cannot tell',
      missing: ['variant'],
      candidates: ['one', 'two'],
    })
  })

  test('a sheet without variants', () => {
    const verdict = resolveVariant(sheetOf({}), {})
    expect(verdict).toMatchObject({ verdict: 'cannot tell', missing: ['variant'], candidates: [] })
    expect(codes(verdict.reasons)).toEqual(['spec/variant-not-known'])
  })
})

describe('contradiction', () => {
  test('the log names a variant that the sheet does not have', () => {
    expect(resolveVariant(bySerial, { variant: 'medium', serial: 'TL00418' })).toEqual({
      verdict: 'contradiction',
      stated: 'medium',
      candidates: ['long'],
      reasons: [
        { code: 'spec/variant-not-on-sheet', params: { variant: 'medium', known: ['short', 'long'] } },
      ],
    })
    for (const name of ['constructor', '__proto__', 'toString'])
      expect(resolveVariant(bySerial, { variant: name })).toMatchObject({ verdict: 'contradiction' })
  })

  test('the serial rules out the variant that the log names', () => {
    const verdict = resolveVariant(bySerial, { variant: 'short', serial: 'TL00418' })
    expect(verdict).toMatchObject({ verdict: 'contradiction', stated: 'short', candidates: ['long'] })
    expect(codes(verdict.reasons)).toEqual(['spec/variant-contradicted', 'spec/serial-out-of-range'])
  })

  test('no variant fits', () => {
    const verdict = resolveVariant(byYear, { modelYear: 2021, market: 'SE' })
    expect(verdict).toMatchObject({ verdict: 'contradiction', candidates: [] })
    expect(codes(verdict.reasons)).toEqual([
      'spec/variant-none-fits',
      'spec/model-year-out-of-range',
      'spec/market-not-listed',
    ])
  })
})

test('misuse throws', () => {
  expect(() => resolveVariant(undefined as never, {})).toThrow(TypeError)
  expect(() => resolveVariant({} as never, {})).toThrow(/^sheet\.machine must be an object/)
  expect(() => resolveVariant(bySerial, null as never)).toThrow(/identity/)
  expect(() => resolveVariant({ machine: { variants: [] } } as never, {})).toThrow(
    /^sheet\.machine\.variants must be an object, got a list; parse the document first$/,
  )
  expect(() => resolveVariant(byYear, { modelYear: Number.NaN })).toThrow(RangeError)
  expect(() => resolveVariant(byYear, { modelYear: Object.create(null) })).toThrow(
    /^identity\.modelYear must be a whole number, got an object$/,
  )
  expect(() => resolveVariant(byYear, { modelYear: 2020.5 })).toThrow(/identity.modelYear/)
})

describe('laws', () => {
  const range = fc
    .tuple(fc.integer({ min: 2018, max: 2024 }), fc.integer({ min: 2018, max: 2024 }))
    .map(([one, other]) => ({ from: Math.min(one, other), to: Math.max(one, other) }))
  const when = fc.record(
    { modelYears: range, market: fc.subarray(['NO', 'FI', 'SE'], { minLength: 1 }) },
    { requiredKeys: [] },
  )
  const variants = fc.array(when, { minLength: 1, maxLength: 4 })
  const identity = fc.record({
    modelYear: fc.integer({ min: 2018, max: 2024 }),
    market: fc.constantFrom('NO', 'FI', 'SE'),
  })
  const sheetWith = (list: readonly (readonly [number, Variant['when']])[]) =>
    sheetOf(
      Object.fromEntries(
        list.map(([place, condition]) => [`v${place}`, { name: `v${place}`, when: condition ?? {} }]),
      ),
    )

  test('the order of the variants does not matter, and a fact less never selects another one', () => {
    let selected = 0
    law(300, variants, identity, fc.subarray(['modelYear', 'market'] as const), (list, whole, known) => {
      const numbered = list.map((condition, place) => [place, condition] as const)
      const found = resolveVariant(sheetWith(numbered), whole)
      const turned = resolveVariant(sheetWith([...numbered].reverse()), whole)
      expect(turned.verdict).toBe(found.verdict)
      // a second implementation: with every fact known, a variant is possible or not
      const possible = numbered.flatMap(([place, { modelYears, market }]) =>
        (modelYears === undefined ||
          (modelYears.from <= whole.modelYear && whole.modelYear <= modelYears.to)) &&
        (market?.includes(whole.market) ?? true)
          ? [`v${place}`]
          : [],
      )
      if (found.verdict === 'selected') expect(possible).toContain(found.variant)
      if (found.verdict === 'contradiction') expect(possible).toEqual([])
      if (found.verdict !== 'selected' || turned.verdict !== 'selected') return
      selected += 1
      expect(turned.variant).toBe(found.variant)
      const less = resolveVariant(
        sheetWith(numbered),
        Object.fromEntries(known.map((fact) => [fact, whole[fact]])),
      )
      if (less.verdict === 'selected') expect(less.variant).toBe(found.variant)
      else expect(less.verdict === 'cannot tell' && less.candidates).toContain(found.variant)
    })
    expect(selected).toBeGreaterThan(20)
  })
})
