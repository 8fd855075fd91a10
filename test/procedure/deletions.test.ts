import { expect, test } from 'vitest'
import { findDetectingCase, listDeletions, STATE_ONLY } from './deletions.js'

test('every twelfth entry of the table of actions is missed if it is deleted', () => {
  const sample = listDeletions().filter((_entry, place) => place % 12 === 0)
  expect(sample.length).toBeGreaterThan(35)
  const undetected = sample
    .filter((candidate) => findDetectingCase(candidate) === undefined)
    .map(({ entry }) => entry)
  expect(undetected.filter((entry) => !STATE_ONLY.includes(entry))).toEqual([])
})
