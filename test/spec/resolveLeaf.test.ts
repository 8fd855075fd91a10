import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { applyPatch } from '../../src/base/applyPatch.js'
import { LEAF_TABLE } from '../../src/spec/leafTable.js'
import { type Identity, resolveLeaf, type SpecSheet } from '../../src/v1/spec.js'
import { readFixture } from '../support/fixtures.js'
import { cases, law } from '../support/law.js'
import { type JsonSchema, toJsonSchema } from '../support/toJsonSchema.js'

const cover = readFixture('cover-no-drain.sheet.json') as unknown as SpecSheet
const refill = '/gearcases/rear/oilSpace/fill/drainAndRefill'
const limitedIdentity: Identity = { market: 'FI', modelYear: 2028 }
const codes = (trace: { readonly reasons: readonly { readonly code: string }[] }) =>
  trace.reasons.map((reason) => reason.code)

describe('stated', () => {
  test('from the sheet itself, with source and reasons', () => {
    const found = resolveLeaf(cover, { market: 'NO' }, 'value', refill)
    expect(found).toMatchObject({
      kind: 'stated',
      value: { kind: 'nominal', value: '2.3', unit: 'L' },
      trace: { path: refill, source: { ref: 'manual', page: '76' } },
    })
    if (found.kind === 'stated')
      expect(codes(found.trace)).toEqual([
        'spec/variant-selected',
        'spec/market-listed',
        'spec/leaf-from-sheet',
      ])
  })

  test('from the one override that applies, with its source where the leaf has none', () => {
    const found = resolveLeaf(cover, limitedIdentity, 'value', refill)
    expect(found).toMatchObject({
      kind: 'stated',
      value: { value: '2.5' },
      trace: {
        path: '/overrides/0/set/0/to',
        source: { ref: 'bulletin', page: '2', confidence: 'second hand' },
      },
    })
    if (found.kind === 'stated') expect(codes(found.trace)).toContain('spec/override-applies')
  })

  test('the source inside a torque counts for its tightening', () => {
    const bolts = '/gearcases/rear/covers/rear-cover/bolts/tightening'
    const coverWithoutSource = applyPatch(cover, [{ op: 'remove', path: `${bolts}/source` }]) as SpecSheet
    expect(resolveLeaf(coverWithoutSource, {}, 'tightening', bolts)).toMatchObject({
      trace: { source: { page: '78' } },
    })
  })

  test('a condition that is open is no matter where all candidates say the same', () => {
    const sameCover = applyPatch(cover, [
      {
        op: 'replace',
        path: '/overrides/0/set/0/to',
        value: { kind: 'nominal', value: '2.3', unit: 'L', asPrinted: '2.3 l (2 1/2 US qt)' },
      },
    ]) as SpecSheet
    const found = resolveLeaf(sameCover, {}, 'value', refill)
    expect(found).toMatchObject({ kind: 'stated', value: { value: '2.3' }, trace: { path: refill } })
    if (found.kind === 'stated') expect(codes(found.trace)).toContain('spec/candidates-agree')
  })
})

describe('not stated', () => {
  test('by the sheet, by an override, or left out', () => {
    expect(resolveLeaf(cover, {}, 'interval', '/services/rear-level/intervals/repeat')).toMatchObject({
      kind: 'not stated',
    })
    expect(resolveLeaf(cover, limitedIdentity, 'oils', '/gearcases/rear/oilSpace/oils')).toMatchObject({
      kind: 'not stated',
      trace: { path: '/overrides/0/set/2/to' },
    })
    const left = resolveLeaf(cover, { market: 'NO' }, 'value', '/gearcases/rear/oilSpace/fill/dryFill')
    expect(left).toMatchObject({ kind: 'not stated' })
    if (left.kind === 'not stated') expect(codes(left.trace)).toContain('spec/leaf-absent')
    const hubSheet = readFixture('hub-reduction.sheet.json') as unknown as SpecSheet
    expect(
      resolveLeaf(hubSheet, {}, 'tightening', '/gearcases/middle/openings/stick/tightening'),
    ).toMatchObject({
      kind: 'not stated',
    })
  })

  test('no seal at all is stated', () => {
    expect(
      resolveLeaf(cover, limitedIdentity, 'seal', '/gearcases/rear/covers/rear-cover/seal'),
    ).toMatchObject({
      kind: 'stated',
      value: { kind: 'none' },
    })
  })
})

