import fc from 'fast-check'
import { expect, test } from 'vitest'
import { applyPatch } from '../../src/base/applyPatch.js'
import { readPointer } from '../../src/base/pointers.js'
import { findLeaves } from '../../src/spec/findLeaves.js'
import { diffSheets, type SheetDifference, type SpecSheet } from '../../src/v1/spec.js'
import { law } from '../support/law.js'
import { readExample } from '../support/readExample.js'

const sheets = ['tind-4', 'acre-26', 'bud-3', 'kvist-2', 'reach-55'].map((folder) =>
  readExample(folder, 'sheet'),
)

/** Leaves of a sheet that state a page, each once. */
const pagesOf = (sheet: SpecSheet): readonly string[] => [
  ...new Set(
    findLeaves(sheet).flatMap(({ path }) =>
      typeof readPointer(sheet, `${path}/source/page`) === 'string' ? [path] : [],
    ),
  ),
]

const turn = ({ leaves, facts }: SheetDifference): SheetDifference => {
  const turned = {
    added: 'removed',
    removed: 'added',
    changed: 'changed',
    'source only': 'source only',
  } as const
  const swap = <Change extends { change: keyof typeof turned; from?: unknown; to?: unknown }>(
    change: Change,
  ) => {
    const { from, to, ...rest } = change
    return {
      ...rest,
      change: turned[change.change],
      ...(to === undefined ? {} : { from: to }),
      ...(from === undefined ? {} : { to: from }),
    } as unknown as Change
  }
  return { leaves: leaves.map(swap), facts: facts.map(swap) as SheetDifference['facts'] }
}
const byPlace = ({ leaves, facts }: SheetDifference) => ({
  leaves: [...leaves].sort((one, other) =>
    `${one.of}${one.change}` < `${other.of}${other.change}` ? -1 : 1,
  ),
  facts: [...facts].sort((one, other) => (one.path < other.path ? -1 : 1)),
})

test('pages that are changed are listed, each as a new source only, and nothing else (law)', () => {
  const drawn = fc
    .constantFrom(...sheets)
    .chain((sheet) =>
      fc.record({ sheet: fc.constant(sheet), paths: fc.subarray([...pagesOf(sheet)], { maxLength: 5 }) }),
    )
  law(60, drawn, ({ sheet, paths }) => {
    const changed = applyPatch(
      sheet,
      paths.map((path) => ({ op: 'replace', path: `${path}/source/page`, value: '9999' }) as const),
    ) as SpecSheet
    const { leaves, facts } = diffSheets(sheet, changed)
    expect(facts).toEqual([])
    expect(leaves.map(({ change }) => change)).toEqual(paths.map(() => 'source only'))
    expect(leaves.map(({ to }) => to?.path).sort()).toEqual([...paths].sort())
  })
})

test('the other way round it is the same, turned; a sheet does not differ from itself (law)', () => {
  law(25, fc.constantFrom(...sheets), fc.constantFrom(...sheets), (from, to) => {
    const forth = diffSheets(from, to)
    expect(byPlace(turn(diffSheets(to, from)))).toEqual(byPlace(forth))
    if (from === to) expect(forth).toEqual({ leaves: [], facts: [] })
  })
})
