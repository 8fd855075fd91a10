import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { shortenCard } from '../../src/card/shortenCard.js'
import { renderHtml, renderText } from '../../src/v1/card.js'
import { parseDocument } from '../../src/v1/spec.js'
import { cardOf, planExample, planRequest, TODAY } from '../support/planExample.js'
import { readExample } from '../support/readExample.js'

/**
 * The second tractor of the examples: its meter was last read in June, so no service can be judged and none is chosen.
 */
function planIdle() {
  const sheet = { ok: true, value: readExample('acre-26', 'sheet') } as const
  const log = parseDocument('machine-log', parse(readFileSync('examples/acre-26/log-stale.yaml', 'utf8')))
  if (!sheet.ok || !log.ok) throw new Error('the example cannot be read')
  const due = { soon: { hours: 10 }, staleAfter: { days: 30 }, severity: 'normal' } as const
  const planned = planRequest({
    sheet: sheet.value,
    log: log.value,
    services: 'due',
    today: TODAY,
    due,
    iso6789: '2017',
  })
  if (!planned.ok) throw new Error('no plan')
  return { ...planned.value, findings: planned.findings }
}

describe('a visit without work', () => {
  const plan = planIdle()
  const card = cardOf(plan)
  const text = renderText(card)

  it('says so, and leaves out what only work would fill', () => {
    expect(plan.work).toEqual([])
    expect(card.sections.map(({ id }) => id)).toEqual(['due', 'missing', 'record', 'sources'])
    expect(text).toContain('No service in this visit.')
    expect(text).not.toMatch(/0 s|Drain pan|torque wrench|Leak/)
    expect(plan).not.toHaveProperty('pan')
  })

  it('its card with all details lists the missing facts', () => {
    expect(shortenCard(card).sections.map(({ id }) => id)).toEqual(['missing'])
  })

  it('lays out as HTML without a list or table of nothing', () => {
    expect(renderHtml(card)).not.toMatch(/<(ul|ol|tbody|dl)[^>]*>\s*<\/\1>/)
  })

  it('names parts with the same count once, and the service that counted by its name', () => {
    const joinedText = text.replace(/\s+/g, ' ')
    expect(joinedText).toContain(
      'Front axle housing: front axle oil change; Hub reduction (left): front axle oil change; Hub reduction (right): front axle oil change — not known',
    )
    expect(joinedText.match(/Front axle oil change on 2022-09-30 counts as this service/gi)).toHaveLength(1)
    expect(joinedText).not.toContain('front-axle-oil-change')
    expect(joinedText).toContain(
      'Unknown whether the front axle oil change is due (front axle housing; hub reduction, left; hub reduction, right). The last reading',
    )
    expect(joinedText.match(/Unknown whether/g)).toHaveLength(2)
    expect(plan.missing).toHaveLength(2)
    expect(joinedText).toContain('The last reading of the hour meter is 108 days old (2023-06-20')
  })
})

it('a visit of checks alone needs no pan, and still ends with the leak check', () => {
  const plan = planExample('tind-4', { services: ['gear-oil-check'] })
  expect(plan).not.toHaveProperty('pan')
  const text = renderText(cardOf(plan))
  expect(text).not.toContain('Drain pan')
  expect(text).toMatch(/Check each plug and joint that\s+you\s+opened\s+for\s+oil/)
})
