import { describe, expect, it } from 'vitest'
import { kitContents } from '../../src/v1/service.js'
import type { SpecSheet } from '../../src/v1/spec.js'
import { planExample } from '../support/planExample.js'

const ADDITIVE = 'limited-slip additive'
const additives = (sheet: (sheet: SpecSheet) => SpecSheet = (same) => same) => {
  const kit = kitContents(planExample('bud-3', { sheet }))
  return [kit.oil, kit.buy.oil].map((oils) => oils.filter(({ oil }) => oil === ADDITIVE))
}

describe('the additive of a limited-slip differential', () => {
  it('goes into the van, and is bought, since a shelf keeps none', () => {
    const bottle = { oil: ADDITIVE, volume: { value: 100, unit: 'mL' } }
    expect(additives()).toEqual([[bottle], [bottle]])
  })

  it('is left out where the manual states no volume', () => {
    const unstated = (sheet: SpecSheet): SpecSheet =>
      JSON.parse(
        JSON.stringify(sheet, (key, value) =>
          key === 'additive' ? { ...value, volume: { kind: 'not stated', unit: 'mL' } } : value,
        ),
      )
    expect(additives(unstated)).toEqual([[], []])
  })
})
