import { describe, expect, test } from 'vitest'
import { applyPatch } from '../../src/base/applyPatch.js'
import { readPointer } from '../../src/base/pointers.js'
import { findLeaves, findStatedValues } from '../../src/spec/findLeaves.js'
import { diffSheets, resolveLeaf, type SpecSheet } from '../../src/v1/spec.js'
import { readFixture, readGoodDocuments } from '../support/fixtures.js'

const sheets = readGoodDocuments()
  .filter(({ value }) => value['kind'] === 'spec-sheet')
  .map(({ file, value }) => [file, value as unknown as SpecSheet] as const)
const taper = readFixture('taper-plug.sheet.json') as unknown as SpecSheet
const cover = readFixture('cover-no-drain.sheet.json') as unknown as SpecSheet

describe('findLeaves', () => {
  test('every leaf of the sheet with the taper plugs, listed by hand from the file', () => {
    expect(findLeaves(taper).map(({ kind, path }) => `${kind} ${path}`)).toEqual([
      'oils /gearcases/transfer/oilSpace/oils',
      'value /gearcases/transfer/oilSpace/fill/drainAndRefill',
      'drive /gearcases/transfer/openings/fill/drive',
      'tightening /gearcases/transfer/openings/fill/tightening',
      'seal /gearcases/transfer/openings/fill/seals/0',
      'place /gearcases/transfer/openings/fill/place',
      'drive /gearcases/transfer/openings/drain/drive',
      'tightening /gearcases/transfer/openings/drain/tightening',
      'seal /gearcases/transfer/openings/drain/seals/0',
      'place /gearcases/transfer/openings/drain/place',
      'drive /shields/belly/fasteners/drive',
      'tightening /shields/belly/fasteners/tightening',
      'place /shields/belly/place',
      'interval /services/transfer-oil/intervals/repeat',
    ])
  })

  test('leaves of overrides come last and name what they replace', () => {
    expect(findLeaves(cover).filter((found) => found.replaces !== undefined)[1]).toEqual({
      kind: 'tightening',
      path: '/overrides/0/set/1/to',
      replaces: '/gearcases/rear/openings/filler/tightening',
      leaf: {
        kind: 'torque',
        torque: { kind: 'nominal', value: '38', unit: 'N.m' },
        threadCondition: 'dry',
      },
    })
  })

  test.each(sheets)('law: each leaf of %s is where its path says and resolves', (_file, sheet) => {
    const leaves = findLeaves(sheet)
    expect(leaves.length).toBeGreaterThan(8)
    for (const { kind, path, leaf, replaces } of leaves) {
      expect(readPointer(sheet, path)).toBe(leaf)
      if (replaces === undefined)
        expect(['stated', 'not stated', 'cannot tell']).toContain(resolveLeaf(sheet, {}, kind, path).kind)
    }
  })

  test('misuse throws', () => {
    expect(() => findLeaves(undefined as never)).toThrow(TypeError)
    expect(() => findStatedValues(null as never)).toThrow(TypeError)
    const ring: Record<string, unknown> = {}
    ring['ring'] = ring
    expect(() => findStatedValues({ machine: { mass: ring } } as never)).toThrow(
      /^\/machine\/mass must be nested at most 32 levels deep/,
    )
    expect(() => findLeaves({ overrides: 5 } as never)).toThrow(/^sheet\.overrides must be a list, got 5/)
  })
})

test('findStatedValues: also inside leaves, listed by hand from the file', () => {
  const inBolts = '/gearcases/rear/covers/rear-cover/bolts/tightening'
  expect(findStatedValues(cover).map(({ path, value }) => `${path} ${value.unit}`)).toEqual([
    '/machine/mass kg',
    '/gearcases/rear/oilSpace/oils/choices/0/ambient degF',
    '/gearcases/rear/oilSpace/oils/choices/0/additive/volume mL',
    '/gearcases/rear/oilSpace/fill/drainAndRefill L',
    '/gearcases/rear/openings/filler/tightening/torque N.m',
    `${inBolts}/torque N.m`,
    `${inBolts}/stages/0 N.m`,
    `${inBolts}/stages/1 N.m`,
    `${inBolts}/thenAngle deg`,
    '/gearcases/rear/covers/rear-cover/seal/bead mm',
    '/gearcases/rear/covers/rear-cover/seal/cureBeforeOil min',
    '/gearcases/rear/covers/side-cover/bolts/tightening/torque N.m',
    '/overrides/0/set/0/to L',
    '/overrides/0/set/1/to/torque N.m',
  ])
})

