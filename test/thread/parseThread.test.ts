import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseThread } from '../../src/thread/parseThread.js'
import { law } from '../support/law.js'

// sizes: ISO 261, ISO 228-1, ISO 7-1, ASME B1.1 and B1.20.1, from memory
const READ: readonly (readonly [string, string, 'parallel' | 'taper'])[] = [
  ['M18x1.5', 'M18x1.5', 'parallel'],
  ['M18×1.5', 'M18x1.5', 'parallel'],
  ['M18 x 1.5', 'M18x1.5', 'parallel'],
  ['  m18X1.50 ', 'M18x1.5', 'parallel'],
  ['M18 x 1.5', 'M18x1.5', 'parallel'],
  ['M10', 'M10', 'parallel'],
  ['M10x1.5', 'M10', 'parallel'],
  ['M 12 x 1.25 - 6g', 'M12x1.25', 'parallel'],
  ['G 1/2', 'G 1/2', 'parallel'],
  ['G1/2', 'G 1/2', 'parallel'],
  ['G 1/2 A', 'G 1/2', 'parallel'],
  ['G 1-1/4', 'G 1 1/4', 'parallel'],
  ['R 1/2', 'R 1/2', 'taper'],
  ['Rc 3/8', 'Rc 3/8', 'taper'],
  ['Rp 1/2', 'Rp 1/2', 'parallel'],
  ['1/2-14 NPT', '1/2-14 NPT', 'taper'],
  ['1/2 NPT', '1/2-14 NPT', 'taper'],
  ['1-11.5 NPT', '1-11.5 NPT', 'taper'],
  ['1 - 11 1/2 NPTF', '1-11.5 NPTF', 'taper'],
  ['1/8-27 nptf', '1/8-27 NPTF', 'taper'],
  ['3/8-16 UNC', '3/8-16 UNC', 'parallel'],
  ['1/2-20 unf - 2a', '1/2-20 UNF', 'parallel'],
  ['3/4-20 UNEF', '3/4-20 UNEF', 'parallel'],
  // as manuals and parts lists print them
  ['M18×1,5', 'M18x1.5', 'parallel'],
  ['M18 x 1,5', 'M18x1.5', 'parallel'],
  ['M12 x 1.25 – 6g', 'M12x1.25', 'parallel'],
  ['G 5/8', 'G 5/8', 'parallel'],
  ['G7/8', 'G 7/8', 'parallel'],
  ['G 1 1/8', 'G 1 1/8', 'parallel'],
  ['G 1-3/4 B', 'G 1 3/4', 'parallel'],
  ['G 1¼"', 'G 1 1/4', 'parallel'],
  ['BSPP 1/2', 'G 1/2', 'parallel'],
  ['1/2" BSPP', 'G 1/2', 'parallel'],
  ['1/2-14 BSPP', 'G 1/2', 'parallel'],
  ['PF 3/4', 'G 3/4', 'parallel'],
  ['PS 3/8', 'Rp 3/8', 'parallel'],
  ['BSPT 1/2', 'R 1/2', 'taper'],
  ['3/8 BSPT', 'R 3/8', 'taper'],
  ['PT 1/2', 'R 1/2', 'taper'],
  ['PT1/8', 'R 1/8', 'taper'],
  ['NPT 1/2', '1/2-14 NPT', 'taper'],
  ['NPTF 1-11 1/2', '1-11.5 NPTF', 'taper'],
  ['3/4-14NPT', '3/4-14 NPT', 'taper'],
  ['1 1/16-12 UN', '1 1/16-12 UN', 'parallel'],
  ['1-1/16-12 UN-2B', '1 1/16-12 UN', 'parallel'],
  ['1 5/16-12UN', '1 5/16-12 UN', 'parallel'],
  ['1 1/8-12 UNF', '1 1/8-12 UNF', 'parallel'],
  ['1 1/16-12 UNF', '1 1/16-12 UN', 'parallel'],
  ['1-5/16-12UNF-2B', '1 5/16-12 UN', 'parallel'],
  ['1 5/8-12 UNF', '1 5/8-12 UN', 'parallel'],
  ['1 7/8"-12 UNF', '1 7/8-12 UN', 'parallel'],
  ['3/4-16UNF-2A', '3/4-16 UNF', 'parallel'],
  ['3/4"-16 UNF 2A', '3/4-16 UNF', 'parallel'],
  ['3/4-16', '3/4-16 UNF', 'parallel'],
  ['#10-32 UNF', '#10-32 UNF', 'parallel'],
  ['No. 10-24 UNC', '#10-24 UNC', 'parallel'],
  ['10-32', '#10-32 UNF', 'parallel'],
]

