import { describe, expect, it } from 'vitest'
import { en } from '../../src/message/en/index.js'
import { rulesTexts } from '../../src/message/en/rules.js'
import { allRules } from '../../src/rules/allRules.js'
import { rule as waiverWithoutFinding } from '../../src/rules/spec/waiver-without-finding.js'
import { renderMessage } from '../../src/v1/message.js'
import { readVectors, runVector } from './support/vectors.js'

const catalogue = { ...en, texts: { ...en.texts, ...rulesTexts } }

describe('English texts', () => {
  it('exist for every rule and for no other code', () => {
    const codes = [...allRules, waiverWithoutFinding].map(({ code }) => code)
    const ruleCodes = codes.filter((code) => !code.startsWith('interval/'))
    expect(Object.keys(rulesTexts).sort()).toEqual(ruleCodes.sort())
  })

  it.each(readVectors())('$file reads as plain sentences', ({ vector }) => {
    for (const finding of runVector(vector)) {
      const text = renderMessage(finding, catalogue)
      expect(text).toMatch(/^[\p{L}\p{N}“].*[.?]$/u)
      expect(text).not.toMatch(/undefined|NaN|\[object|\{|\}|null/)
      expect(text).not.toContain(finding.code)
      expect(text.length).toBeLessThan(400)
    }
  })
})
