import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Result } from '../../src/base/finding.js'
import { parseDocument } from '../../src/schema/parseDocument.js'
import { checkDocuments } from '../../src/v1/rules.js'
import { cases, law } from '../support/law.js'
import { goodFolders, type ReadDocument, readFolder, setOf } from './support/goodSets.js'
import { patchedDocuments, readVectors } from './support/vectors.js'

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json }

/** Values that fit many shapes, at the limits of what these allow. */
const EDGE_VALUES: readonly Json[] = [
  '0',
  '0.000001',
  '999999999',
  '-40',
  '10.0',
  '',
  'x',
  'constructor',
  'M14x1.5',
  'R 1/2',
  'lbf.in',
  'kgf.m',
  'mL',
  'degC',
  'turns',
  'not stated',
  'limits',
  'nominal',
  'none',
  'P1D',
  '2023-13-01',
  '0001-01-01',
  '9999-12-31',
  '/gearcases/front',
  '/',
  0,
  1e-9,
  0.1,
  1,
  100,
  1e9,
  1e12,
  1e300,
  2023,
  true,
  false,
  [],
  {},
  { kind: 'not stated' },
  { kind: 'none' },
  { kind: 'limits', unit: 'N.m' },
  { kind: 'limits', unit: 'mL' },
  { kind: 'nominal', value: '0', unit: 'N.m' },
  { kind: 'nominal', value: '0', unit: 'mL' },
  { kind: 'not stated', threadCondition: 'dry' },
  { kind: 'turns', min: '0', threadCondition: 'sealant' },
  { kind: 'interval' },
  { kind: 'oils', choices: [] },
  { kind: 'shared', with: 'front' },
]

/** Every place of a document, as keys from its root. */
function placesOf(value: Json, keys: readonly string[] = []): readonly (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [keys]
  return [keys, ...Object.entries(value).flatMap(([key, inner]) => placesOf(inner as Json, [...keys, key]))]
}

function changed(value: Json, keys: readonly string[], to: Json | undefined): Json {
  const [key, ...rest] = keys
  if (key === undefined) return to ?? null
  if (typeof value !== 'object' || value === null) return value
  if (Array.isArray(value)) {
    const place = Number(key)
    if (rest.length === 0 && to === undefined) return value.toSpliced(place, 1)
    return value.with(place, changed(value[place] as Json, rest, to))
  }
  const record = value as { readonly [key: string]: Json }
  if (rest.length === 0 && to === undefined) {
    const { [key]: _gone, ...left } = record
    return left
  }
  return { ...record, [key]: changed(record[key] as Json, rest, to) }
}

const sets: readonly (readonly ReadDocument[])[] = [
  ...goodFolders().map(readFolder),
  ...readVectors()
    .filter(({ file }) => /^record\/|turns|cover/.test(file))
    .map(({ vector }) => patchedDocuments(vector)),
]

const mutation = fc.record({
  set: fc.nat(),
  changes: fc.array(
    fc.record({
      document: fc.nat(),
      place: fc.nat(),
      to: fc.option(fc.constantFrom(...EDGE_VALUES), { nil: undefined }),
    }),
    { minLength: 1, maxLength: 4 },
  ),
})

describe('documents that are strange but of the right shape', () => {
  it('never make a rule throw, and never give a finding without its place', () => {
    let judgedCount = 0
    law(50, mutation, ({ set, changes }) => {
      const documents = [...(sets[set % sets.length] ?? [])]
      for (const { document, place, to } of changes) {
        const at = document % documents.length
        const named = documents[at]
        if (named === undefined) continue
        const before = named.document as unknown as Json
        const places = placesOf(before).slice(1)
        const keys = places[place % places.length] ?? []
        const after = changed(before, keys, to)
        const read: Result<unknown> = parseDocument('any', after)
        if (read.ok) documents[at] = { ...named, document: read.value as ReadDocument['document'] }
      }
      judgedCount += 1
      for (const { code, path, document } of checkDocuments(setOf(documents), { today: '2023-11-02' })) {
        expect(code).toMatch(/^[a-z]+\/[a-z-]+$/)
        expect(path === '' || path.startsWith('/')).toBe(true)
        expect(document.name).toBeTypeOf('string')
      }
    })
    expect(judgedCount).toBeGreaterThanOrEqual(cases(50))
  })
})
