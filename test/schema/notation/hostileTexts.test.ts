import { describe, expect, test } from 'vitest'
import { parseSpecSheet } from '../../../src/schema/index.js'
import { NOTATION_NAMES, patternOf, readNotation } from './support/byName.js'
import { readNotationVectors } from './support/notationVectors.js'
import { sheetHead } from './support/sheetHead.js'

const { good } = readNotationVectors()
const sheet = (more: object) => ({ ...sheetHead, ...more })
const withMass = (mass: unknown) => {
  const data = sheet({})
  return parseSpecSheet({ ...data, machine: { ...data.machine, mass } })
}

describe('hostile texts are findings, one each', () => {
  test.each([
    ['digits of another script', '٦٤٠ kg'],
    ['full-width digits', '６４０ kg'],
    ['a NUL', '640 kg\0'],
    ['a mark of direction', '\u202e640 kg'],
    ['a line end', '640 kg\n'],
    ['a line separator', '640\u2028kg'],
    ['a zero-width space', '640\u200b kg'],
    ['half a surrogate pair', '640 kg\ud800'],
    ['nested brackets', `640 kg ${'('.repeat(100)}1 lb${')'.repeat(100)}`],
    ['brackets without an end', `640 kg ${'['.repeat(200)}`],
    ['too many characters', `640 kg [p. ${'9'.repeat(400)}]`],
    ['very many characters', '1'.repeat(19_999)],
    ['nothing', ''],
    ['a space', ' '],
  ])('%s', (_what, text) => {
    const { ok, findings } = withMass(text)
    expect(ok).toBe(false)
    expect(findings.map(({ code, path }) => [code, path])).toEqual([['spec/bad-notation', '/machine/mass']])
  })

  test('300 characters are read, 301 are not', () => {
    const place = (length: number) => readNotation('place', 'x'.repeat(length)).ok
    expect([place(300), place(301)]).toEqual([true, false])
    // Characters are counted as in JSON Schema: a pair of surrogates is one.
    expect(readNotation('place', '🛢'.repeat(300)).ok).toBe(true)
  })
})

describe('hostile data', () => {
  const codes = (data: unknown) => parseSpecSheet(data).findings.map(({ code, path }) => [code, path])

  test('keys that shadow built-ins, also as ids in a list and in a map of paths', () => {
    expect(codes(sheet({ gearcases: JSON.parse('{"__proto__": "x"}') }))).toEqual([
      ['spec/forbidden-key', '/gearcases/__proto__'],
    ])
    const rear = { type: 'gearbox', instances: ['__proto__', 'constructor'] }
    expect(codes(sheet({ gearcases: { rear } }))).toEqual([['spec/wrong-type', '/gearcases/rear/instances']])
    const overrides = [
      { when: 'market NO', set: JSON.parse('{"__proto__": "1 L", "/gearcases/__proto__/x": "1 L"}') },
    ]
    expect(codes(sheet({ overrides }))).toEqual([
      ['spec/forbidden-key', '/overrides/0/set/__proto__'],
      ['spec/unknown-key', '/overrides/0/set/~1gearcases~1__proto__~1x'],
    ])
    expect(({} as { x?: unknown }).x).toBeUndefined()
  })

  test('keys that are names of built-ins, at every level', () => {
    for (const key of ['toString', 'valueOf', 'hasOwnProperty']) {
      const oddValue = { [key]: 'x' }
      const rear = {
        type: 'gearbox',
        ...oddValue,
        openings: { drain: { ...oddValue, seals: oddValue } },
        oilSpace: oddValue,
      }
      const data = sheet({
        ...oddValue,
        gearcases: { rear },
        overrides: [{ when: 'market NO', set: { [`/${key}`]: '1 L' } }],
      })
      expect(codes(data).map(([code]) => code)).toContain('spec/unknown-key')
    }
  })

  test('a cycle, and things in the place of texts', () => {
    const selfReference: { self?: unknown } = {}
    selfReference.self = selfReference
    expect(codes(sheet({ gearcases: selfReference })).map(([code]) => code)).toContain('spec/not-plain-data')
    for (const oddValue of [null, 3, true, [], [[]], { kind: [] }, { kind: 'nominal' }]) {
      expect(withMass(oddValue).ok).toBe(false)
      const found = parseSpecSheet(
        sheet({
          machine: oddValue,
          sources: oddValue,
          gearcases: { rear: oddValue },
          services: { change: oddValue },
          overrides: oddValue,
        }),
      )
      expect(found.ok).toBe(false)
    }
  })

  test('data that was given stays as it was', () => {
    const data = sheet({
      source: 'p. 3',
      gearcases: { rear: { type: 'gearbox', oilSpace: { fill: '1 L' } } },
    })
    const before = JSON.stringify(data)
    expect(parseSpecSheet(data).ok).toBe(true)
    expect(JSON.stringify(data)).toBe(before)
  })
})

test('the work of patterns and reader does not explode on long texts that almost match', () => {
  const patterns = new Map(NOTATION_NAMES.map((name) => [name, new RegExp(patternOf(name), 'u')]))
  const started = performance.now()
  for (const { notation, text } of good) {
    const piece = text.slice(0, Math.max(1, Math.ceil(text.length / 2)))
    for (const longText of [
      text + ' '.repeat(300 - text.length),
      piece.repeat(300 / piece.length),
      `${'a '.repeat(149)}[`,
      `${text.slice(0, -1)}${', a'.repeat(80)}[`,
      '1'.repeat(300),
      '1 or '.repeat(60),
    ]) {
      patterns.get(notation)?.test(longText.slice(0, 300))
      readNotation(notation, longText.slice(0, 300))
    }
  }
  // 1,300 texts; with backtracking, a single text would take minutes.
  expect(performance.now() - started).toBeLessThan(60_000)
})
