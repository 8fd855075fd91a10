import fc from 'fast-check'
import { expect, test } from 'vitest'
import { countEdits, suggestName } from '../../src/base/suggestName.js'
import { law } from '../support/law.js'

// Typed by hand: each has one insertion, deletion, replacement or swap of neighbours.
test.each([
  ['', '', 0],
  ['abc', 'abc', 0],
  ['abc', 'acb', 1],
  ['abc', 'ab', 1],
  ['abc', 'abxc', 1],
  ['abc', 'xbc', 1],
  ['', 'abc', 3],
  ['kitten', 'sitting', 3],
  ['revision', 'revison', 1],
  ['drain', 'darin', 1],
])('from %j to %j: %i', (first, second, edits) => {
  expect(countEdits(first, second)).toBe(edits)
})

test('law: symmetric, zero for equals alone, at most the longer length', () => {
  const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 7 })
  law(50, word, word, (first, second) => {
    const edits = countEdits(first, second)
    expect(edits).toBe(countEdits(second, first))
    expect(edits === 0).toBe(first === second)
    expect(edits).toBeLessThanOrEqual(Math.max(first.length, second.length))
    expect(edits).toBeGreaterThanOrEqual(Math.abs(first.length - second.length))
  })
})

test('law: equal to the shortest way found by trying every slip', () => {
  const letters = ['a', 'b']
  const slip = (word: string): readonly string[] => {
    const next: string[] = []
    for (let at = 0; at <= word.length; at++) {
      for (const letter of letters) next.push(word.slice(0, at) + letter + word.slice(at))
      if (at === word.length) break
      next.push(word.slice(0, at) + word.slice(at + 1))
      for (const letter of letters) next.push(word.slice(0, at) + letter + word.slice(at + 1))
      if (at + 1 < word.length) next.push(word.slice(0, at) + word[at + 1] + word[at] + word.slice(at + 2))
    }
    return next
  }
  const word = fc.string({ unit: fc.constantFrom(...letters), maxLength: 4 })
  law(50, word, word, (first, second) => {
    let reached = new Set([first])
    let steps = 0
    while (!reached.has(second) && steps < 2) {
      reached = new Set([...reached].flatMap(slip))
      steps += 1
    }
    if (reached.has(second)) expect(countEdits(first, second)).toBe(steps)
    else expect(countEdits(first, second)).toBeGreaterThan(2)
  })
})

test.each([
  ['revison', ['revision', 'header'], 'revision'],
  ['Drain Plug', ['drain plug', 'cover'], 'drain plug'],
  ['drain_plug', ['drain plug', 'cover'], 'drain plug'],
  // Two mistakes in nine letters count as similar; three do not, and neither does one in two letters.
  ['sucktoin', ['suction'], 'suction'],
  ['sucktoinn', ['suction'], undefined],
  ['km', ['mm', 'cm'], undefined],
  ['l', ['L', 'mL'], 'L'],
  // Equally similar to two.
  ['bolt', ['bold', 'boat'], undefined],
  ['anything', [], undefined],
  ['a'.repeat(1000), ['a'.repeat(999)], undefined],
])('%j is taken for %j: %j', (written, names, meant) => {
  expect(suggestName(written, names)).toBe(meant)
})