describe('diffSheets', () => {
  const refill = '/gearcases/rear/oilSpace/fill/drainAndRefill'
  const change = (...patch: Parameters<typeof applyPatch>[1]) =>
    diffSheets(cover, applyPatch(cover, patch) as SpecSheet)

  test.each(sheets)('nothing differs between %s and itself', (_file, sheet) => {
    expect(diffSheets(sheet, sheet)).toEqual({ leaves: [], facts: [] })
  })

  test('a figure, its page alone, and a printed zero', () => {
    expect(change({ op: 'replace', path: `${refill}/value`, value: '2.4' })).toMatchObject({
      leaves: [
        { change: 'changed', kind: 'value', of: refill, from: { path: refill }, to: { path: refill } },
      ],
      facts: [],
    })
    expect(change({ op: 'replace', path: `${refill}/source/page`, value: '80' }).leaves).toMatchObject([
      { change: 'source only', of: refill },
    ])
    expect(change({ op: 'replace', path: `${refill}/value`, value: '2.30' }).leaves).toMatchObject([
      { change: 'changed', of: refill },
    ])
  })

  test('leaves that come and go', () => {
    const dryFillPath = '/gearcases/rear/oilSpace/fill/dryFill'
    const added = change({ op: 'add', path: dryFillPath, value: { kind: 'not stated' } })
    expect(added.leaves).toEqual([
      {
        change: 'added',
        kind: 'value',
        of: dryFillPath,
        to: { path: dryFillPath, leaf: { kind: 'not stated' } },
      },
    ])
    const withoutLeaf = change({ op: 'remove', path: '/overrides/0/set/3' })
    expect(withoutLeaf.leaves).toMatchObject([
      {
        change: 'removed',
        of: '/gearcases/rear/covers/rear-cover/seal',
        from: { path: '/overrides/0/set/3/to' },
      },
    ])
  })

  test('overrides are paired by their condition, whatever its order or theirs', () => {
    const otherOverride = {
      set: [{ kind: 'value', path: refill, to: { kind: 'nominal', value: '9', unit: 'L' } }],
      when: { market: ['IS'] },
    }
    const first = applyPatch(cover, [{ op: 'add', path: '/overrides/-', value: otherOverride }]) as SpecSheet
    const second = applyPatch(cover, [
      { op: 'add', path: '/overrides/0', value: otherOverride },
      {
        op: 'replace',
        path: '/overrides/1/when',
        value: { modelYears: { to: 2029, from: 2027 }, variants: ['limited'] },
      },
    ]) as SpecSheet
    expect(diffSheets(first, second)).toEqual({ leaves: [], facts: [] })
    const twoOverrides = applyPatch(first, [
      { op: 'add', path: '/overrides/-', value: otherOverride },
    ]) as SpecSheet
    expect(diffSheets(first, twoOverrides).leaves).toMatchObject([{ change: 'added', of: refill }])
  })

  test('facts outside leaves', () => {
    expect(
      change(
        { op: 'replace', path: '/gearcases/rear/openings/filler/name', value: 'level plug' },
        { op: 'remove', path: '/gearcases/rear/covers/rear-cover/magnet' },
        { op: 'add', path: '/gearcases/rear/yellowMetal', value: 'yes' },
      ),
    ).toEqual({
      leaves: [],
      facts: [
        {
          change: 'changed',
          path: '/gearcases/rear/openings/filler/name',
          from: 'filler plug',
          to: 'level plug',
        },
        { change: 'removed', path: '/gearcases/rear/covers/rear-cover/magnet', from: true },
        { change: 'added', path: '/gearcases/rear/yellowMetal', to: 'yes' },
      ],
    })
  })

  test('an invalid or too deep sheet is refused by the name of its argument', () => {
    const [sheet] = sheets.map(([, document]) => document)
    const ring: Record<string, unknown> = {}
    ring['one'] = ring['other'] = ring
    const nest = (levels: number): unknown => Array.from({ length: levels }).reduce((inner) => [inner], 1)
    const depthError = /^to must be nested at most 32 levels deep; parse the document first$/
    expect(() => diffSheets(null as never, sheet as never)).toThrow(/^from must be an object, got null/)
    expect(() => diffSheets(sheet as never, ring as never)).toThrow(depthError)
    expect(() => diffSheets(sheet as never, { machine: nest(9000) } as never)).toThrow(depthError)
    expect(() => diffSheets(sheet as never, { machine: nest(32) } as never)).toThrow(depthError)
    expect(diffSheets({ machine: nest(31) } as never, { machine: nest(31) } as never).facts).toEqual([])
  })

  test('law: facts added in one direction are removed in the other', () => {
    for (const [, from] of sheets)
      for (const [, to] of sheets) {
        const forwardChanges = diffSheets(from, to)
        const back = diffSheets(to, from)
        const count = (difference: typeof forwardChanges, kind: string) =>
          [...difference.leaves, ...difference.facts].filter((candidate) => candidate.change === kind).length
        expect(count(forwardChanges, 'added')).toBe(count(back, 'removed'))
        expect(count(forwardChanges, 'changed')).toBe(count(back, 'changed'))
        expect(count(forwardChanges, 'source only')).toBe(count(back, 'source only'))
      }
  })
})
