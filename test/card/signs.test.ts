import { describe, expect, it } from 'vitest'
import { setSigns } from '../../src/card/setSigns.js'
import { cueList, renderHtml, renderMarkdown, renderText } from '../../src/v1/card.js'
import { en } from '../../src/v1/message/en.js'
import { fr } from '../../src/v1/message/fr.js'
import { listPapers } from '../browser/listPapers.js'
import { planExamples } from './planExamples.js'

/** A sign after a letter, digit or bracket, without a space of French before it. */
const PLAIN_SIGN = /[\p{L}\p{N})»][:;!?](?=\s|$)/u

/** All texts of a value that come from no document. */
function listOwnTexts(value: unknown): readonly string[] {
  if (typeof value !== 'object' || value === null) return []
  const own = 'text' in value && typeof value.text === 'string' && !('from' in value) ? [value.text] : []
  return [...own, ...Object.values(value).flatMap(listOwnTexts)]
}

describe('the signs between two texts', () => {
  it('have their French spaces on every paper, in each form', () => {
    const papers = listPapers(fr)
    expect(papers.length).toBeGreaterThan(40)
    for (const { name, card } of papers) {
      const texts = listOwnTexts(card)
      expect(
        texts.filter((text) => /^[:;] /.test(text) || PLAIN_SIGN.test(text)),
        name,
      ).toEqual([])
      // Titles, labels and signal words are not in quotes of a document.
      const labels = [card.title, card.variant.label, ...card.facts.map(({ label }) => label)]
      for (const written of [renderText(card, { width: 1000 }), renderMarkdown(card), renderHtml(card)])
        for (const label of labels.filter((text) => written.includes(text)))
          expect(written.includes(`${label}: `), `${name} ${label}`).toBe(false)
    }
    const cues = planExamples().flatMap(([, plan]) => cueList(plan, fr))
    expect(listOwnTexts(cues).filter((text) => /^[:;] /.test(text))).toEqual([])
  })

  it('stay as they are in English, and in texts of a document', () => {
    const line = [
      { text: 'a', from: '/a' },
      { text: ': ' },
      { text: 'b: c; d', from: '/b' },
      { text: 'e; f\u00a0: g' },
    ]
    expect(setSigns(line, en.card)).toBe(line)
    expect(setSigns(line, fr.card)).toEqual([
      { text: 'a', from: '/a' },
      { text: '\u00a0: ' },
      { text: 'b: c; d', from: '/b' },
      { text: 'e\u202f; f\u00a0: g' },
    ])
    for (const { card } of listPapers(en)) {
      expect(card.marks).not.toHaveProperty('colon')
      expect(card.marks).not.toHaveProperty('semicolon')
    }
  })
})
