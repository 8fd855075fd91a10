import { describe, expect, it } from 'vitest'
import { kitContents } from '../../src/v1/service.js'
import type { SpecSheet } from '../../src/v1/spec.js'
import { planExample } from '../support/planExample.js'

const ADDITIVE = 'limited-slip additive'
const additives = (sheet: (sheet: SpecSheet) => SpecSheet = (unchanged) => unchanged) => {
  const kit = kitContents(planExample('bud-3', { sheet }))
  return [kit.oil, kit.buy.oil].map((oils) => oils.filter(({ oil }) => oil === ADDITIVE))
}

describe('the additive of a limited-slip differential', () => {
  it('goes into the van, and is bought, since a shelf keeps none', () => {
    const bottle = { oil: ADDITIVE, volume: { value: 100, unit: 'mL' } }
    expect(additives()).toEqual([[bottle], [bottle]])
  })

  it('is left out where the manual states no volume', () => {
    const withoutVolume = (sheet: SpecSheet): SpecSheet =>
      JSON.parse(
        JSON.stringify(sheet, (key, value) =>
          key === 'additive' ? { ...value, volume: { kind: 'not stated', unit: 'mL' } } : value,
        ),
      )
    expect(additives(withoutVolume)).toEqual([[], []])
  })
})

describe('a kit of two gearcases with the same oil', () => {
  const kitOf = (value: number, unit: 'L' | 'qt_us') => {
    const part = { path: '/gearcases/front', gearcase: 'front differential' }
    const oil = {
      ...{
        part,
        figure: '',
        refill: '',
        instances: 1,
        choice: 'SAE 80W-90, API GL-5',
        take: [],
        reasons: [],
      },
      needed: { value, unit },
    }
    const plan = {
      machine: { log: 'one', name: 'One' },
      oil: [oil, oil],
      seals: [],
      tightenings: [],
      tools: [],
    }
    return kitContents(plan as unknown as Parameters<typeof kitContents>[0]).oil[0]?.volume
  }

  it('adds volumes as they are written, and rounds once', () => {
    expect(kitOf(1.001, 'L')).toEqual({ value: 2002, unit: 'mL' })
    expect(kitOf(1, 'qt_us')).toEqual({ value: 1892.705892, unit: 'mL' })
  })

  it('gives every volume of up to three decimals its millilitres', () => {
    for (let count = 1; count < 20_000; count += 7)
      if (kitOf(count / 1000, 'L')?.value !== 2 * count) throw new Error(`${count / 1000} L twice`)
    expect(kitOf(19.999, 'L')).toEqual({ value: 39_998, unit: 'mL' })
  })
})
