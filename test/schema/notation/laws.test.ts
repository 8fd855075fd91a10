import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { law } from '../../support/law.js'
import { NOTATION_NAMES, type NotationName, outsideOf, patternOf, readNotation } from './support/byName.js'
import { readNotationVectors } from './support/notationVectors.js'

const { good, bad } = readNotationVectors()

/** The verdict of a schema reader on a text, without our reader. */
const judges = new Map(
  NOTATION_NAMES.map((name) => {
    const [pattern, outside] = [new RegExp(patternOf(name), 'u'), new RegExp(outsideOf(name), 'u')]
    return [name, (text: string) => [...text].length <= 300 && pattern.test(text) && !outside.test(text)]
  }),
)
const patternAccepts = (name: NotationName, text: string) => judges.get(name)?.(text) === true

describe('pattern and reader agree', () => {
  test('on the list of good and bad texts', () => {
    for (const { notation, text } of good)
      expect([text, patternAccepts(notation, text)]).toEqual([text, true])
    for (const { notation, text } of bad)
      expect([text, patternAccepts(notation, text)]).toEqual([text, false])
    for (const { notation, text, value } of good)
      expect([text, readNotation(notation, text)]).toMatchObject([text, { ok: true, value }])
    for (const { notation, text } of bad)
      expect([text, readNotation(notation, text).ok]).toEqual([text, false])
  })

  test('on mutants of good texts', () => {
    let accepted = 0
    law(6000, mutant, ({ notation, text }) => {
      const read = readNotation(notation, text)
      if (read.ok) accepted += 1
      expect([notation, text, patternAccepts(notation, text)]).toEqual([notation, text, read.ok])
    })
    expect(accepted).toBeGreaterThan(100)
  })
})

/** A good text with one to three places changed: cut, doubled, swapped, or with a part of another text put in. */
const mutant = fc
  .tuple(
    fc.constantFrom(...good),
    fc.array(
      fc.tuple(
        fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }),
        fc.nat({ max: 6 }),
        fc.oneof(
          fc.constantFrom(
            '',
            ' ',
            ',',
            ', ',
            '; ',
            ' (',
            ')',
            ' [',
            ']',
            '.',
            '-',
            '–',
            ' to ',
            ' ± ',
            '0',
            '9',
            '/2',
            ' 1/2',
            'x',
            ' when ',
            'when',
            ' at ',
            ' then ',
            ' or ',
            'not stated',
            ', doubtful',
            'p. 9',
            '\n',
            '\u2028',
            '\u00a0',
            '−',
            '٣',
            '\0',
          ),
          fc
            .constantFrom(...good)
            .chain(({ text }) => fc.nat({ max: text.length }).map((from) => text.slice(from, from + 9))),
        ),
      ),
      { minLength: 1, maxLength: 3 },
    ),
    fc.oneof(
      { weight: 9, arbitrary: fc.constant(undefined) },
      { weight: 1, arbitrary: fc.constantFrom(...NOTATION_NAMES) },
    ),
  )
  .map(([{ notation, text }, changes, other]) => ({
    notation: other ?? notation,
    text: changes.reduce((current, [where, cut, put]) => {
      const at = Math.floor(where * (current.length + 1))
      return current.slice(0, at) + put + current.slice(at + cut)
    }, text),
  }))
