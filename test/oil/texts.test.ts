import { describe, expect, it } from 'vitest'
import { en } from '../../src/message/en/index.js'
import { oilTexts } from '../../src/message/en/oil.js'
import { renderMessage } from '../../src/v1/message.js'

const degrees = (value: number) => ({ value, unit: 'degC' })
const mm2 = (value: number) => ({ value, unit: 'mm2/s' })
/** One value for each param name of this module; except `offered`, a name means the same in every code. */
const params = {
  grade: '80W-90',
  system: 'SAE J306',
  edition: '1991',
  known: ['2019', '2005'],
  permitted: '80W-90',
  category: 'GL-4',
  name: 'Skarn Axle Fluid',
  limitedSlip: 'required',
  viscosity: mm2(14.5),
  at: degrees(100),
  ambient: degrees(-5),
  min: degrees(-10),
  max: degrees(30),
  printed: degrees(20),
  missing: ['kv40', 'kv100'],
  kv40: mm2(135),
  kv100: mm2(14.5),
  temperature: degrees(-30),
  pourPoint: degrees(-21),
  procedure: 'A',
  density: { value: 700, unit: 'kg/m3' },
  density15: { value: 890, unit: 'kg/m3' },
}
const say = (code: string, more: object = {}) =>
  renderMessage(
    {
      code,
      params: { ...params, offered: code.startsWith('oil/category') ? ['GL-5', 'MT-1'] : '75W-90', ...more },
    },
    en,
  )

describe('texts of the oil module', () => {
  it.each(Object.keys(oilTexts))('%s is a whole sentence', (code) => {
    const text = say(code)
    expect(text).toMatch(/^[A-Z0-9“−].*\.$/s)
    expect(text).not.toMatch(/undefined|object|NaN|null|true|false/)
  })

  it('an open band has one end, an unknown one none', () => {
    const inRangeText = (more: object) => say('oil/ambient-in-range', more).replaceAll('\u00a0', ' ')
    expect(inRangeText({})).toContain('from −10 °C to 30 °C.')
    expect(inRangeText({ max: undefined })).toContain('from −10 °C.')
    expect(inRangeText({ min: undefined })).toContain('up to 30 °C.')
    expect(inRangeText({ min: undefined, max: undefined })).toContain('any temperature.')
  })

  it('says what is missing, and which of three fits it was', () => {
    expect(say('oil/viscosities-missing', { missing: ['kv40'] })).toContain('40 °C is not known')
    expect(say('oil/viscosities-missing', { missing: ['kv100'] })).toContain('100 °C is not known')
    const fits = ['either', 'required', 'not permitted'].map((limitedSlip) =>
      say('oil/limited-slip-fits', { limitedSlip }),
    )
    expect(new Set(fits).size).toBe(3)
    expect(say('oil/viscosity-outside-range', { viscosity: undefined })).toMatch(/^At −30/)
  })
})
