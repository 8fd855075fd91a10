import fc from 'fast-check'
import { expect, it } from 'vitest'
import { applyPatch, type PatchOperation } from '../../src/base/applyPatch.js'
import { joinPointer } from '../../src/base/pointers.js'
import { en } from '../../src/message/en/index.js'
import { UNITS_BY_MEASURE } from '../../src/quantity/unit.js'
import { remainingStock } from '../../src/service/remainingStock.js'
import { findLeaves } from '../../src/spec/findLeaves.js'
import { renderHtml, renderMarkdown, renderText } from '../../src/v1/card.js'
import { renderMessage } from '../../src/v1/message.js'
import { checkDocuments } from '../../src/v1/rules.js'
import { kitContents } from '../../src/v1/service.js'
import { parseDocument, resolveLeaf, type SpecSheet } from '../../src/v1/spec.js'
import { cases, law } from '../support/law.js'
import { cardOf, planRequest, requestExample, TODAY } from '../support/planExample.js'
import { readExample } from '../support/readExample.js'

// Every document with a valid shape can be checked and planned: the smallest and largest numbers, figures, periods and
// dates, one or two of them anywhere in a good set. Rules may report them; nothing may fail.

/** The machine whose finished record is among the examples. */
const RECORDED = 'tind-4'

const NUMBERS = [0, 5e-324, 1e-9, 0.123456789, 1, 9999, 1e9]
const FIGURES = ['0', '0.000001', '1', '999999', '999999999', '999999999.999999']
const PERIODS = ['P0D', 'P1D', 'P9999999Y9999999M9999999W9999999D']
const DATES = ['0001-01-01', '2000-02-29', '9999-12-31']

type Part = 'sheet' | 'log' | 'toolbox' | 'stock' | 'record'

interface Leaf {
  readonly part: Part
  readonly path: string
  readonly values: readonly (string | number)[]
}

const UNITS = Object.values(UNITS_BY_MEASURE).flat()

function extremesOf(value: unknown): readonly (string | number)[] {
  if (typeof value === 'number') return NUMBERS
  if (typeof value !== 'string') return []
  if (/^[0-9]+(\.[0-9]+)?$/.test(value)) return FIGURES
  if (/^P[0-9]/.test(value)) return PERIODS
  return /^[0-9]{4}-[0-9]{2}-[0-9]{2}$/.test(value) ? DATES : []
}

function* walk(
  value: unknown,
  path: readonly string[] = [],
): Generator<readonly [path: string, value: unknown]> {
  yield [joinPointer(path), value]
  if (typeof value === 'object' && value !== null)
    for (const [key, inner] of Object.entries(value)) yield* walk(inner, [...path, key])
}

/** The good sets, with the facts of the day and the record of the only machine that has one. */
function goodSet(folder: string) {
  const { sheet, log, toolbox, stock, ...day } = requestExample(folder)
  if (toolbox === undefined || stock === undefined) throw new Error(folder)
  const record = folder === RECORDED ? { record: readExample(folder, 'record') } : {}
  return { documents: { sheet, log, toolbox, stock, ...record }, day }
}

const sets = ['tind-4', 'acre-26', 'bud-3', 'reach-55', 'kvist-2'].map((folder) => {
  const leaves = Object.entries(goodSet(folder).documents).flatMap(([part, document]) =>
    [...walk(document)].map(
      ([path, value]): Leaf => ({ part: part as Part, path, values: extremesOf(value) }),
    ),
  )
  return { folder, leaves: leaves.filter(({ values }) => values.length > 0) }
})

const changed = fc.constantFrom(...sets).chain(({ folder, leaves }) => {
  const change = fc.constantFrom(...leaves).chain(({ part, path, values }) =>
    fc.record({
      part: fc.constant(part),
      path: fc.constant(path),
      value: fc.constantFrom(...values),
    }),
  )
  return fc.record({ folder: fc.constant(folder), changes: fc.array(change, { minLength: 1, maxLength: 2 }) })
})

const named = <T>(document: T) => [{ name: 'any', document }]

interface Change {
  readonly part: Part
  readonly path: string
  readonly op?: 'remove' | 'add'
  readonly value?: unknown
}