describe('cannot tell', () => {
  test('names what is missing and every candidate with its place', () => {
    const found = resolveLeaf(cover, { modelYear: 2028 }, 'value', refill)
    expect(found).toMatchObject({ kind: 'cannot tell', missing: ['variant', 'market'] })
    expect(found.kind === 'cannot tell' && found.candidates.map(({ trace }) => trace.path)).toEqual([
      refill,
      '/overrides/0/set/0/to',
    ])
    // The variant is known, the year is not.
    expect(resolveLeaf(cover, { variant: 'limited' }, 'value', refill)).toMatchObject({
      kind: 'cannot tell',
      missing: ['modelYear'],
    })
  })

  test('a year outside the override settles it for every variant', () => {
    expect(resolveLeaf(cover, { modelYear: 2030 }, 'value', refill)).toMatchObject({
      kind: 'stated',
      value: { value: '2.3' },
    })
  })

  test('the base is no candidate where every variant has an override', () => {
    const coverWithBoth = applyPatch(cover, [
      {
        op: 'add',
        path: '/overrides/-',
        value: {
          when: { variants: ['open'] },
          set: [{ kind: 'value', path: refill, to: { kind: 'nominal', value: '2.2', unit: 'L' } }],
        },
      },
      { op: 'remove', path: '/overrides/0/when/modelYears' },
    ]) as SpecSheet
    const found = resolveLeaf(coverWithBoth, {}, 'value', refill)
    expect(
      found.kind === 'cannot tell' && found.candidates.map(({ trace }) => trace.path).toSorted(),
    ).toEqual(['/overrides/0/set/0/to', '/overrides/1/set/0/to'])
  })

  test('two overrides that apply at once: both are candidates with the reason, even if they agree', () => {
    const twoOverrides = applyPatch(cover, [
      { op: 'add', path: '/overrides/-', value: cover.overrides?.[0] },
    ]) as SpecSheet
    const found = resolveLeaf(twoOverrides, limitedIdentity, 'value', refill)
    expect(found).toMatchObject({ kind: 'cannot tell', missing: [] })
    if (found.kind === 'cannot tell') {
      expect(found.candidates).toHaveLength(2)
      for (const { trace } of found.candidates) expect(codes(trace)).toContain('spec/overrides-overlap')
    }
    expect(resolveLeaf(twoOverrides, { market: 'NO' }, 'value', refill)).toMatchObject({ kind: 'stated' })
  })

  test('an override of another kind, or of a part of the leaf, always has a finding', () => {
    for (const change of [
      { op: 'replace', path: '/overrides/0/set/0/kind', value: 'place' },
      { op: 'replace', path: '/overrides/0/set/0/path', value: `${refill}/value` },
    ] as const) {
      const found = resolveLeaf(applyPatch(cover, [change]) as SpecSheet, limitedIdentity, 'value', refill)
      expect(found.kind).toBe('cannot tell')
      if (found.kind === 'cannot tell')
        expect(found.candidates.flatMap(({ trace }) => codes(trace))).toContain('spec/override-does-not-fit')
    }
  })

  test('a log that contradicts the sheet leaves what depends on the variant open, and nothing else', () => {
    const contradicted = { variant: 'limited', market: 'NO', modelYear: 2028 }
    expect(resolveLeaf(cover, contradicted, 'value', refill)).toMatchObject({
      kind: 'cannot tell',
      missing: ['variant'],
    })
    expect(resolveLeaf(cover, contradicted, 'value', '/machine/mass')).toMatchObject({ kind: 'stated' })
  })
})

test('misuse throws', () => {
  expect(() => resolveLeaf(cover, {}, 'figure' as never, refill)).toThrow(TypeError)
  expect(() => resolveLeaf(cover, {}, 'oils' as never, refill)).toThrow(RangeError)
  expect(() => resolveLeaf(cover, {}, 'value', `${refill}/value`)).toThrow(/point to a leaf of kind value/)
  expect(() => resolveLeaf(cover, {}, 'value', '/gearcases/front/drainTemperature')).toThrow(RangeError)
  expect(() => resolveLeaf(cover, {}, 'value', 'refill')).toThrow(RangeError)
  expect(() => resolveLeaf(null as never, {}, 'value', refill)).toThrow(TypeError)
  expect(() => resolveLeaf(cover, undefined as never, 'value', refill)).toThrow(TypeError)
  expect(() => resolveLeaf(cover, {}, 10n as never, refill)).toThrow(/^kind must be one of .*, got bigint$/)
  const withOverrides = (overrides: unknown) => () =>
    resolveLeaf({ ...cover, overrides } as never, {}, 'value', refill)
  expect(withOverrides({})).toThrow(
    /^sheet\.overrides must be a list, got an object; parse the document first$/,
  )
  expect(withOverrides([null])).toThrow(/^sheet\.overrides\[0\] must be an object, got null/)
  expect(withOverrides([{ when: {}, set: [{ kind: 'value', path: refill, to: null }] }])).toThrow(
    /^sheet\.overrides\[0\]\.set\[0\]\.to must be an object/,
  )
})