const REFUSED: readonly (readonly [string, string])[] = [
  ['', 'thread/unknown-thread'],
  ['18x1.5', 'thread/unknown-thread'],
  ['M', 'thread/unknown-thread'],
  ['M18x', 'thread/unknown-thread'],
  ['M18x-1', 'thread/unknown-thread'],
  ['M18x1e0', 'thread/unknown-thread'],
  ['1/2-14', 'thread/unknown-thread'],
  ['__proto__', 'thread/unknown-thread'],
  ['constructor NPT', 'thread/unknown-thread'],
  ['1/2 BSP', 'thread/parallel-or-taper'],
  ['BSP 1/2', 'thread/parallel-or-taper'],
  ['M18,x1', 'thread/unknown-thread'],
  ['M18x1,500,0', 'thread/unknown-thread'],
  ['4-16', 'thread/unknown-thread'],
  ['R 5/8', 'thread/size-not-known'],
  ['5/8 NPT', 'thread/size-not-known'],
  ['1 1/16-14 UNF', 'thread/size-not-known'],
  ['13/16-12 UNF', 'thread/size-not-known'],
  ['#10-32 UN', 'thread/size-not-known'],
  ['1 1/17-12 UN', 'thread/size-not-known'],
  ['1 1/16-14 UN', 'thread/threads-per-inch-differ'],
  ['M11', 'thread/pitch-not-known'],
  ['M18x0', 'thread/pitch-too-coarse'],
  ['M3x2', 'thread/pitch-too-coarse'],
  ['G 5/7', 'thread/size-not-known'],
  ['11/3 NPT', 'thread/size-not-known'],
  ['7-14 UNC', 'thread/size-not-known'],
  ['1/2-18 NPT', 'thread/threads-per-inch-differ'],
  ['3/8-18 UNC', 'thread/threads-per-inch-differ'],
  [`M18${' '.repeat(80)}x1.5`, 'thread/too-long'],
]

describe('parseThread', () => {
  it.each(READ)('reads %s as %s, %s', (text, designation, form) => {
    const read = parseThread(text)
    expect(read.ok && [read.value.designation, read.value.form]).toEqual([designation, form])
    expect(read.findings).toEqual([])
  })

  it.each(REFUSED)('refuses %s with %s', (text, code) => {
    const read = parseThread(text)
    expect(read.ok).toBe(false)
    expect(read.findings.map((finding) => finding.code)).toEqual([code])
  })

  it('keeps size, pitch and tolerance class as numbers and text', () => {
    const metric = parseThread('M12x1.25-6g')
    expect(metric.ok && metric.value).toEqual({
      kind: 'metric',
      designation: 'M12x1.25',
      form: 'parallel',
      majorDiameter: { value: 12, unit: 'mm' },
      pitch: { value: 1.25, unit: 'mm' },
      coarse: false,
      toleranceClass: '6g',
    })
    const inch = parseThread('3/8-16 UNC-2A')
    expect(inch.ok && inch.value.kind === 'unified' && inch.value.majorDiameter).toEqual({
      value: 0.375,
      unit: 'in',
    })
    expect(inch.ok && inch.value.kind === 'unified' && inch.value.toleranceClass).toBe('2A')
  })

  it('names both threads that BSP alone may be', () => {
    expect(parseThread('1-1/4 BSP').findings[0]?.params).toEqual({
      text: '1-1/4 BSP',
      candidates: ['G 1 1/4', 'R 1 1/4'],
    })
  })

  it('knows the diameter of inch threads: 1 1/16 in, and #10 of 0.190 in', () => {
    // ASME B1.1: 0.060 in and 0.013 in a number; from memory
    const inches = ['1 1/16-12 UN', '#10-32 UNF', '#4-40 UNC'].map((text) => {
      const read = parseThread(text)
      return read.ok && read.value.kind === 'unified' && read.value.majorDiameter.value
    })
    expect(inches).toEqual([1.0625, 0.19, 0.112])
  })

  it('warns of an unusual pitch without refusing', () => {
    const oddPitch = parseThread('M18x1.7')
    expect(oddPitch.ok && oddPitch.value.designation).toBe('M18x1.7')
    expect(oddPitch.findings.map(({ code, severity }) => [code, severity])).toEqual([
      ['thread/unusual-pitch', 'warning'],
    ])
  })

  it('a third of the diameter is the coarsest pitch: at, just below and just above', () => {
    expect(parseThread('M12x4').ok).toBe(true)
    expect(parseThread('M12x3.999').ok).toBe(true)
    expect(parseThread('M12x4.001').ok).toBe(false)
  })

  it('reads its own spelling again', () => {
    for (const [text] of READ) {
      const read = parseThread(text)
      const parsedAgain = read.ok ? parseThread(read.value.designation) : read
      expect(parsedAgain.ok && read.ok && parsedAgain.value.designation === read.value.designation).toBe(true)
    }
  })

  it('never throws on a string, and gives one finding or a thread', () => {
    law(300, fc.oneof(fc.string(), fc.stringMatching(/^[MGRmNPTUCF0-9 x./,-]{0,20}$/)), (text) => {
      const read = parseThread(text)
      expect(read.ok || read.findings.length === 1).toBe(true)
    })
  })

  it('throws TypeError for anything but a string', () => {
    for (const value of [undefined, null, 18, Number.NaN, {}, []])
      expect(() => parseThread(value as never)).toThrow(TypeError)
  })
})
