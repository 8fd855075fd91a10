import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { shortenCard } from '../../src/card/shortenCard.js'
import { wrapText } from '../../src/card/wrapText.js'
import { en } from '../../src/message/en/index.js'
import { paperModel, renderText } from '../../src/v1/card.js'
import { nextDue } from '../../src/v1/service.js'
import { law } from '../support/law.js'
import { cardOf, requestExample } from '../support/planExample.js'
import { HOSTILE_NAMES, withHostileNames } from './hostilePlan.js'
import { PLAN_WITHOUT_VARIANT, SKARNFELL_PLAN } from './skarnfellPlan.js'

const lengthOf = (line: string) => Array.from(line).length

describe('renderText', () => {
  const text = renderText(cardOf(SKARNFELL_PLAN))

  it('has no line over 80 characters and breaks no quantity', () => {
    for (const line of text.split('\n')) expect(lengthOf(line)).toBeLessThanOrEqual(80)
    expect(text).toContain('22.5\u00a0N·m')
    expect(text).not.toMatch(/[0-9]\n *N·m/)
  })

  it('has every section, every line with a box, and the cautions before their lines', () => {
    for (const heading of Object.values(en.card.sections))
      expect(text).toContain(`\n${heading}\n${'-'.repeat(80)}\n`)
    expect(text.match(/^\[ \] +[0-9]+\. /gm)).toHaveLength(SKARNFELL_PLAN.lines.length)
    expect(text.indexOf('A raised machine can fall')).toBeLessThan(
      text.indexOf('Raise the machine and set it on'),
    )
  })

  it('says that the variant is unknown and that a torque is not stated', () => {
    const unknown = renderText(cardOf(PLAN_WITHOUT_VARIANT))
    expect(unknown).toContain('Variant: not known without the serial number and variant')
    expect(unknown).toMatch(/^ +The manual says: not stated: see the manual$/m)
  })

  it('writes the short card too', () => {
    const shortText = renderText(shortenCard(cardOf(SKARNFELL_PLAN)))
    expect(shortText).toContain('[ ]  6. Pan in place · Drain plug out')
    expect(shortText).not.toContain('Tools, parts and supplies')
  })

  it.each(HOSTILE_NAMES)('lets no name forge a line or steer a terminal: %j', (name) => {
    const output = renderText(cardOf(withHostileNames(name)))
    // biome-ignore lint/suspicious/noControlCharactersInRegex: the test looks for control characters
    expect(output).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]|\p{Cs}/u)
    const lines = output.split('\n')
    expect(lines.filter((line) => line === '# Heading' || line.startsWith('NOTE'))).toEqual([])
  })

  it('breaks every text of a narrow screen, also the name of a label', () => {
    const { sheet, log, today, due } = requestExample('acre-26', { logFile: 'log-stale' })
    const text = renderText(paperModel(nextDue({ sheet, log, today }, due), en), { width: 20 })
    // A number and its unit are one word.
    const tooLong = text.split('\n').filter((line) => lengthOf(line) > 20 && line.trim().includes(' '))
    expect(tooLong).toEqual([])
  })

  it('throws for an invalid card', () => {
    expect(() => renderText({} as never)).toThrow(TypeError)
    expect(() => renderText(null as never)).toThrow(TypeError)
  })
})

describe('wrapText', () => {
  it('fills a line up to its width: at it, not past it', () => {
    expect(wrapText('aaa bbb', 7, '', '')).toEqual(['aaa bbb'])
    expect(wrapText('aaa bbbb', 7, '', '')).toEqual(['aaa', 'bbbb'])
    expect(wrapText('aaa bbb', 9, '* ', '  ')).toEqual(['* aaa bbb'])
    expect(wrapText('aaa bbb', 8, '* ', '  ')).toEqual(['* aaa', '  bbb'])
    expect(wrapText('', 8, '* ', '  ')).toEqual(['* '])
  })

  it('counts characters outside the basic plane as one, and never parts them', () => {
    const words = '𝟘𝟙𝟚 𝟛𝟜𝟝𝟞 😀'
    expect(wrapText(words, 8, '', '')).toEqual(['𝟘𝟙𝟚 𝟛𝟜𝟝𝟞', '😀'])
    expect(wrapText(words, 7, '', '')).toEqual(['𝟘𝟙𝟚', '𝟛𝟜𝟝𝟞 😀'])
    expect(wrapText(words, 3, '', '')).toEqual(['𝟘𝟙𝟚', '𝟛𝟜𝟝𝟞', '😀'])
  })

  it('keeps every word in order, and no line is too long', () => {
    const anyWords = fc.array(fc.stringMatching(/^[a-zµ\u00a0]{1,12}$/), { maxLength: 40 })
    law(200, anyWords, fc.integer({ min: 14, max: 60 }), (words, width) => {
      const lines = wrapText(words.join(' '), width, '', '')
      expect(lines.join(' ')).toBe(words.join(' '))
      for (const line of lines) expect(lengthOf(line)).toBeLessThanOrEqual(width)
    })
  })
})
