import { describe, expect, it } from 'vitest'
import { findPlugTorqueBand, type PlugHousing } from '../../src/thread/findPlugTorqueBand.js'
import { parseThread } from '../../src/thread/parseThread.js'
import type { Thread } from '../../src/v1/thread.js'
import { MTN_5183_1, MTN_5183_6 } from '../published/plugsMtn5183.js'

function threadOf(text: string): Thread {
  const read = parseThread(text)
  if (!read.ok) throw new Error(text)
  return read.value
}

/** Printed figures of one column, `23+3` as both of its ends. */
function printedFigures(thread: string, column: 1 | 2): number[] {
  return [...MTN_5183_1, ...MTN_5183_6]
    .filter((row) => row[0] === thread && row[column] !== '-')
    .flatMap((row) => {
      const [value = '', plus] = row[column].split('+')
      return plus === undefined ? [Number(value)] : [Number(value), Number(value) + Number(plus)]
    })
    .sort((first, second) => first - second)
}

const THREADS = [...new Set([...MTN_5183_1, ...MTN_5183_6].map(([thread]) => thread))]

describe('findPlugTorqueBand', () => {
  it.each(THREADS)('%s holds every published figure of its housing and nothing else', (thread) => {
    const cases: readonly (readonly [PlugHousing, number[]])[] = [
      ['steel', printedFigures(thread, 1)],
      ['cast iron', printedFigures(thread, 1)],
      ['aluminium', printedFigures(thread, 2)],
      ['not stated', [...printedFigures(thread, 1), ...printedFigures(thread, 2)].sort((a, b) => a - b)],
    ]
    for (const [housing, figures] of cases) {
      const band = findPlugTorqueBand(threadOf(thread), housing)
      if (figures.length === 0) {
        expect(band.reasons.map(({ code }) => code)).toEqual(['thread/plug-not-in-table'])
        continue
      }
      expect(band.verdict === 'band' && band.published.map(({ value }) => value)).toEqual(figures)
      for (const figure of figures)
        expect(band.verdict === 'band' && band.min.value <= figure && figure <= band.max.value).toBe(true)
    }
  })

  it('is half the lowest to 1.75 times the highest: M18×1.5', () => {
    // by hand: steel 50 and 70 -> 25 and 122.5; aluminium 35, 23 and 26 -> 11.5 and 61.25
    const ends = (housing: PlugHousing) => {
      const band = findPlugTorqueBand(threadOf('M18x1.5'), housing)
      return band.verdict === 'band' && [band.min, band.max]
    }
    const newtonMetres = (value: number) => ({ value, unit: 'N.m' })
    expect(ends('steel')).toEqual([newtonMetres(25), newtonMetres(122.5)])
    expect(ends('aluminium')).toEqual([newtonMetres(11.5), newtonMetres(61.25)])
    expect(ends('not stated')).toEqual([newtonMetres(11.5), newtonMetres(122.5)])
  })

  it.each(THREADS)('%s: a slip of 9.80665 never stays inside where the housing is known', (thread) => {
    for (const housing of ['steel', 'aluminium'] as const) {
      const band = findPlugTorqueBand(threadOf(thread), housing)
      if (band.verdict === 'band') expect(band.max.value / band.min.value).toBeLessThan(9.80665)
      else expect(housing === 'steel' && thread === 'M60x2').toBe(true)
    }
  })

  it('cannot tell for taper threads and threads that no table lists', () => {
    const codes = (text: string) =>
      findPlugTorqueBand(threadOf(text), 'steel').reasons.map(({ code }) => code)
    expect(codes('1/2-14 NPT')).toEqual(['thread/taper-plug'])
    expect(codes('R 1/2')).toEqual(['thread/taper-plug'])
    expect(codes('G 1/2')).toEqual(['thread/plug-not-in-table'])
    expect(codes('M18')).toEqual(['thread/plug-not-in-table'])
  })

  it('throws TypeError for other types', () => {
    const thread = threadOf('M18x1.5')
    for (const housing of ['wood', undefined, Number.NaN, '__proto__'])
      expect(() => findPlugTorqueBand(thread, housing as never)).toThrow(TypeError)
    for (const wrongThread of [undefined, null, 'M18x1.5', {}])
      expect(() => findPlugTorqueBand(wrongThread as never, 'steel')).toThrow(TypeError)
  })
})
