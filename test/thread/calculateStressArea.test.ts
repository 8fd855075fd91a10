import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { calculatePitchDiameter, calculateStressArea } from '../../src/thread/calculateStressArea.js'
import { parseThread } from '../../src/thread/parseThread.js'
import type { MetricThread } from '../../src/v1/thread.js'
import { IFI_AREA, STRESS_AREAS, WORKED_FINE } from '../published/threadStressAreas.js'
import { law } from '../support/law.js'

function metric(text: string): MetricThread {
  const read = parseThread(text)
  if (!read.ok || read.value.kind !== 'metric') throw new Error(text)
  return read.value
}

describe('calculateStressArea and calculatePitchDiameter', () => {
  it.each(STRESS_AREAS)(
    '$thread rounds to the printed $printed mm² (ISO 898-1, R2)',
    ({ thread, printed }) => {
      const decimals = printed.split('.')[1]?.length ?? 0
      expect(calculateStressArea(metric(thread)).squareMillimetres.toFixed(decimals)).toBe(printed)
    },
  )

  it.each(WORKED_FINE)(
    '$thread: $area mm² and d2 $pitchDiameter mm',
    ({ thread, area, pitchDiameter: d2 }) => {
      expect(calculateStressArea(metric(thread)).squareMillimetres.toFixed(3)).toBe(area)
      expect(calculatePitchDiameter(metric(thread)).value.toFixed(4)).toBe(d2)
      expect(calculatePitchDiameter(metric(thread)).unit).toBe('mm')
    },
  )

  it('3/8-16 UNC has 0.0775 in² (IFI worked example, R)', () => {
    const read = parseThread(IFI_AREA.thread)
    if (!read.ok || read.value.kind !== 'unified') throw new Error(IFI_AREA.thread)
    expect((calculateStressArea(read.value).squareMillimetres / 645.16).toFixed(4)).toBe(IFI_AREA.printed)
  })

  it('lies between the areas of the core and of the full diameter, and a finer pitch has more', () => {
    law(
      50,
      fc.integer({ min: 6, max: 60 }),
      fc.double({ min: 0.5, max: 1.9, noNaN: true }),
      (size, pitch) => {
        const at = (value: number): MetricThread => ({
          kind: 'metric',
          designation: 'any',
          form: 'parallel',
          majorDiameter: { value: size, unit: 'mm' },
          pitch: { value, unit: 'mm' },
          coarse: false,
        })
        const area = calculateStressArea(at(pitch)).squareMillimetres
        expect(area).toBeLessThan((Math.PI / 4) * size ** 2)
        expect(area).toBeGreaterThan((Math.PI / 4) * (size - 1.226869 * pitch) ** 2)
        expect(calculateStressArea(at(pitch * 0.9)).squareMillimetres).toBeGreaterThan(area)
        expect(calculatePitchDiameter(at(pitch)).value).toBeLessThan(size)
      },
    )
  })

  it('throws where a thread’s diameter is in the other unit, or not a number', () => {
    const m18 = metric('M18x1.5')
    const inches = { ...m18, majorDiameter: { value: 0.709, unit: 'in' } }
    expect(() => calculateStressArea(inches as never)).toThrow(
      "thread.majorDiameter.unit must be mm in a metric thread, got 'in'",
    )
    expect(() => calculatePitchDiameter({ ...m18, pitch: { value: '1.5', unit: 'mm' } } as never)).toThrow(
      "thread.pitch.value must be a number, got '1.5'; parseThread reads a thread from a text",
    )
    expect(() => calculateStressArea({ ...m18, majorDiameter: undefined } as never)).toThrow(
      /majorDiameter\.value must be/,
    )
  })

  it('throws TypeError for pipe threads and anything else', () => {
    const pipe = parseThread('G 1/2')
    for (const wrongThread of [pipe.ok && pipe.value, undefined, null, 'M10', {}]) {
      expect(() => calculateStressArea(wrongThread as never)).toThrow(TypeError)
      expect(() => calculatePitchDiameter(wrongThread as never)).toThrow(TypeError)
    }
  })
})
