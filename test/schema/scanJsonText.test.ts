import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { joinPointer } from '../../src/base/pointers.js'
import { scanJsonText } from '../../src/schema/scanJsonText.js'
import { parseDocumentText } from '../../src/v1/spec.js'
import { law } from '../support/law.js'

const parses = (text: string): boolean => {
  try {
    JSON.parse(text)
    return true
  } catch {
    return false
  }
}

describe('what is JSON', () => {
  // Each by RFC 8259, sections 2 to 7.
  test.each([
    ['null'],
    [' [1, -0, 0.5, 1e5, 1E+5, 1e-5, -10.25e0]\r\n\t'],
    ['{"a":{"b":[{}, []]},"":"" }'],
    ['"\\u00e9\\n\\\\\\/\\"\u2028é"'],
  ])('%s', (text) => {
    expect(parses(text)).toBe(true)
    expect(scanJsonText(text)).toEqual({ repeatedKeys: [] })
  })

  test.each([
    ['', 0, 'value'],
    ['  ', 2, 'value'],
    ['nul', 0, 'value'],
    ['[01]', 2, 'comma-or-bracket'],
    ['[1.]', 2, 'comma-or-bracket'],
    ['[.5]', 1, 'value'],
    ['[+1]', 1, 'value'],
    ['[1,]', 3, 'value'],
    ['[1 2]', 3, 'comma-or-bracket'],
    ['{"a":1,}', 7, 'key'],
    ["{'a':1}", 1, 'key'],
    ['{a:1}', 1, 'key'],
    ['{"a" 1}', 5, 'colon'],
    ['{"a":1 "b":2}', 7, 'comma-or-brace'],
    ['{"a":1]', 6, 'comma-or-brace'],
    ['{"a":}', 5, 'value'],
    ['{} {}', 3, 'end'],
    ['1 // note', 2, 'end'],
    ['"a', 2, 'closing-quote'],
    ['"a\\', 2, 'escape'],
    ['"\\x"', 1, 'escape'],
    ['"\\u12g4"', 1, 'escape'],
    ['"line\nend"', 5, 'no-control-character'],
    ['{"tab\t":1}', 5, 'no-control-character'],
    ['NaN', 0, 'value'],
    ['[Infinity]', 1, 'value'],
    ['\u00a0[]', 0, 'value'],
  ])('%j breaks off', (text, offset, needs) => {
    expect(parses(text)).toBe(false)
    expect(scanJsonText(text).syntaxError).toEqual({ offset, needs })
  })

  test('line and column are those that an editor shows', () => {
    const { findings } = parseDocumentText('any', '{\n  "kind": "stock",\n  "version": 1.0.0\n}', {
      name: 's.json',
    })
    expect(findings).toEqual([
      {
        code: 'spec/not-json',
        severity: 'error',
        document: { kind: 'text', name: 's.json' },
        path: '',
        params: { line: 3, column: 17, needs: 'comma-or-brace', found: '.' },
      },
    ])
  })

  test('a byte order mark before the text is passed over', () => {
    expect(parseDocumentText('any', '\uFEFF{}').findings.map((finding) => finding.code)).toEqual([
      'spec/missing-key',
    ])
  })
})

describe('repeated keys', () => {
  test('in one object, also written as an escape; not in two', () => {
    const pointers = (text: string) =>
      scanJsonText(text).repeatedKeys.map(({ tokens }) => joinPointer(tokens))
    expect(pointers('{"a":1,"a":2}')).toEqual(['/a'])
    expect(pointers('{"a":1,"\\u0061":2,"a":3}')).toEqual(['/a', '/a'])
    expect(pointers('[{"a":1},{"a":1}]')).toEqual([])
    expect(pointers('{"x":[0,{"a/b":{"c":1,"c":1}}],"y":{"x":1}}')).toEqual(['/x/1/a~1b/c'])
    expect(pointers('{"__proto__":1,"__proto__":2}')).toEqual(['/__proto__'])
  })

  test('is a finding beside the others', () => {
    const text = '{"kind":"toolbox","version":"1.0","id":"box","id":"other","name":""}'
    const { ok, findings } = parseDocumentText('any', text)
    expect(ok).toBe(false)
    expect(findings[0]).toMatchObject({
      code: 'spec/duplicate-key',
      path: '/id',
      document: { kind: 'toolbox', id: 'other' },
      params: { key: 'id' },
    })
    expect(findings.map((finding) => finding.code)).toContain('spec/empty-text')
  })

  test('law: as many as a key is repeated, counted on a model', () => {
    // A model of a text that may repeat keys: objects as lists of pairs.
    type Model = number | readonly Model[] | { readonly pairs: readonly (readonly [string, Model])[] }
    const key = fc.constantFrom('a', 'b', 'a/b', '~', '"', '\\', 'é', '')
    const { model } = fc.letrec<{ model: Model }>((tie) => ({
      model: fc.oneof(
        { depthSize: 'small', withCrossShrink: true },
        fc.nat(9),
        fc.array(tie('model'), { maxLength: 4 }),
        fc.record({ pairs: fc.array(fc.tuple(key, tie('model')), { maxLength: 5 }) }),
      ),
    }))
    const write = (value: Model): string => {
      if (typeof value === 'number') return String(value)
      if ('pairs' in value)
        return `{${value.pairs.map(([name, inner]) => `${JSON.stringify(name)}: ${write(inner)}`).join(',')}}`
      return `[${value.map(write).join(' ,')}]`
    }
    const count = (value: Model): number => {
      if (typeof value === 'number') return 0
      if (!('pairs' in value)) return value.reduce((sum: number, inner) => sum + count(inner), 0)
      const ownCount = value.pairs.length - new Set(value.pairs.map(([name]) => name)).size
      return value.pairs.reduce((sum, [, inner]) => sum + count(inner), ownCount)
    }
    law(200, model, (value) => {
      const scan = scanJsonText(write(value))
      if (scan.tooDeep !== undefined) return
      expect(scan.syntaxError).toBe(undefined)
      expect(scan.repeatedKeys).toHaveLength(count(value))
    })
  })
})

test('law: accepts what JSON.parse accepts, and nothing else', () => {
  const nearJson = fc
    .tuple(
      fc.json({ maxDepth: 3 }),
      fc.nat(),
      fc.constantFrom('', '"', '{', ']', ',', '0', '\\', 'e', '\n', '\u0001', '.', '-', ':'),
    )
    .map(([text, place, piece]) => {
      const at = place % (text.length + 1)
      return text.slice(0, at) + piece + text.slice(at + (place % 2))
    })
  law(2000, fc.oneof(nearJson, fc.json(), fc.string()), (text) => {
    const scan = scanJsonText(text)
    if (scan.tooDeep === undefined) expect(scan.syntaxError === undefined).toBe(parses(text))
  })
})

// Quadratic growth would take hours here, so the time limit of the test would fail it.
test('a text of 14 MB is scanned to its end', () => {
  const text = `[${'{"key":"\\"value\\"","other":[1,2.5]},'.repeat(400_000)}0]`
  expect(text.length).toBeGreaterThan(14_000_000)
  const { syntaxError, tooDeep, repeatedKeys } = scanJsonText(text)
  expect([syntaxError, tooDeep, repeatedKeys]).toEqual([undefined, undefined, []])
})