test('law: the figure for all facts is the answer, or among the candidates for some facts', () => {
  const years = [2018, 2019, 2020, 2021]
  const names = ['one', 'two', 'three']
  const condition = fc.record(
    {
      variants: fc.subarray(names),
      modelYears: fc
        .tuple(fc.constantFrom(...years), fc.constantFrom(...years))
        .map(([from, to]) => ({ from, to })),
      market: fc.subarray(['NO', 'SE']),
    },
    { requiredKeys: [] },
  )
  const sheet = fc
    .record({
      when: fc.array(fc.record({ modelYears: fc.constantFrom({ to: 2019 }, { from: 2020 }, {}) }), {
        minLength: 1,
        maxLength: 3,
      }),
      overrides: fc.array(condition, { maxLength: 3 }),
    })
    .map(({ when, overrides }) => ({
      machine: {
        mass: { kind: 'nominal', value: '0', unit: 'kg' },
        variants: Object.fromEntries(when.map((item, place) => [names[place], { name: 'x', when: item }])),
        axles: {},
        supports: {},
      },
      overrides: overrides.map((override, place) => ({
        when: override,
        // Two of the three are equal.
        set: [
          {
            kind: 'value',
            path: '/machine/mass',
            to: { kind: 'nominal', value: String(1 + (place % 2)), unit: 'kg' },
          },
        ],
      })),
    }))
  const identityFacts = fc.record({
    variant: fc.constantFrom(...names),
    modelYear: fc.constantFrom(...years),
    market: fc.constantFrom('NO', 'SE', 'FI'),
  })
  const knownFacts = fc.subarray(['variant', 'modelYear', 'market'] as const)
  let decided = 0
  let undecidedCount = 0
  law(500, sheet, identityFacts, knownFacts, (written, whole, facts) => {
    const { variants } = written.machine
    // A second implementation with two values, since it knows every fact.
    const inYears = (range: { from?: number; to?: number } | undefined) =>
      (range?.from ?? 0) <= whole.modelYear && whole.modelYear <= (range?.to ?? 9999)
    const ownVariant = variants[whole.variant]
    if (ownVariant === undefined || !inYears(ownVariant.when.modelYears)) return
    const applicable = written.overrides.filter(
      ({ when }) =>
        (when.variants?.includes(whole.variant) ?? true) &&
        inYears(when.modelYears) &&
        (when.market?.includes(whole.market) ?? true),
    )
    if (applicable.length > 1) return
    const right = applicable[0]?.set[0]?.to.value ?? '0'
    const known: Identity = Object.fromEntries(facts.map((fact) => [fact, whole[fact]]))
    const found = resolveLeaf(written as unknown as SpecSheet, known, 'value', '/machine/mass')
    if (found.kind === 'stated') {
      decided += 1
      expect(found.value).toMatchObject({ value: right })
    } else if (found.kind === 'cannot tell') {
      undecidedCount += 1
      expect(found.candidates.map(({ value }) => value)).toContainEqual(
        expect.objectContaining({ value: right }),
      )
      expect(facts).not.toHaveLength(3)
    } else expect.unreachable('every figure is stated here')
  })
  expect(Math.min(decided, undecidedCount)).toBeGreaterThan(cases(10))
})

test('the places of leaves are all those of the shape of a sheet', () => {
  // The second way: from the published schema, wherever it refers to the shape of a leaf.
  const schema = toJsonSchema('spec-sheet')
  const kinds: Readonly<Record<string, string>> = {
    tightening: 'tightening',
    oils: 'oils',
    seal: 'seal',
    interval: 'interval',
    window: 'interval',
    place: 'place',
    position: 'position',
    drive: 'drive',
  }
  const places: string[] = []
  const walk = (node: unknown, path: readonly string[]): void => {
    if (typeof node !== 'object' || node === null) return
    const { $ref, properties, additionalProperties, items, oneOf, else: full } = node as JsonSchema
    if (typeof $ref === 'string') {
      const name = $ref.replace('#/$defs/', '')
      const kind = name.startsWith('spec-') ? 'value' : kinds[name]
      if (kind !== undefined) places.push(`${kind} /${path.join('/')}`)
      else walk((schema['$defs'] as JsonSchema)[name], path)
    }
    for (const [key, inner] of Object.entries(properties ?? {}))
      if (!(path.length === 0 && key === 'overrides')) walk(inner, [...path, key])
    // A text is also allowed; the leaf is the other form.
    walk(full, path)
    walk(additionalProperties, [...path, '*'])
    walk(items, [...path, '*'])
    for (const arm of (oneOf as readonly unknown[] | undefined) ?? []) walk(arm, path)
  }
  walk(schema, [])
  expect([...new Set(places)].toSorted()).toEqual(
    Object.entries(LEAF_TABLE)
      .map(([place, { kind }]) => `${kind} ${place}`)
      .toSorted(),
  )
})
