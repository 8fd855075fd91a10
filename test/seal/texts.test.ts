import { describe, expect, it } from 'vitest'
import { en } from '../../src/message/en/index.js'
import { sealTexts } from '../../src/message/en/seal.js'
import { renderMessage } from '../../src/v1/message.js'

const mm = (value: number) => ({ value, unit: 'mm' })
const degrees = (value: number) => ({ value, unit: 'degC' })
/** One value for each param name of this module, except `min` and `max`, which are lengths or temperatures. */
const params = {
  how: 'taken out',
  kind: 'o-ring',
  product: 'Skarn Seal',
  thread: 'M18x1.5',
  washer: '18 × 22 × 1.5',
  inside: mm(16),
  outside: mm(20),
  section: mm(3.53),
  thickness: mm(0.3),
  major: mm(18),
  largest: mm(19),
  smallest: mm(20),
  designation: '-214',
  material: 'NBR',
  medium: 'mineral gear oil',
  temperature: degrees(110),
  min: degrees(-30),
  max: degrees(100),
  name: 'Copper washer 18 × 22',
  count: 2,
}
const say = (code: string, more: object = {}) => renderMessage({ code, params: { ...params, ...more } }, en)

describe('texts of the seal module', () => {
  it.each(Object.keys(sealTexts))('%s is a whole sentence', (code) => {
    const text = say(code)
    expect(text).toMatch(/^[-A-Z0-9“].*\.$/s)
    expect(text).not.toMatch(/undefined|object|NaN|null|true|false/)
  })

  it('each way of opening has its own words', () => {
    const openingTexts = ['taken out', 'cracked loose', 'level check'].map((how) =>
      say('seal/crush-washer-every-opening', { how }),
    )
    expect(new Set(openingTexts).size).toBe(3)
    expect(say('seal/buy', { count: 1 })).toBe('Buy 1.')
  })
})
