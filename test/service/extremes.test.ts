import fc from 'fast-check'
import { expect, it } from 'vitest'
import { cardModel, renderText } from '../../src/card/index.js'
import { en } from '../../src/message/en/index.js'
import { planVisit } from '../../src/service/index.js'
import { applyPatch, joinPointer, parseDocument } from '../../src/spec/index.js'
import { requestExample } from '../support/planExample.js'

// What a document's shape lets through, a visit can be planned with: the smallest and the largest numbers, figures,
// periods and dates, one or two of them anywhere in a good set. The rules may find it odd; nothing may break.

const NUMBERS = [0, 5e-324, 1e-9, 0.123456789, 1, 9999, 1e9]
const FIGURES = ['0', '0.000001', '1', '999999', '999999999', '999999999.999999']
const PERIODS = ['P0D', 'P1D', 'P9999999Y9999999M9999999W9999999D']
const DATES = ['0001-01-01', '2000-02-29', '9999-12-31']

interface Leaf {
  readonly part: 'sheet' | 'log' | 'toolbox' | 'stock'
  readonly path: string
  readonly values: readonly (string | number)[]
}

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

const sets = ['tind-4', 'acre-26', 'bud-3', 'reach-55', 'kvist-2'].map((folder) => {
  const request = requestExample(folder)
  const leaves = (['sheet', 'log', 'toolbox', 'stock'] as const).flatMap((part) =>
    [...walk(request[part])].map(([path, value]): Leaf => ({ part, path, values: extremesOf(value) })),
  )
  return { folder, leaves: leaves.filter(({ values }) => values.length > 0) }
})

const changed = fc.constantFrom(...sets).chain(({ folder, leaves }) => {
  const change = fc
    .constantFrom(...leaves)
    .chain(({ part, path, values }) =>
      fc.record({ part: fc.constant(part), path: fc.constant(path), value: fc.constantFrom(...values) }),
    )
  return fc.record({
    folder: fc.constant(folder),
    changes: fc.array(change, { minLength: 1, maxLength: 2 }),
  })
})

it('every set of readable documents is planned and printed, whatever its numbers (law)', () => {
  expect(sets.map(({ leaves }) => leaves.length).every((count) => count > 50)).toBe(true)
  fc.assert(
    fc.property(changed, ({ folder, changes }) => {
      let asked = requestExample(folder)
      for (const { part, path, value } of changes) {
        const read = parseDocument(applyPatch(asked[part], [{ op: 'replace', path, value }]))
        if (!read.ok) return
        asked = { ...asked, [part]: read.value }
      }
      const planned = planVisit(asked)
      if (!planned.ok) throw new Error(JSON.stringify(planned.findings))
      expect(renderText(cardModel(planned.value, en))).not.toMatch(/NaN|Infinity|undefined|\[object/)
      for (const [path, value] of walk(planned.value))
        if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${path} is ${value}`)
    }),
    { numRuns: 250 },
  )
})
