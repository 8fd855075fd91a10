import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parse, stringify } from 'yaml'
import { applyPatch } from '../../src/base/applyPatch.js'
import type { Fix } from '../../src/base/finding.js'
import { joinPointer } from '../../src/base/pointers.js'
import { editText } from '../../src/cli/editText.js'
import { law } from '../support/law.js'

const scalar = fc.oneof(
  fc.string({ maxLength: 12 }),
  fc.constantFrom('10.0', '1/2 in', '20–25 N·m', 'yes', 'null', '#1', 'a: b', "it's", '- x', ' x '),
  fc.integer(),
  fc.boolean(),
)
const key = fc.constantFrom('name', 'size', 'two words', 'a/b', '~', '1', 'ö')
const tree = fc.letrec((tie) => ({
  node: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    scalar,
    fc.dictionary(key, tie('node'), { maxKeys: 4 }),
    fc.array(tie('node'), { maxLength: 3 }),
  ),
})).node
const document = fc.dictionary(key, tree, { minKeys: 1, maxKeys: 4 })

/** Pointers to the scalars of a tree. */
function scalarPlaces(value: unknown, place: readonly string[] = []): readonly (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [place]
  return Object.entries(value).flatMap(([name, child]) => scalarPlaces(child, [...place, name]))
}

describe('the edited text', () => {
  it('means what the patch says, in JSON always', () => {
    law(200, document, scalar, fc.nat(), (data, value, pick) => {
      const places = scalarPlaces(data)
      const place = places[pick % Math.max(1, places.length)]
      if (place === undefined) return
      const fix: Fix = { op: 'replace', path: joinPointer(place), value }
      const editedText = editText(JSON.stringify(data, null, 2), [fix], true)
      expect(editedText).toBeDefined()
      expect(JSON.parse(editedText ?? '')).toEqual(applyPatch(data, [fix]))
    })
  })

  it('in YAML too, or there is none', () => {
    let count = 0
    law(200, document, scalar, fc.nat(), (data, value, pick) => {
      const places = scalarPlaces(data)
      const place = places[pick % Math.max(1, places.length)]
      if (place === undefined) return
      const text = stringify(data)
      const fix: Fix = { op: 'replace', path: joinPointer(place), value }
      const editedText = editText(text, [fix], false)
      if (editedText === undefined) return
      count += 1
      expect(parse(editedText)).toEqual(applyPatch(parse(text), [fix]))
    })
    expect(count).toBeGreaterThan(50)
  })

  it.each([
    ['a: 1 # one\nb: 2\n', [{ op: 'move', from: '/a', path: '/c' }], 'c: 1 # one\nb: 2\n'],
    ["a: '8.8'\n", [{ op: 'replace', path: '/a', value: '10.9' }], "a: '10.9'\n"],
    ['a: 88\n', [{ op: 'replace', path: '/a', value: '8.8' }], 'a: "8.8"\n'],
    [
      'a: { min: 2, max: 1 }\n',
      [{ op: 'replace', path: '/a', value: { min: 1, max: 2 } }],
      'a: { min: 1, max: 2 }\n',
    ],
    ['{"a": 8}', [{ op: 'replace', path: '/a', value: 'x y' }], '{"a": "x y"}'],
  ] as const)('%j %j', (text, fixes, expected) => {
    expect(editText(text, fixes, text.startsWith('{'))).toBe(expected)
  })

  it.each([
    ['a key that exists', 'a: 1\nb: 2\n', { op: 'move', from: '/a', path: '/b' }],
    ['a new part', 'a: 1\n', { op: 'add', path: '/b', value: 1 }],
    ['a part to remove', 'a: 1\nb: 2\n', { op: 'remove', path: '/b' }],
    ['another part', 'a: 1\nb: {}\n', { op: 'move', from: '/a', path: '/b/a' }],
    ['a list instead of a text', 'a: 1\n', { op: 'replace', path: '/a', value: [1] }],
    ['a text in lines', 'a: |\n  x\n', { op: 'replace', path: '/a', value: 'y' }],
    ['a text that is not YAML', 'a: [', { op: 'replace', path: '/a', value: 'y' }],
    ['a place that is not there', 'a: 1\n', { op: 'replace', path: '/b', value: 'y' }],
  ] as const)('is none for %s', (_what, text, fix) => {
    expect(editText(text, [fix], false)).toBeUndefined()
  })
})
