import { describe, expect, test } from 'vitest'
import { applyPatch } from '../../src/base/applyPatch.js'
import type { Params } from '../../src/base/finding.js'
import type { Say } from '../../src/message/catalogue.js'
import { specTexts } from '../../src/message/en/spec.js'
import type { SpecCodes } from '../../src/spec/codes.js'
import { judgeFacts } from '../../src/spec/judgeFacts.js'
import { judgePart } from '../../src/spec/judgePart.js'
import { findCandidates } from '../../src/spec/resolveVariant.js'
import {
  type Condition,
  type Identity,
  parseDocument,
  parseDocumentText,
  parseHistory,
  resolveLeaf,
  resolveVariant,
  type SpecSheet,
  type Variant,
} from '../../src/v1/spec.js'
import { SHAPE_MISTAKES } from '../schema/shapeMistakes.js'
import { readFixture } from '../support/fixtures.js'

const say: Say = {
  number: String,
  quantity: (value) => JSON.stringify(value),
  date: (value) => value,
  list: (items) => items.join(', '),
  count: (value, candidate, other) => `${value} ${value === 1 ? candidate : other}`,
  reason: (value) => JSON.stringify(value),
}
const render = ({ code, params }: { readonly code: string; readonly params: Params }) =>
  specTexts[code as keyof SpecCodes](params as never, say)

const sheetOf = (variants: Record<string, Variant>) => ({
  machine: { make: 'Hallbrekka', model: 'Tind', type: 'carrier', variants, axles: {}, supports: {} },
})
const twoOverrides = sheetOf({
  early: { name: 'early', when: { modelYears: { to: 2019 } } },
  late: { name: 'late', when: { modelYears: { from: 2020, to: 2025 } } },
})
const judge = (condition: Condition, identity: Identity) =>
  judgeFacts(condition, identity, findCandidates(twoOverrides, identity)).reasons
const cover = readFixture('cover-no-drain.sheet.json') as unknown as SpecSheet
const refill = '/gearcases/rear/oilSpace/fill/drainAndRefill'
const resolve = (identity: Identity, ...patch: Parameters<typeof applyPatch>[1]) => {
  const found = resolveLeaf(applyPatch(cover, patch) as SpecSheet, identity, 'value', refill)
  return found.kind === 'cannot tell'
    ? found.candidates.flatMap(({ trace }) => trace.reasons)
    : found.trace.reasons
}

