import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { listKeys, pathAtCursor } from '../../docs/page/pathAtCursor.js'

/** The place of the mark ‸ in a text. */
const placeIn = (marked: string) => {
  const offset = marked.indexOf('‸')
  const { path, at, word } = pathAtCursor(marked.replace('‸', ''), offset)
  return `${at} ${['', ...path].join('/')} ${word}`.trim()
}

describe('the place of the cursor', () => {
  it.each([
    ['‸', 'key'],
    ['ki‸', 'key  ki'],
    ['kind: ‸', 'value /kind'],
    ['kind: spec‸-sheet\nid: x', 'value /kind spec'],
    ['machine:\n  ma‸', 'key /machine ma'],
    ['machine:\n  make: X\n  ‸', 'key /machine'],
    ['machine:\n  make: X\n‸', 'key'],
    [
      'gearcases:\n  rear:\n    openings:\n      drain:\n        tight‸',
      'key /gearcases/rear/openings/drain tight',
    ],
    ['gearcases:\n  rear:\n    openings:\n      drain: 25 N‸', 'value /gearcases/rear/openings/drain 25 N'],
    ['a:\n  b:\n    c: 1\n\n  # a note\n\n  ‸', 'key /a'],
    ['records:\n  - date: 2023-01-01\n    entr‸', 'key /records/0 entr'],
    ['records:\n- date: 2023-01-01\n  readings: 1 h\n- date: x\n  ‸', 'key /records/1'],
    ['records:\n- date: x\nmet‸', 'key  met'],
    ['meters:\n  - 1 h on 2020-01-01\n  - 2 h‸', 'value /meters/1 2 h'],
    ['overrides:\n  - when: x\n    set: { /a/b: ‸', 'value /overrides/0/set//a/b'],
    ['machine: { make: X, mo‸', 'key /machine mo'],
    ['machine: { make: X, model: Y‸ }', 'value /machine/model Y'],
    ['gearcases: [rear, fro‸', 'value /gearcases/1 fro'],
    ['a: { b: [{ c: "x, y", d‸', 'key /a/b/0 d'],
    ['a: { b: 1 }\nc: ‸', 'value /c'],
    ['a:\n  {\n    b: 1,\n    c‸\n', 'key /a c'],
    ['note: |\n  kind: not a key\n  ‸\nkind: x', 'value /note'],
    ['"kind": "spec‸', 'value /kind spec'],
    ['{\n "kind": "spec-sheet",\n "machine": {\n  "ma‸', 'key /machine ma'],
    ['when: a: b‸', 'value /when a: b'],
    ['time: 12:30‸', 'value /time 12:30'],
  ])('%j', (text, expected) => {
    expect(placeIn(text)).toBe(expected)
  })

  it('lists keys with their characters', () => {
    const text = 'machine: { make: X }\nrecords:\n  - date: 2023-01-01 # a: b\n'
    expect(listKeys(text).map(({ path, from, to }) => [path.join('/'), text.slice(from, to)])).toEqual([
      ['machine', 'machine'],
      ['machine/make', 'make'],
      ['records', 'records'],
      ['records/0/date', 'date'],
    ])
  })

  it.each([
    'tind-4/sheet',
    'tind-4/log',
    'tind-4/toolbox',
    'tind-4/stock',
    'acre-26/sheet',
    'bud-3/sheet',
    'bud-3/toolbox',
    'kvist-2/sheet',
    'reach-55/sheet',
    'reach-55/log',
  ])('finds the keys of %s that the YAML reader finds', (name) => {
    const text = readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8')
    const listPaths = (value: unknown, path: string): string[] =>
      typeof value !== 'object' || value === null
        ? []
        : Object.entries(value).flatMap(([key, inner]) => [
            ...(Array.isArray(value) ? [] : [`${path}/${key}`]),
            ...listPaths(inner, `${path}/${key}`),
          ])
    const found = listKeys(text).map(({ path }) => `/${path.join('/')}`)
    expect(found.sort()).toEqual(listPaths(parse(text), '').sort())
    // The text up to a key gives the place of that key.
    for (const { path, from, to } of listKeys(text)) {
      const place = pathAtCursor(text, to)
      expect([place.at, place.path, place.word]).toEqual(['key', path.slice(0, -1), text.slice(from, to)])
    }
  })
})