/** Checks, plans and prints a set with changes; returns false if a changed document cannot be read. */
function runAllFunctions(folder: string, changes: readonly Change[], mayRefuse = false): boolean {
  const { documents: good, day } = goodSet(folder)
  let documents = good
  for (const { part, path, op = 'replace', value } of changes) {
    const operation: PatchOperation = op === 'remove' ? { op, path } : { op, path, value }
    let changed: unknown
    try {
      changed = applyPatch(documents[part], [operation])
    } catch {
      // an earlier change removed the place
      return false
    }
    const read = parseDocument('any', changed)
    if (!read.ok) return false
    documents = { ...documents, [part]: read.value }
  }
  const { record, ...rest } = documents
  const planned = planRequest({ ...day, ...rest })
  if (!planned.ok) {
    if (!mayRefuse) throw new Error(JSON.stringify(planned.findings))
    // if no visit can be planned from a sheet, the findings say why
    expect(planned.findings.map(({ severity }) => severity)).toContain('error')
    for (const finding of planned.findings)
      expect(renderMessage(finding, en)).not.toMatch(/NaN|Infinity|undefined|\[object/)
    return false
  }
  const plan = { ...planned.value, findings: planned.findings }
  const card = cardOf(plan)
  for (const print of [renderText, renderMarkdown, renderHtml])
    expect(print(card)).not.toMatch(/NaN|Infinity|undefined|\[object/)
  const set = {
    sheets: named(rest.sheet),
    logs: named(rest.log),
    toolboxes: named(rest.toolbox),
    stocks: named(rest.stock),
    procedures: [],
    records: record === undefined ? [] : named(record),
  }
  const findings = checkDocuments(set, { today: TODAY })
  for (const finding of [...findings, ...plan.findings])
    expect(renderMessage(finding, en)).not.toMatch(/NaN|Infinity|undefined|\[object/)
  const outputs = [plan, kitContents(plan), findings, remainingStock(rest.stock, plan)]
  for (const [path, value] of walk(outputs))
    if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${path} is ${value}`)
  return true
}

it.each<readonly [string, readonly Change[]]>([
  ['tind-4', [{ part: 'stock', path: '/containers/quart-80w-90/size/value', value: 5e-324 }]],
  ['tind-4', [{ part: 'stock', path: '/containers/quart-80w-90/size/value', value: 1e9 }]],
  ['tind-4', [{ part: 'toolbox', path: '/wrenches/small-click/scales/0/lowest', value: 1e9 }]],
  [
    'acre-26',
    [{ part: 'sheet', path: '/gearcases/hub/oilSpace/fill/drainAndRefill/value', value: '999999999' }],
  ],
  ['bud-3', [{ part: 'toolbox', path: '/wrenches/small-click/calibration/date', value: '9999-12-31' }]],
  ['bud-3', [{ part: 'toolbox', path: '/wrenches/half-inch-click/scales/1/highest', value: 5e-324 }]],
  [
    'bud-3',
    [
      { part: 'sheet', path: '/gearcases/rear/openings/fill/tightening/torque/value', value: '0' },
      { part: 'toolbox', path: '/wrenches/small-click/scales/1/lowest', value: 5e-324 },
    ],
  ],
])('found by the law: %s, %j', (folder, changes) => {
  expect(runAllFunctions(folder, changes)).toBe(true)
})

it('every set of readable documents is checked, planned and printed, whatever its numbers (law)', () => {
  expect(sets.map(({ leaves }) => leaves.length).every((count) => count > 50)).toBe(true)
  let worked = 0
  law(30, changed, ({ folder, changes }) => {
    if (runAllFunctions(folder, changes)) worked += 1
  })
  expect(worked).toBeGreaterThan(cases(20))
})

/** The places where a value can be replaced, removed, misnamed or overridden by a leaf of any kind. */
const restructured = fc.constantFrom(...sets).chain(({ folder }) => {
  const { documents } = goodSet(folder)
  const places = Object.entries(documents).flatMap(([part, document]) =>
    [...walk(document)].slice(1).map(([path, value]) => ({ part: part as Part, path, value })),
  )
  const leaves = findLeaves(documents.sheet)
  const inSheet = places.filter(({ part }) => part === 'sheet')
  const values = fc.oneof(
    fc.constantFrom<unknown>(
      'nowhere',
      'not stated',
      [],
      {},
      true,
      { kind: 'not stated' },
      'kgf.m',
      '+',
      'M18x1.5',
    ),
    fc.constantFrom(...UNITS),
    fc.constantFrom(...inSheet).map(({ value }) => value),
  )
  const remove = fc.constantFrom(...places).map(({ part, path }): Change => ({ part, path, op: 'remove' }))
  const put = fc
    .tuple(fc.constantFrom(...places), values)
    .map(([{ part, path }, value]): Change => ({ part, path, value }))
  const override = fc
    .tuple(fc.constantFrom(...leaves), fc.constantFrom(...leaves), fc.constantFrom(...UNITS), fc.boolean())
    .map(([at, { kind, leaf }, unit, other]): Change => {
      const to = other && 'unit' in leaf ? { ...leaf, unit } : leaf
      const set = [{ kind, path: at.path, to }]
      return { part: 'sheet', path: '/overrides', op: 'add', value: [{ when: {}, set }] }
    })
  const change = fc.oneof(remove, put, override)
  return fc.record({ folder: fc.constant(folder), changes: fc.array(change, { minLength: 1, maxLength: 3 }) })
})

it.each([
  ['a refill in kgf·m', 'tind-4', '/gearcases/front/oilSpace/fill/drainAndRefill', 'kgf.m'],
  ['minutes in kilograms', 'reach-55', '/gearcases/axle/oilSpace/fill/level/minutesAfterStop', 'kg'],
])('an override that cannot be what its place needs is not used: %s', (_name, folder, path, unit) => {
  const to = { kind: 'nominal', value: '5', unit }
  const value = [{ when: {}, set: [{ kind: 'value', path, to }] }]
  expect(runAllFunctions(folder, [{ part: 'sheet', path: '/overrides', op: 'add', value }])).toBe(true)
  const { sheet, log } = requestExample(folder)
  const resolved = resolveLeaf({ ...sheet, overrides: value } as SpecSheet, log.identity, 'value', path)
  expect(resolved.kind).toBe('cannot tell')
})

it('whatever can be read can be checked, planned and printed (law)', () => {
  let worked = 0
  law(40, restructured, ({ folder, changes }) => {
    if (runAllFunctions(folder, changes, true)) worked += 1
  })
  expect(worked).toBeGreaterThan(cases(10))
})
