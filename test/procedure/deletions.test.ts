import { expect, test } from 'vitest'
import { findWitness, listDeletions, STATE_ONLY } from './deletions.js'

test('every twelfth entry of the table of actions is missed if it is deleted', () => {
  const sample = listDeletions().filter((_entry, place) => place % 12 === 0)
  expect(sample.length).toBeGreaterThan(35)
  const unnoticed = sample
    .filter((candidate) => findWitness(candidate) === undefined)
    .map(({ entry }) => entry)
  expect(unnoticed.filter((entry) => !STATE_ONLY.includes(entry))).toEqual([])
})
