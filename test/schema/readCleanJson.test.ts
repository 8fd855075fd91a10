import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readCleanJson } from '../../src/schema/readCleanJson.js'
import { parseDocumentText } from '../../src/v1/spec.js'
import { law } from '../support/law.js'
import { readExample } from '../support/readExample.js'

const nested = (depth: number): string => `${'['.repeat(depth)}${']'.repeat(depth)}`

describe('a text that needs no further look', () => {
  test.each([
    'null',
    'true',
    '-1.5e3',
    '"a: \\"b\\": \\\\"',
    '{"a":1,"b":{"a":2}}',
    '{"a:":[":",{"\\\\":1}]}',
    nested(32),
  ])('%s', (text) => {
    expect(readCleanJson(text)).toEqual(JSON.parse(text))
  })

  test.each([
    ['a key twice', '{"a":1,"a":1}'],
    ['a key twice, once escaped', '{"a":1,"\\u0061":1}'],
    ['a key twice, deep', '[{"x":[{"a":1,"b":2,"a":3}]}]'],
    ['a key that shadows a built-in', '{"__proto__":{}}'],
    ['infinity', '[1e999]'],
    ['too deep', nested(33)],
    ['a text that is too long', JSON.stringify('x'.repeat(20_001))],
    ['a key that is too long', JSON.stringify({ ['x'.repeat(20_001)]: 1 })],
    ['too many keys', JSON.stringify(Object.fromEntries(Array.from({ length: 5001 }, (_, n) => [n, n])))],
    ['not JSON', '{"a":1,}'],
    ['nothing', ''],
    ['a text that is scanned first', `[${' '.repeat(1_000_000)}]`],
  ])('%s is not', (_why, text) => {
    expect(readCleanJson(text)).toBeUndefined()
  })
})

/** With these spaces at its end, a text is too long for the short way. */
const SPACES = ' '.repeat(1_000_000)
const parseBothWays = (text: string) =>
  [parseDocumentText('any', text), parseDocumentText('any', text + SPACES)] as const

const KINDS = ['sheet', 'log', 'toolbox', 'stock'] as const
const texts = KINDS.map((kind) => JSON.stringify(readExample('tind-4', kind)))
const inserts = ['', '"', ',', '}', '{"a":1,"a":2},', '"id":"x",', '\\', '1e999', '"__proto__":1,']

test('law: both ways read the same', () => {
  law(
    40,
    fc.constantFrom(...texts),
    fc.nat(20_000),
    fc.constantFrom(...inserts),
    fc.nat(3),
    (text, place, insert, cut) => {
      const at = place % text.length
      const [first, second] = parseBothWays(text.slice(0, at) + insert + text.slice(at + cut))
      expect(first).toEqual(second)
    },
  )
  for (const text of texts) expect(parseBothWays(text)[0]).toEqual(parseBothWays(text)[1])
})

test('law: a repeated key is found by its colon', () => {
  law(300, fc.jsonValue({ maxDepth: 3 }), fc.string(), (value, key) => {
    const objectText = `{${JSON.stringify(key)}:${JSON.stringify(value)}}`
    expect(readCleanJson(`{${JSON.stringify(key)}:1,${objectText.slice(1)}`)).toBeUndefined()
    const read = readCleanJson(objectText)
    if (read !== undefined) expect(read).toEqual(JSON.parse(objectText))
    else expect(objectText).toMatch(/"(__proto__|prototype|constructor)"/)
  })
})
