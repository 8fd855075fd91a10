import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { LengthUnit } from '../../src/quantity/unit.js'
import { type AdaptorInput, adaptorSetting } from '../../src/v1/torque.js'
import { ANGLED_ADAPTOR, TORQUE_ADAPTORS } from '../published/torqueAdaptors.js'
import { law } from '../support/law.js'

const question = (
  torque: number,
  lever: number,
  extension: number,
  degrees?: number,
  unit: LengthUnit = 'in',
): AdaptorInput => ({
  torque: { value: torque, unit: 'lbf.ft' },
  leverLength: { value: lever, unit },
  extension: { value: extension, unit },
  ...(degrees === undefined ? {} : { angle: { value: degrees, unit: 'deg' } }),
})

describe('adaptorSetting', () => {
  it.each([...TORQUE_ADAPTORS, ...ANGLED_ADAPTOR])(
    '$torque $unit, L $lever, E $extension: set $printed ($source)',
    (row) => {
      const asked = {
        ...question(row.torque, row.lever, row.extension, row.angle),
        torque: { value: row.torque, unit: row.unit },
      }
      const { setting } = adaptorSetting(asked)
      expect(setting.unit).toBe(row.unit)
      expect(setting.value.toFixed(row.printed.split('.')[1]?.length ?? 0)).toBe(row.printed)
    },
  )

  it('shortening: an adaptor that points back takes L − E (US Army TM 1-1500-204-23-9)', () => {
    // by hand: 60 · 10/(10 − 4) = 100
    expect(adaptorSetting(question(60, 10, 4, 180)).setting.value).toBe(100)
  })

  it('square to the handle nothing changes, exactly; straight ahead is the default', () => {
    expect(adaptorSetting(question(33.3, 12, 6, 90))).toEqual({
      setting: { value: 33.3, unit: 'lbf.ft' },
      ratio: 1,
    })
    expect(adaptorSetting(question(30, 12, 6, 0))).toEqual(adaptorSetting(question(30, 12, 6)))
  })

  it('60° counts exactly half of the extension, 120° half of it back', () => {
    expect(adaptorSetting(question(30, 12, 12, 60)).setting.value).toBe(20)
    expect(adaptorSetting(question(30, 12, 12, 120)).setting.value).toBe(60)
  })

  it('refuses an adaptor that reaches back to the hand, at the limit and past it; just short of it is answered', () => {
    expect(() => adaptorSetting(question(30, 12, 12, 180))).toThrow(/above 0/)
    expect(() => adaptorSetting(question(30, 12, 12.001, 180))).toThrow(RangeError)
    expect(adaptorSetting(question(30, 12, 11.999, 180)).setting.value).toBeCloseTo(360_000, 3)
    expect(() => adaptorSetting(question(30, 12, 24, 120))).toThrow(RangeError)
    expect(() => adaptorSetting(question(30, 0.1, 0.1, 180))).toThrow(RangeError)
  })

  const length = fc.double({ min: 0.01, max: 1000, noNaN: true })
  const angle = fc.integer({ min: 0, max: 180 })

  it('no extension, no correction, at any angle', () => {
    law(50, length, length, angle, (torque, lever, degrees) => {
      expect(adaptorSetting(question(torque, lever, 0, degrees)).setting.value).toBe(torque)
    })
  })

  it('falls with the extension ahead of 90°, and rises with it behind', () => {
    law(50, length, angle, fc.double({ min: 0, max: 0.4, noNaN: true }), (lever, degrees, part) => {
      const firstSetting = adaptorSetting(question(40, lever, lever * part, degrees)).setting.value
      const secondSetting = adaptorSetting(question(40, lever, lever * (part + 0.1), degrees)).setting.value
      if (degrees < 90) expect(secondSetting).toBeLessThan(firstSetting)
      else if (degrees > 90) expect(secondSetting).toBeGreaterThan(firstSetting)
      else expect(secondSetting).toBe(firstSetting)
    })
  })

  it('gives the torque back when the lever is multiplied out, and asks for lengths in any unit', () => {
    law(50, length, length, length, angle, (torque, lever, extension, degrees) => {
      const effectiveLever = lever + extension * Math.cos((degrees * Math.PI) / 180)
      if (effectiveLever < lever * 0.01) return
      const { setting, ratio } = adaptorSetting(question(torque, lever, extension, degrees))
      expect((setting.value * effectiveLever) / lever / torque).toBeCloseTo(1, 9)
      expect(ratio).toBeCloseTo(lever / effectiveLever, 6)
    })
    const mixedSetting = adaptorSetting({
      torque: { value: 30, unit: 'N.m' },
      leverLength: { value: 12, unit: 'in' },
      extension: { value: 152.4, unit: 'mm' },
    })
    expect(mixedSetting.setting).toEqual({ value: 20, unit: 'N.m' })
  })
})