const allTexts = [
  ...SHAPE_MISTAKES.flatMap(
    ({ of, patch }) => parseDocument('any', applyPatch(readFixture(of), patch)).findings,
  ),
  ...[
    '[',
    '{',
    '{a',
    '{"a" 1',
    '[1 2',
    '{"a":1 2',
    '1 2',
    '"',
    '"\\x"',
    '"\n"',
    '[1,]',
    '{"a":1,"a":2}',
    '['.repeat(99),
  ].flatMap((text) => parseDocumentText('any', text).findings),
  // A history with each problem of a line, and one that is cut off.
  ...[
    'two',
    '{"op":"add","op":"add"}',
    '['.repeat(99),
    '{"op":"remove","path":"/use"}',
    '{"op":"add","path":"/id","value":"three"}',
    '{"op":"add","path":"/records/0","value":{}}',
    '{"op":"add","path":"/identity","value":{}}',
    '{"op":"add","path":"/us',
  ].flatMap((line) => parseHistory(['{"identity":{},"records":[]}', line]).findings),
  // Short notation.
  ...['22 lb', '450 ml', '20-', 'not known', '20 N·m [p. 3', '30 N·m, very dry', '1,250 N·m'].flatMap(
    (text) =>
      parseDocument(
        'any',
        applyPatch(readFixture('cover-no-drain.sheet.json'), [
          { op: 'replace', path: '/gearcases/rear/openings/filler/tightening', value: text },
        ]),
      ).findings,
  ),
  ...[undefined, () => 1, Symbol('s'), 1n, Number.NaN, new Date(0), new Array(3), 'x'.repeat(30_000)].flatMap(
    (note) => parseDocument('any', { ...readFixture('full.stock.json'), header: note }).findings,
  ),
  ...[
    resolveVariant(twoOverrides, {}),
    resolveVariant(twoOverrides, { modelYear: 2019 }),
    resolveVariant(twoOverrides, { modelYear: 2026 }),
    resolveVariant(twoOverrides, { variant: 'late' }),
    resolveVariant(twoOverrides, { variant: 'late', modelYear: 2019 }),
    resolveVariant(twoOverrides, { variant: 'late', modelYear: 2026 }),
    resolveVariant(twoOverrides, { variant: 'other' }),
    resolveVariant(sheetOf({}), {}),
    resolveVariant(sheetOf({}), { variant: 'other' }),
    resolveVariant(sheetOf({ one: { name: 'one' } }), {}),
    resolveVariant(sheetOf({ one: { name: 'one' }, other: { name: 'other' } }), {}),
  ].flatMap((verdict) => verdict.reasons),
  ...judge(
    {
      variants: ['late'],
      market: ['NO'],
      modelYears: { from: 2020 },
      serials: { prefix: 'K', from: '10', to: '20' },
    },
    { variant: 'late', market: 'NO', modelYear: 2021, serial: 'K15' },
  ),
  ...judge(
    { variants: [], market: [], modelYears: { to: 2020 }, serials: { prefix: 'K' } },
    { variant: 'late', market: 'NO', modelYear: 2021, serial: 'L1' },
  ),
  ...judge(
    { variants: ['early'], market: ['SE'], serials: { from: '10' } },
    { variant: 'late', market: 'NO', serial: '09' },
  ),
  ...judge({ market: ['no'], serials: { prefix: 'K', from: '10' } }, { market: 'NO', serial: 'X' }),
  ...judge({ serials: { to: '1x' } }, { serial: 'X' }),
  ...judge({ serials: { prefix: 'K' } }, { serial: 'X' }),
  ...judge({ serials: { from: '1' } }, { serial: 'X' }),
  ...judge({ variants: ['early'], market: ['NO'], modelYears: { to: 1 }, serials: { prefix: 'K' } }, {}),
  ...judgePart(cover, {}, '/gearcases/rear').reasons,
  ...judgePart(cover, { market: 'FI' }, '/gearcases/rear/covers/side-cover').reasons,
  ...resolve({ market: 'FI', modelYear: 2028 }),
  ...resolve({ market: 'FI' }),
  ...resolve({ market: 'NO' }),
  ...resolve(
    {},
    {
      op: 'replace',
      path: '/overrides/0/set/0/to',
      value:
        cover.gearcases['rear']?.oilSpace.kind === 'own'
          ? cover.gearcases['rear'].oilSpace.fill.drainAndRefill
          : null,
    },
  ),
  ...resolve(
    { market: 'FI', modelYear: 2028 },
    { op: 'add', path: '/overrides/-', value: cover.overrides?.[0] },
  ),
  ...resolve(
    { market: 'FI', modelYear: 2028 },
    { op: 'replace', path: '/overrides/0/set/0/kind', value: 'place' },
  ),
  ...resolve({ market: 'NO' }, { op: 'remove', path: refill }),
]

describe('texts', () => {
  const texts = [...new Set(allTexts.map(render))]

  test.each(texts)('%s', (text) => {
    expect(text).toMatch(/^[A-Z0-9"½-].*[.?]$/s)
    expect(text).not.toMatch(/undefined|NaN\b|\[object|\.\.| {2}| \./)
  })

  test('nearly every code of the module occurred', () => {
    const codes = new Set(allTexts.map(({ code }) => code))
    // Other tests cover too much data, YAML and tables.
    const unusedCodes = Object.keys(specTexts).filter((code) => !codes.has(code))
    expect(unusedCodes.filter((code) => !/yaml|table/.test(code))).toEqual([
      'spec/too-large',
      'spec/more-mistakes',
    ])
  })

  test('the sentences of mistakes that people make, read as a reader would', () => {
    const sentence = (of: string, path: string, value: unknown) =>
      parseDocument('any', applyPatch(readFixture(of), [{ op: 'replace', path, value }])).findings.map(render)
    const hubFile = 'hub-reduction.sheet.json'
    const dryFillPath = '/gearcases/hub/oilSpace/fill/dryFill'
    expect(sentence(hubFile, `${dryFillPath}/value`, '0,80')).toEqual([
      'Figure "0,80" has a decimal comma. Write "0.80".',
    ])
    expect(sentence(hubFile, `${dryFillPath}/value`, 0.8)).toEqual([
      'Expected a figure in quotes, found the number 0.8, which loses printed zeros. Write it as printed.',
    ])
    expect(sentence(hubFile, '/version', '1.4')).toEqual(['Expected version 1.0, found 1.4.'])
    expect(sentence(hubFile, '/gearcases/hub/access', { kind: 'raised', suports: ['axle-middle'] })).toEqual([
      'Unknown key "suports". Did you mean "supports"?',
    ])
  })
})
