import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseThread } from '../../src/thread/parseThread.js'
import { calculateProofLoad } from '../../src/torque/calculateProofLoad.js'
import { nutFactor } from '../../src/torque/nutFactor.js'
import { convert } from '../../src/v1/quantity.js'
import type { MetricThread, UnifiedThread } from '../../src/v1/thread.js'
import { clampLoad } from '../../src/v1/torque.js'
import { IFI_EXAMPLE, PROOF_LOADS, WORKED_CLAMP } from '../published/proofLoads.js'
import { SAE_J429 } from '../published/proofSaeJ429.js'
import { VDI_2230_FINE } from '../published/torqueVdi2230.js'
import { law } from '../support/law.js'

function bolt(text: string): MetricThread | UnifiedThread {
  const read = parseThread(text)
  if (!read.ok || read.value.kind === 'pipe') throw new Error(text)
  return read.value
}

function metric(text: string): MetricThread {
  const thread = bolt(text)
  if (thread.kind !== 'metric') throw new Error(text)
  return thread
}

describe('calculateProofLoad', () => {
  const rows = PROOF_LOADS.flatMap(({ thread, newtons }) =>
    Object.entries(newtons).map(([propertyClass, printed]) => ({ thread, propertyClass, printed })),
  )

  it.each(rows)('$thread $propertyClass: $printed N within 0.7 % (ISO 898-1, R2)', (row) => {
    const proof = calculateProofLoad(bolt(row.thread), row.propertyClass)
    // the table was calculated from rounded areas and proof ratios, and printed with three digits
    if (proof.verdict !== 'load') throw new Error('no load')
    expect(Math.abs(proof.load.value / row.printed - 1)).toBeLessThan(0.007)
  })

  it('8.8 bears 580 MPa up to M16 and 600 above; 9.8 ends at M16', () => {
    const stress = (thread: string, propertyClass: string) => {
      const proof = calculateProofLoad(bolt(thread), propertyClass)
      return proof.verdict === 'load' ? proof.stress.value : proof.reasons.map(({ code }) => code)
    }
    expect(stress('M16', '8.8')).toBe(580)
    expect(stress('M18', '8.8')).toBe(600)
    expect(stress('M16', '9.8')).toBe(650)
    expect(stress('M18', '9.8')).toEqual(['torque/class-not-for-size'])
    expect(stress('M24', '10.9')).toBe(830)
    expect(stress('M27', '10.9')).toEqual(['torque/class-not-for-size'])
    expect(stress('M5', '10.9')).toEqual(['torque/class-not-for-size'])
    expect(stress('M6', '10.9')).toBe(830)
  })

  it.each(SAE_J429)('SAE J429 grade %s from %f to %f in: %s ksi (R2)', (grade, from, to, ksi) => {
    const unifiedThread = (inches: number): UnifiedThread => ({
      kind: 'unified',
      designation: `${inches}`,
      form: 'parallel',
      majorDiameter: { value: inches, unit: 'in' },
      threadsPerInch: 8,
      series: 'UNC',
    })
    const stress = (inches: number) => {
      const proof = calculateProofLoad(unifiedThread(inches), `grade ${grade}`)
      // 1 ksi = 6.894757293168361 MPa
      return proof.verdict === 'load'
        ? (proof.stress.value / 6.894757293168361).toFixed(0)
        : proof.reasons[0]?.code
    }
    expect([stress(from), stress(to)]).toEqual([ksi, ksi])
    const otherRows = SAE_J429.filter((row) => row[0] === grade && (row[1] !== from || row[2] !== to))
    if (otherRows.length > 0) return
    expect([stress(from - 0.01), stress(to + 0.01)]).toEqual([
      'torque/class-not-for-size',
      'torque/class-not-for-size',
    ])
  })

  it('a metric class is not for an inch thread', () => {
    expect(calculateProofLoad(bolt('3/8-16 UNC'), '8.8').reasons[0]?.code).toBe('torque/class-not-for-thread')
  })

  it('unknown classes and other systems cannot tell, even hostile ones', () => {
    for (const propertyClass of ['', '5.6', '8.80', '__proto__', 'constructor', 'x'.repeat(100_000)]) {
      const proof = calculateProofLoad(bolt('M10'), propertyClass)
      expect(proof.reasons.map(({ code }) => code)).toEqual(['torque/class-unknown'])
      expect(JSON.stringify(proof).length).toBeLessThan(500)
    }
    expect(calculateProofLoad(bolt('M10'), 'grade 5').verdict).toBe('cannot tell')
  })
})

