import { expect, it } from 'vitest'
import { renderText } from '../../src/v1/card.js'
import { parseDocument } from '../../src/v1/spec.js'
import { add, patched } from '../support/patched.js'
import { cardOf, planExample } from '../support/planExample.js'
import { readExample } from '../support/readExample.js'

const supplies = ['brake cleaner', 'gloves and goggles', 'constructor', 'brake cleaner']
const sheet = patched(add('/services/gear-oil-change/supplies', supplies))

it('further supplies of a service are on the plan once, after those of its steps', () => {
  const plan = planExample('tind-4', { sheet })
  const listed = plan.consumables.map(({ params }) => params['supply'])
  expect(listed.slice(-2)).toEqual(['brake cleaner', 'constructor'])
  expect(new Set(listed).size).toBe(listed.length)
  expect(planExample('tind-4', { sheet, services: ['gear-oil-check'] }).consumables).not.toContainEqual(
    expect.objectContaining({ params: { supply: 'brake cleaner' } }),
  )
  const text = renderText(cardOf(plan))
  expect(text).toContain('[ ] Brake cleaner.')
  expect(text).toContain('[ ] Constructor.')
})

it('is a key of the sheet, a list of texts', () => {
  expect(parseDocument('spec-sheet', sheet(readExample('tind-4', 'sheet')))).toMatchObject({
    ok: true,
    findings: [],
  })
  const badSupplies = patched(add('/services/gear-oil-change/supplies', 'brake cleaner'))(
    readExample('tind-4', 'sheet'),
  )
  expect(parseDocument('spec-sheet', badSupplies).ok).toBe(false)
})
