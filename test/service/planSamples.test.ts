import { expect, it } from 'vitest'
import { renderText } from '../../src/v1/card.js'
import { buildProcedure } from '../../src/v1/procedure.js'
import { kitContents } from '../../src/v1/service.js'
import type { SpecSheet } from '../../src/v1/spec.js'
import { build, makeCase, makeSheet, sampledSheet } from '../procedure/sheets.js'
import { add, patched } from '../support/patched.js'
import { cardOf, planExample } from '../support/planExample.js'

const sheet = patched(add('/services/gear-oil-change/samples', ['front']))

it('a service that asks for an oil sample has a step for it, before the oil is left to drain', () => {
  const actions = build(sampledSheet, ['change']).steps.map((step) => step.do)
  const place = actions.indexOf('take an oil sample')
  expect(actions[place + 1]).toBe('let drain')
  expect(actions.slice(0, place)).toContain('warm the oil')
  expect(actions.filter((action) => action === 'take an oil sample')).toHaveLength(1)
  expect(build(sampledSheet, ['change']).steps.filter(({ note }) => note !== undefined)).toEqual([])
})

it('the plan has a bottle and its label, filled in from log and sheet; the kit has the bottle', () => {
  const plan = planExample('tind-4', { sheet })
  const [label, ...others] = plan.consumables.filter(({ code }) => code === 'service/sample-label')
  expect(others).toEqual([])
  expect(label?.params).toMatchObject({
    machine: 'Station 2',
    part: { path: '/gearcases/front' },
    date: '2023-10-06',
    hours: { value: 512.6, unit: 'h' },
    hoursOnOil: { value: 211.2, unit: 'h' },
  })
  expect(kitContents(plan).sampleBottles).toBe(1)
  const text = renderText(cardOf(plan)).replaceAll(/\s+/g, ' ')
  expect(text).toContain('A clean, dry sample bottle with its cap for each oil sample.')
  expect(text).toMatch(
    /Label of the sample: Station 2, front.*, 2023-10-06, 512.6 h, oil not known, 211.2 h on the oil; bottle number ____\./,
  )
  expect(text).toContain('Hold the clean bottle in the middle of the stream')
  expect(kitContents(planExample('tind-4'))).not.toHaveProperty('sampleBottles')
})

it('the label names the oil of the last record that has one', () => {
  const log = patched(
    add('/records/1/entries/0/oil', { name: '80W-90' }),
    add('/records/0/entries/0/oil', { name: 'older' }),
  )
  const plan = planExample('tind-4', { sheet, log } as never)
  expect(plan.consumables.find(({ code }) => code === 'service/sample-label')?.params).toMatchObject({
    oil: '80W-90',
  })
})

it('without a drain plug, or at a check, no sample can be taken: a warning at the place in the sheet', () => {
  const twoCases = makeSheet({ box: makeCase('box', { out: 'suction' }), other: makeCase('other', {}) })
  const change = { ...twoCases.services['change'], gearcases: ['box'], samples: ['box', 'other', 'nowhere'] }
  const built = buildProcedure({
    sheet: { ...twoCases, services: { change } } as SpecSheet,
    identity: { modelYear: 2031 },
    services: ['change'],
  })
  expect(
    built.findings
      .filter(({ code }) => code === 'procedure/sample-not-possible')
      .map(({ path, severity }) => [path, severity]),
  ).toEqual([0, 1, 2].map((place) => [`/services/change/samples/${place}`, 'warning']))
  expect(built.ok && built.value.steps.some((step) => step.do === 'take an oil sample')).toBe(false)
})
