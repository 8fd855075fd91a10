import { describe, expect, it } from 'vitest'
import { renderText } from '../../src/v1/card.js'
import { en } from '../../src/v1/message/en.js'
import { renderMessage } from '../../src/v1/message.js'
import { checkDocuments } from '../../src/v1/rules.js'
import { kitContents } from '../../src/v1/service.js'
import type { SpecSheet, Stock } from '../../src/v1/spec.js'
import { cardOf, planExample, TODAY } from '../support/planExample.js'
import { readExample } from '../support/readExample.js'

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

describe('1.15: the working temperature that seals are judged by', () => {
  const setWorkingTemperature = (value: string) => (sheet: SpecSheet) => ({
    ...sheet,
    gearcases: {
      ...sheet.gearcases,
      front: {
        ...(sheet.gearcases['front'] as SpecSheet['gearcases'][string]),
        workingTemperature: { kind: 'limits', max: value, unit: 'degC' } as const,
      },
    },
  })

  it('is among the figures of its gearcase, and nowhere where none is stated', () => {
    const text = (plan: ReturnType<typeof planExample>) => renderText(cardOf(plan)).replaceAll(/\s+/g, ' ')
    expect(text(planExample('tind-4', { sheet: setWorkingTemperature('90') }))).toMatch(
      /Working temperature: .{0,9}90 °C/,
    )
    expect(text(planExample('tind-4'))).not.toContain('Working temperature')
  })

  it('is named in the finding about a ring that may not last', () => {
    const sheets = [
      { name: 'sheet.json', document: setWorkingTemperature('90')(readExample('tind-4', 'sheet')) },
    ]
    const set = { sheets, logs: [], toolboxes: [], stocks: [], procedures: [], records: [] }
    const found = checkDocuments(set, { today: TODAY }).filter(
      ({ code }) => code === 'seal/material-doubtful-in-oil',
    )
    expect(found.map((item) => renderMessage(item, en))).toEqual([
      expect.stringContaining('the working temperature, 90\u00a0°C, is higher'),
    ])
  })
})
