import { describe, expect, test } from 'vitest'
import { isRefused } from './deletions.js'
import { simulateProcedure } from './simulateProcedure.js'
import { UNSAFE_SEQUENCES } from './unsafeSequences.js'

describe('every unsafe sequence is refused with the codes of its fact', () => {
  test('each is an edit of a procedure that is right', () => {
    for (const [validProcedure, sheet] of new Map(UNSAFE_SEQUENCES.map((item) => [item.good, item.sheet])))
      expect(simulateProcedure(validProcedure, sheet).findings).toEqual([])
  })

  test.each(UNSAFE_SEQUENCES)('$fact', (sequence) => {
    expect(sequence.codes.length).toBeGreaterThan(0)
    expect(isRefused(sequence)).toBe(true)
  })
})
