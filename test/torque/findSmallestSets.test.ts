import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { findSmallestSets } from '../../src/torque/findSmallestSets.js'
import { law } from '../support/law.js'

describe('findSmallestSets', () => {
  it('finds all smallest sets, as trying every set does (500 cases)', () => {
    law(
      50,
      fc
        .integer({ min: 1, max: 8 })
        .chain((tools) =>
          fc.tuple(
            fc.constant(tools),
            fc.array(fc.integer({ min: 1, max: 2 ** tools - 1 }), { maxLength: 10 }),
          ),
        ),
      ([tools, jobs]) => {
        const size = (set: number) => set.toString(2).replaceAll('0', '').length
        const covering = Array.from({ length: 2 ** tools }, (_, set) => set).filter((set) =>
          jobs.every((job) => (job & set) !== 0),
        )
        const fewestTools = Math.min(...covering.map(size))
        const found = findSmallestSets(jobs, tools)
        expect([...found].sort((item, other) => item - other)).toEqual(
          covering.filter((set) => size(set) === fewestTools),
        )
      },
    )
  })

  it('ends at its bound: 20 tools, ten jobs with two tools each', () => {
    const jobs = Array.from({ length: 10 }, (_, at) => 0b11 << (2 * at))
    expect(findSmallestSets(jobs, 20)).toHaveLength(1024)
  })
})
