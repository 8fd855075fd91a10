import { expect, test } from 'vitest'
import type { BenchRow } from './benchResult.js'
import { measureInTurns } from './measureInTurns.js'
import { findRatio, findSpread, isReached, showTime, writeComparisons, writeGrowth } from './renderBench.js'

const row = (times: readonly number[], peerTimes: readonly number[], goal?: number): BenchRow => ({
  what: 'a call',
  times,
  peer: { name: 'by hand', times: peerTimes },
  ...(goal !== undefined && { goal }),
})

test('The spread is the median with the middle half.', () => {
  expect(findSpread([5, 1, 4, 2, 3])).toEqual({ low: 2, median: 3, high: 4 })
  expect(() => findSpread([])).toThrow(RangeError)
})

test('The ratio is that of each round: a round on a busy machine slows both.', () => {
  expect(findRatio(row([2, 20, 2], [1, 10, 1]))).toEqual({ low: 2, median: 2, high: 2 })
  expect(() => findRatio(row([2, 20], [1]))).toThrow(RangeError)
})

test('A goal is reached at its value, and not above it.', () => {
  expect(isReached(row([3], [1], 3))).toBe(true)
  expect(isReached(row([3.01], [1], 3))).toBe(false)
  expect(isReached(row([3], [1]))).toBeUndefined()
  expect(isReached({ what: 'a call', times: [200], goalMicros: 200 })).toBe(true)
  expect(isReached({ what: 'a call', times: [201], goalMicros: 200 })).toBe(false)
})

test('Times have three digits and a unit.', () => {
  expect([0.0401, 453, 1234, 2_500_000].map(showTime)).toEqual(['40.1 ns', '453 µs', '1.23 ms', '2.50 s'])
})

test('All benchmarks are one table; sizes that were measured in several runs are one line.', () => {
  const results = new Map([
    ['start', { rows: [row([3], [1], 2)] }],
    [
      'due',
      {
        rows: [row([1], [1], 2)],
        growth: [
          { what: 'due', item: 'log', sizes: [[1000, 2] as const] },
          { what: 'due', item: 'log', sizes: [[10_000, 3] as const] },
        ],
      },
    ],
  ])
  const lines = writeComparisons(results)
  expect(lines.map((line) => line.split('|').length)).toEqual([10, 10, 10, 10])
  expect(lines[2]).toMatch(/start .* 3\.00 .* not reached/)
  expect(lines[3]).toMatch(/due .* 1\.00 .* reached/)
  expect(writeGrowth(results)).toEqual([
    '| what     | 1,000   | 10,000  |',
    '| -------- | ------- | ------- |',
    '| due, log | 2.00 µs | 3.00 µs |',
  ])
})

test('Works are measured in turns, each as often as the others.', async () => {
  const calls: string[] = []
  const times = await measureInTurns(
    { one: () => calls.push('one'), two: async () => calls.push('two') },
    { rounds: 3, roundMs: 0, warmUpMs: 0 },
  )
  expect(calls.slice(2)).toEqual(['one', 'two', 'one', 'two', 'one', 'two'])
  expect([times.one.length, times.two.length]).toEqual([3, 3])
})