describe('clampLoad', () => {
  it.each(IFI_EXAMPLE.cases)(
    '3/8-16 grade 5 at K $nutFactor: $unrounded lbf·ft give 4940 lbf (IFI, R)',
    (row) => {
      const answer = clampLoad({
        torque: { value: Number(row.unrounded), unit: 'lbf.ft' },
        thread: bolt(IFI_EXAMPLE.thread),
        propertyClass: IFI_EXAMPLE.propertyClass,
        nutFactor: row.nutFactor,
        scatterPercent: 25,
      })
      if (answer.verdict !== 'load') throw new Error('no load')
      expect(convert(answer.load, 'lbf').value).toBeCloseTo(IFI_EXAMPLE.preloadPounds, 0)
      expect(answer.shareOfProof).toBeCloseTo(0.75, 3)
      expect(Number(row.unrounded).toFixed(0) === row.printed || row.printed === '30').toBe(true)
    },
  )

  it.each(WORKED_CLAMP)(
    '$thread 8.8 at K 0.20: $newtonMetres N·m give $kilonewtons kN, 75 % of proof',
    (row) => {
      const answer = clampLoad({
        torque: { value: Number(row.newtonMetres), unit: 'N.m' },
        thread: bolt(row.thread),
        propertyClass: '8.8',
        nutFactor: 0.2,
        scatterPercent: 30,
      })
      if (answer.verdict !== 'load') throw new Error('no load')
      expect((answer.load.value / 1000).toFixed(2)).toBe(row.kilonewtons)
      expect(answer.shareOfProof).toBeCloseTo(0.75, 2)
      expect(answer.min.value / answer.load.value).toBeCloseTo(0.7, 12)
      expect(answer.max.value / answer.load.value).toBeCloseTo(1.3, 12)
      expect(answer.belowProof).toBe(true)
    },
  )

  it('above the proof load is reported; at the proof load counts as below', () => {
    const ask = (value: number) =>
      clampLoad({
        torque: { value, unit: 'N.m' },
        thread: bolt('M10'),
        propertyClass: '8.8',
        nutFactor: 0.2,
        scatterPercent: 0,
      })
    const proof = calculateProofLoad(bolt('M10'), '8.8')
    if (proof.verdict !== 'load') throw new Error('no load')
    const limit = proof.load.value * 0.2 * 0.01
    const verdicts = [limit * 0.999999, limit * 1.000001].map((torque) => {
      const answer = ask(torque)
      return answer.verdict === 'load' && [answer.belowProof, answer.reasons.at(-1)?.code]
    })
    expect(verdicts).toEqual([
      [true, 'torque/below-proof'],
      [false, 'torque/above-proof'],
    ])
  })

  it('cannot tell without a proof load', () => {
    const answer = clampLoad({
      torque: { value: 50, unit: 'N.m' },
      thread: bolt('M10'),
      propertyClass: '5.6',
      nutFactor: 0.2,
      scatterPercent: 25,
    })
    expect(answer.verdict).toBe('cannot tell')
  })

  it('is linear in the torque and falls with K', () => {
    law(
      50,
      fc.double({ min: 1, max: 500, noNaN: true }),
      fc.double({ min: 0.05, max: 0.5, noNaN: true }),
      (value, factor) => {
        const at = (torque: number, K: number) => {
          const answer = clampLoad({
            torque: { value: torque, unit: 'N.m' },
            thread: bolt('M12'),
            propertyClass: '10.9',
            nutFactor: K,
            scatterPercent: 25,
          })
          return answer.verdict === 'load' ? answer.load.value : Number.NaN
        }
        expect(at(2 * value, factor) / at(value, factor)).toBeCloseTo(2, 9)
        expect(at(value, factor * 1.5)).toBeLessThan(at(value, factor))
      },
    )
  })
})

/** Across flats and ISO 273 medium holes in mm, from memory, for the bearing diameter (0.9·s + hole) / 2. */
const HEAD_SIZES: Readonly<Record<string, readonly [flats: number, hole: number]>> = {
  M8x1: [13, 9],
  'M10x1.25': [16, 11],
  'M12x1.25': [18, 13.5],
  'M14x1.5': [21, 15.5],
  'M16x1.5': [24, 17.5],
  'M20x1.5': [30, 22],
}

describe('nutFactor against VDI 2230 (2001), fine threads (R2)', () => {
  const rows = VDI_2230_FINE.flatMap((row) => {
    const head = HEAD_SIZES[row.thread]
    return head === undefined ? [] : [{ ...row, head }]
  })

  it.each(rows)(
    '$thread µ $friction: the table’s own M/(F·d) within 2 %',
    ({ thread, friction, head, ...row }) => {
      const [flats, hole] = head
      const K = nutFactor({
        thread: metric(thread),
        threadFriction: Number(friction),
        headFriction: Number(friction),
        bearingDiameter: { value: (0.9 * flats + hole) / 2, unit: 'mm' },
      })
      for (const [at, newtonMetres] of row.newtonMetres.entries()) {
        const printed =
          Number(newtonMetres) / (Number(row.kilonewtons[at]) * metric(thread).majorDiameter.value)
        expect(Math.abs(K / printed - 1)).toBeLessThan(0.02)
      }
    },
  )

  it('M8×1: 0.138, 0.162, 0.185 (worked from the printed table)', () => {
    const K = ['0.10', '0.12', '0.14'].map((friction) =>
      nutFactor({
        thread: metric('M8x1'),
        threadFriction: Number(friction),
        headFriction: Number(friction),
        bearingDiameter: { value: 10.35, unit: 'mm' },
      }).toFixed(3),
    )
    expect(K).toEqual(['0.138', '0.162', '0.185'])
  })

  it('the table is consistent: each row’s K lies between 0.12 and 0.2 and rises with friction', () => {
    const byThread = new Map<string, number>()
    for (const { thread, kilonewtons, newtonMetres } of VDI_2230_FINE) {
      const K = Number(newtonMetres[0]) / (Number(kilonewtons[0]) * metric(thread).majorDiameter.value)
      expect(K).toBeGreaterThan(0.12)
      expect(K).toBeLessThan(0.2)
      expect(K).toBeGreaterThan(byThread.get(thread) ?? 0)
      byThread.set(thread, K)
    }
  })
})
