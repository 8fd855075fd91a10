import { describe, expect, it } from 'vitest'
import { kitContents } from '../../src/v1/service.js'
import type { SpecSheet, Stock } from '../../src/v1/spec.js'
import { planExample } from '../support/planExample.js'

const SEALANT = 'pipe sealant with PTFE'
const sealantLines = (stock?: (stock: Stock) => Stock, sheet?: (sheet: SpecSheet) => SpecSheet) => {
  const plan = planExample('bud-3', { ...(stock ? { stock } : {}), ...(sheet ? { sheet } : {}) })
  return { plan, lines: plan.seals.filter(({ seal }) => seal.kind === 'thread sealant') }
}

describe('sealant for several plugs', () => {
  it('is one package to buy, and one in the kit', () => {
    const { plan, lines } = sealantLines()
    expect(lines.map(({ buy }) => buy)).toEqual([1, 0])
    expect(lines.map(({ reasons }) => reasons.some(({ code }) => code === 'seal/buy'))).toEqual([true, false])
    const kit = kitContents(plan)
    const count = (seals: typeof kit.seals) =>
      seals.filter(({ name }) => name.includes(SEALANT)).map((seal) => seal.count)
    expect([count(kit.seals), count(kit.buy.seals)]).toEqual([[1], [1]])
  })

  it('from the shelf is one package for both', () => {
    const tube = { kind: 'thread sealant', product: SEALANT, replace: 'every opening' } as const
    const { lines } = sealantLines((stock) => ({
      ...stock,
      seals: { ...stock.seals, tube: { name: 'tube', seal: tube, count: 1 } },
    }))
    expect(lines.map(({ buy, stock }) => [buy, stock?.id])).toEqual([
      [0, 'tube'],
      [0, 'tube'],
    ])
  })

  it('of two products is two packages', () => {
    const { lines } = sealantLines(undefined, (sheet) => {
      const text = JSON.stringify(sheet)
      const first = text.indexOf(SEALANT)
      return JSON.parse(`${text.slice(0, first)}anaerobic ${text.slice(first)}`)
    })
    expect(lines.map(({ buy }) => buy)).toEqual([1, 1])
  })
})
