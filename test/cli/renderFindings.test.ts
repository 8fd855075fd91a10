import { describe, expect, it } from 'vitest'
import type { Finding } from '../../src/base/finding.js'
import { en as words } from '../../src/cli/message/en/index.js'
import { readYaml } from '../../src/cli/readYaml.js'
import { isAtLevel, locateFindings, renderFindings } from '../../src/cli/renderFindings.js'
import { en } from '../../src/message/en/index.js'
import { parseDocumentText } from '../../src/v1/spec.js'

const finding = (change: Partial<Finding> = {}): Finding => ({
  code: 'spec/unknown-key',
  severity: 'warning',
  document: { kind: 'stock', name: 'b.json' },
  path: '/x',
  params: { key: 'x', known: [] },
  ...change,
})

const set = (texts: Readonly<Record<string, string>>) => ({
  name: 'set',
  set: { sheets: [], logs: [], toolboxes: [], stocks: [], procedures: [], records: [] },
  findings: [],
  texts: new Map(Object.entries(texts)),
})

describe('levels', () => {
  it.each([
    ['error', 'error', true],
    ['error', 'warning', true],
    ['error', 'info', true],
    ['warning', 'error', false],
    ['warning', 'warning', true],
    ['warning', 'info', true],
    ['info', 'error', false],
    ['info', 'warning', false],
    ['info', 'info', true],
  ] as const)('a finding of %s counts at %s: %s', (severity, level, counts) => {
    expect(isAtLevel(finding({ severity }), level)).toBe(counts)
    expect(isAtLevel(finding({ severity, waived: { path: '/waivers/0', reason: 'r' } }), level)).toBe(false)
  })
})

describe('order', () => {
  it('is by file, line, gravity, pointer and code, whatever came first', () => {
    const texts = { 'a.json': '{"y": 1,\n"x": 2}', 'b.json': '{"x": 1}' }
    const sorted = [
      finding({ document: { kind: 'text' } }),
      finding({ document: { kind: 'stock', name: 'a.json' }, path: '/y' }),
      finding({ document: { kind: 'stock', name: 'a.json' }, path: '/x' }),
      finding({ severity: 'error', path: '/x', code: 'spec/b' }),
      finding({ severity: 'warning', path: '/x', code: 'spec/a' }),
      finding({ severity: 'warning', path: '/x', code: 'spec/b' }),
      finding({ severity: 'warning', path: '/x/1', code: 'spec/a' }),
      finding({ severity: 'info', path: '/x' }),
    ]
    const shuffledFindings = [5, 0, 7, 3, 1, 6, 2, 4].flatMap((place) => sorted[place] ?? [])
    const place = ({ document, path, severity, code }: Finding) => [document.name, path, severity, code]
    expect(locateFindings(shuffledFindings, [set(texts)], { words, catalogue: en }).map(place)).toEqual(
      sorted.map(place),
    )
  })
})

describe('place', () => {
  it.each([
    ['{"kind": "stock",\n  "seals": [1,,2]}', { line: 2, column: 15 }],
    ['{"kind": ', { line: 1, column: 10 }],
    ['', { line: 1, column: 1 }],
    ['kind: stock\nseals: [1, 2\nname: x\n', { line: 3, column: 1 }],
    ['kind: stock\nseals: &x 1\nname:\n  - *x\n', { line: 4, column: 5 }],
    ['{"kind": "stock",\n "kind": "stock"}', { line: 2, column: 2 }],
    ['kind: stock\nname: x\nkind: stock\n', { line: 3, column: 1 }],
  ])('%j: the finding is at the position where reading stopped', (text, position) => {
    const name = text.startsWith('kind') ? 'a.yaml' : 'a.json'
    const { findings } = name === 'a.yaml' ? readYaml(text, name) : parseDocumentText('any', text, { name })
    expect(
      locateFindings(findings.slice(0, 1), [set({ [name]: text })], { words, catalogue: en })[0]?.position,
    ).toEqual(position)
  })
})

describe('text', () => {
  const text = (candidate: Finding) =>
    renderFindings(locateFindings([candidate], [], { words, catalogue: en }), 'text', {
      words,
      catalogue: en,
    })

  it('without a file names the kind of document, without a place no place', () => {
    expect(text(finding({ document: { kind: 'toolbox' }, path: '' }))).toMatch(
      /^toolbox: warning: .+\n {4}spec\/unknown-key\n$/,
    )
  })

  it('says what is waived, and why', () => {
    expect(text(finding({ waived: { path: '/waivers/0', reason: 'checked by phone' } }))).toContain(
      '(waived: checked by phone)',
    )
  })

  it('lets no foreign word move the cursor or forge a line', () => {
    const hostileText = '\u001b[2J\nfake.json:1:1: error: \u202egpj\u009b1m'
    const findingText = text(
      finding({
        document: { kind: 'stock', name: hostileText },
        path: `/${hostileText}`,
        waived: { path: '', reason: hostileText },
      }),
    )
    expect(findingText.split('\n')).toHaveLength(3)
    expect(findingText.replaceAll('\n', '')).not.toMatch(/\p{Cc}|[\u202a-\u202e]/u)
  })

  it('is empty where there is nothing', () => {
    expect(renderFindings([], 'text', { words, catalogue: en })).toBe('')
    expect(JSON.parse(renderFindings([], 'json', { words, catalogue: en }))).toEqual({
      kind: 'findings',
      version: '1.0',
      findings: [],
    })
  })
})
