import { describe, expect, it } from 'vitest'
import { Lexer } from 'yaml'
import { readYaml } from '../../src/cli/readYaml.js'
import { en } from '../../src/message/en/index.js'
import { renderMessage } from '../../src/v1/message.js'

const read = (text: string) => readYaml(text, 'a.yaml')
const problem = (text: string) => {
  const { ok, findings } = read(text)
  const [finding] = findings
  expect(ok).toBe(false)
  expect(findings).toHaveLength(1)
  expect(finding).toMatchObject({ code: 'spec/not-yaml', severity: 'error', document: { name: 'a.yaml' } })
  return finding === undefined ? '' : renderMessage(finding, en)
}

describe('YAML becomes plain data', () => {
  it('of lists, objects and quoted figures', () => {
    expect(read('a: "10.0"\nb: [1, two, null, true]\n')).toEqual({
      ok: true,
      value: { a: '10.0', b: [1, 'two', null, true] },
      findings: [],
    })
  })

  it('after a byte order mark, with Windows line ends', () => {
    expect(read('\uFEFFa: 1\r\nb: 2\r\n')).toMatchObject({ ok: true, value: { a: 1, b: 2 } })
  })

  it('where dates and the old words for yes and no stay texts', () => {
    expect(read('a: 2023-10-06\nb: yes\n')).toMatchObject({ value: { a: '2023-10-06', b: 'yes' } })
  })

  it('with `__proto__` as a key of its own, which the shape then refuses', () => {
    const result = read('__proto__: {polluted: true}\n')
    if (!result.ok) throw new Error('not read')
    expect(Object.keys(result.value as object)).toEqual(['__proto__'])
    expect(({} as { polluted?: true }).polluted).toBeUndefined()
  })
})

describe('a key that appears twice is a finding with its place', () => {
  it.each([
    ['at the top', 'a: 1\na: 2\n', ['/a']],
    ['within an object', 'x:\n  y:\n    a: 1\n    a: 2\n', ['/x/y/a']],
    ['within a list', '- {a: 1}\n- {a: 1, b: 2, a: 3}\n', ['/1/a']],
    ['at two places', 'a: {b: 1, b: 2}\nc: [{d: 1, d: 1}]\n', ['/a/b', '/c/0/d']],
    ['three times', 'a: 1\na: 2\na: 3\n', ['/a', '/a']],
    ['with a slash and a tilde', '"a/~b": 1\n"a/~b": 2\n', ['/a~1~0b']],
    ['as a number and a text', '1: a\n"1": b\n', ['/1']],
  ])('%s', (_where, text, paths) => {
    const { findings } = read(text)
    expect(findings.map(({ code, path }) => [code, path])).toEqual(
      paths.map((path) => ['spec/duplicate-key', path]),
    )
  })
})

describe('a file that is not read has a reason', () => {
  it('broken text', () => {
    expect(problem('a: [1, 2')).toMatch(/YAML/)
  })

  it('aliases, also in a small bomb', () => {
    expect(problem('a: &x [1]\nb: *x\n')).toMatch(/aliases/)
    const aliasBomb = [
      'a: &a [1,1]',
      ...'bcdefghij'.split('').map((key, place) => {
        const before = 'abcdefghi'.charAt(place)
        return `${key}: &${key} [*${before},*${before},*${before},*${before}]`
      }),
    ].join('\n')
    expect(problem(aliasBomb)).toMatch(/aliases/)
  })

  it('two documents in one file', () => {
    expect(problem('a: 1\n---\nb: 2\n')).toMatch(/document/)
  })

  it.each([
    ['lists in lists', `${'['.repeat(20_000)}${']'.repeat(20_000)}`],
    ['objects in objects', `${'{a: '.repeat(20_000)}1${'}'.repeat(20_000)}`],
    ['lists by dashes', `${'- '.repeat(20_000)}1`],
  ])('nesting without end: %s', (_what, text) => {
    const { ok, findings } = read(text)
    expect(ok).toBe(false)
    expect(findings).toMatchObject([{ code: 'spec/too-deep', params: { limit: 32 } }])
  })

  it('a text of more than two million characters, and not one of just two million', () => {
    const line = 'a: 1 #'
    const filled = (length: number) => `${line}${'x'.repeat(length - line.length)}`
    expect(read(filled(2_000_000))).toMatchObject({ ok: true, value: { a: 1 } })
    expect(read(filled(2_000_001))).toMatchObject({
      ok: false,
      findings: [{ code: 'spec/too-long', params: { length: 2_000_001, limit: 2_000_000 } }],
    })
  })

  it('400,001 words, signs and line ends, and not 400,000', () => {
    const lines = '- 1\n'.repeat(79_999)
    const marks = (text: string) => [...new Lexer().lex(text)].length
    const [atLimit, above] = [`${lines}- 1`, `${lines}- 1\n`]
    expect([marks(atLimit), marks(above)]).toEqual([400_000, 400_001])
    expect(read(atLimit)).toMatchObject({ ok: true, findings: [] })
    expect(read(above)).toMatchObject({
      ok: false,
      findings: [{ code: 'spec/yaml-too-large', params: { limit: 400_000 } }],
    })
  })

  it.each([
    ['60,000 anchors', Array.from({ length: 60_000 }, (_, at) => `k${at}: &a${at} v${at}`).join('\n')],
    ['a million list items', `[${'1,'.repeat(999_000)}1]`],
    ['200,000 keys with a comma too many', `{${'a b,'.repeat(490_000)}}`],
    ['two million line ends', '\n'.repeat(1_999_000)],
  ])('%s', (_what, text) => {
    expect(read(text).findings.map(({ code }) => code)).toEqual(['spec/yaml-too-large'])
  })

  it('a list or map as a key', () => {
    expect(problem('? [a, b]\n: 1\n')).toMatch(/key/)
    expect(problem('{{a: 1}: 2}')).toMatch(/key/)
  })

  it.each([
    ['brackets', `${'} '.repeat(900_000)}`],
    ['commas', `[${','.repeat(300_000)}]`],
    ['escapes', `a: "${'\\q'.repeat(900_000)}"`],
    ['directives without a document', '%A b\n'.repeat(60_000)],
  ])('the first of very many wrong %s, without reading the others', (_what, text) => {
    expect(problem(text)).toMatch(/line \d+, column \d+/)
  })

  it('50,000 warnings, each with its place', { timeout: 60_000 }, () => {
    const { ok, findings } = read('- a #b\n'.repeat(50_000))
    expect(ok).toBe(true)
    expect(findings).toHaveLength(50_000)
    expect(findings.at(-1)?.path).toBe('/49999')
  })
})
