import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { joinPointer, readPointer } from '../../src/base/pointers.js'
import { comparePointers } from '../../src/rules/checkDocuments.js'
import { indexSheet } from '../../src/rules/lookup/indexSheet.js'
import { law } from '../support/law.js'

/** The places of a document in reading order, found in a second way, by recursion. */
function placesOf(value: unknown, keys: readonly string[] = []): readonly string[] {
  if (typeof value !== 'object' || value === null) return [joinPointer(keys)]
  return [
    joinPointer(keys),
    ...Object.entries(value).flatMap(([key, inner]) => placesOf(inner, [...keys, key])),
  ]
}

const document = fc.dictionary(fc.string({ minLength: 1, maxLength: 3 }), fc.jsonValue({ maxDepth: 3 }), {
  maxKeys: 5,
})

describe('comparePlaces', () => {
  it('sorts places as they are written', () => {
    law(50, document, fc.infiniteStream(fc.nat()), (written, random) => {
      const places = placesOf(written)
      const shuffledPlaces = [...places].sort(() => ((random.next().value ?? 0) % 2 === 0 ? 1 : -1))
      expect(shuffledPlaces.sort((item, other) => comparePointers(written, item, other))).toEqual(places)
    })
  })

  it('sorts missing places after existing ones, by name', () => {
    const places = ['/x/b', '/a', '/x/a', '', '/y']
    expect(places.sort((place, other) => comparePointers({ y: 1, a: 2 }, place, other))).toEqual([
      '',
      '/y',
      '/a',
      '/x/a',
      '/x/b',
    ])
  })
})

const nested = fc.letrec<{ readonly node: unknown }>((tie) => ({
  node: fc.oneof(
    { maxDepth: 4 },
    fc.string({ maxLength: 3 }),
    fc.record({ ref: fc.constantFrom('manual', 'leaflet', 3) }),
    fc.array(tie('node'), { maxLength: 3 }),
    fc.dictionary(fc.constantFrom('source', 'a', 'b/c', '~'), tie('node'), { maxKeys: 3 }),
  ),
})).node

describe('references to sources', () => {
  const smallSheet = {
    machine: { variants: {}, axles: {}, supports: {} },
    gearcases: {},
    services: {},
    sources: {},
  }

  it('are found wherever they are, in the order written, each at its pointer', () => {
    law(50, nested, (document) => {
      const sheet = { ...smallSheet, anything: document }
      const expected = placesOf(sheet).filter(
        (place) => place.endsWith('/source/ref') && typeof readPointer(sheet, place) === 'string',
      )
      expect(indexSheet(sheet as never).references.map(({ path }) => path)).toEqual(expected)
    })
  })
})
