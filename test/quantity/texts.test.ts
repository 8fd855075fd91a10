import { describe, expect, it } from 'vitest'
import type { Reason } from '../../src/base/finding.js'
import { en } from '../../src/message/en/index.js'
import { quantityTexts } from '../../src/message/en/quantity.js'
import { comparePrintedFigures } from '../../src/quantity/comparePrintedFigures.js'
import { renderMessage } from '../../src/v1/message.js'
import { type PrintedBand, parseQuantity, type Unit } from '../../src/v1/quantity.js'
import { UNIT_TEXTS } from './support/unitTexts.js'

const nominal = (value: string, unit: Unit): PrintedBand => ({ kind: 'nominal', value, unit })

/** Every code of the module, produced from texts and from printed figures. */
function reasonsSeen(): Reason[] {
  const read = UNIT_TEXTS.flatMap(({ text, options }) => parseQuantity(text, options).findings)
  const longFigure = parseQuantity('9'.repeat(300)).findings
  const limits: PrintedBand = { kind: 'limits', min: '30', max: '36', unit: 'N.m' }
  const findings = [
    comparePrintedFigures(nominal('10.0', 'N.m'), nominal('10.2', 'N.m')),
    comparePrintedFigures(nominal('9', 'N.m'), nominal('80', 'lbf.ft')),
    comparePrintedFigures(nominal('9', 'N.m'), nominal('50', 'lbf.ft')),
    comparePrintedFigures(limits, nominal('24', 'lbf.ft')),
  ].flatMap(({ reasons }) => reasons)
  return [...read, ...longFigure, ...findings]
}

describe('English texts of the module', () => {
  it('exist for every code that occurs, and every code with one occurs', () => {
    const seen = new Set(reasonsSeen().map(({ code }) => code))
    expect([...seen].sort()).toEqual(Object.keys(quantityTexts).sort())
  })

  it('are whole sentences without gaps', () => {
    for (const reason of reasonsSeen()) {
      const text = renderMessage(reason, en)
      expect(text).toMatch(/^[A-Z“0-9≥−].*[.?]$/s)
      expect(text).not.toMatch(/undefined|NaN|\[object|null|quantity\//)
    }
  })

  it.each([
    ['5 gal', '“gal” is ambiguous: US\u00a0gal and imp\u00a0gal. Write which one you mean.'],
    [
      '8.9 ft/lbs',
      '“ft/lbs” is one unit divided by another; torque is force times length. Did you mean lbf·ft?',
    ],
    ['20 nm', 'Upper and lower case change the meaning of “nm”. Did you mean N·m?'],
    ['1.234 L', '“1.234 L” can mean 1.234 or 1234. Say whether the comma or the point is the decimal mark.'],
    ['44–34 N·m', 'Minimum 44 exceeds maximum 34. Put the smaller one first.'],
  ])('the text of “%s” says what to do', (text, sentence) => {
    const [finding] = parseQuantity(text).findings
    expect(finding && renderMessage(finding, en)).toBe(sentence)
  })

  it('names both figures of a slip', () => {
    const [reason] = comparePrintedFigures(nominal('9', 'N.m'), nominal('80', 'lbf.ft')).reasons
    expect(reason && renderMessage(reason, en)).toBe(
      '9\u00a0N·m and 80\u00a0lbf·ft differ by a factor of 12: perhaps pound-inches and pound-feet were mixed up. Find out which is right before use.',
    )
  })
})
