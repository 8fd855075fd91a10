import { expect, expectTypeOf, test } from 'vitest'
import type { VolumeUnit } from '../../src/quantity/index.js'
import { findLeafRow, LEAF_TABLE, type LeafPlace, type LeafTableOf } from '../../src/spec/leafTable.js'
import type { Machine, SpecSheet } from '../../src/spec/specSheet.js'
import type { SpecValue } from '../../src/spec/specValue.js'

/** A sheet with a trial leaf: the capacity of the machine's cooler. */
interface TrialSheet extends SpecSheet {
  readonly machine: Machine & { readonly cooler?: SpecValue<VolumeUnit> }
}

test('a leaf without a row, a row without a leaf, and a row of another kind or measure do not compile', () => {
  // @ts-expect-error: the row of /machine/cooler is missing
  const incompleteTable: LeafTableOf<TrialSheet> = { ...LEAF_TABLE }
  const row = { kind: 'value', role: 'refill', measure: 'volume', read: 'machine' } as const
  const completeTable: LeafTableOf<TrialSheet> = { ...LEAF_TABLE, '/machine/cooler': row }
  // @ts-expect-error: the sheet has no such leaf
  const tableWithoutLeaf: LeafTableOf<SpecSheet> = { ...LEAF_TABLE, '/machine/cooler': row }
  // @ts-expect-error: a volume, not a mass
  const massTable: LeafTableOf<TrialSheet> = { ...LEAF_TABLE, '/machine/cooler': { ...row, measure: 'mass' } }
  // @ts-expect-error: a value, not a seal
  const sealTable: LeafTableOf<TrialSheet> = { ...LEAF_TABLE, '/machine/cooler': { ...row, kind: 'seal' } }
  const tableWithoutMeasure: LeafTableOf<TrialSheet> = {
    ...LEAF_TABLE,
    // @ts-expect-error: the measure of a value is not optional
    '/machine/cooler': { kind: 'value', role: 'refill', read: 'machine' },
  }
  for (const table of [completeTable, tableWithoutLeaf, massTable, sealTable, tableWithoutMeasure])
    expect(Object.keys(table)).toEqual([...Object.keys(incompleteTable), '/machine/cooler'])
  expectTypeOf<keyof LeafTableOf<TrialSheet>>().toEqualTypeOf<LeafPlace | '/machine/cooler'>()
})

test('the row of a place is found by its parts, and only for whole leaves', () => {
  const seal = ['gearcases', 'front', 'openings', 'drain', 'seals', '0']
  expect(findLeafRow(seal)).toMatchObject({ kind: 'seal', role: 'seal' })
  expect(findLeafRow([...seal, 'material'])).toBe(undefined)
  expect(findLeafRow(seal.slice(0, -1))).toBe(undefined)
  expect(findLeafRow(['machine', 'mass'])).toMatchObject({ kind: 'value', measure: 'mass' })
})
