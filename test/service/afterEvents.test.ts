import { expect, it } from 'vitest'
import { renderText } from '../../src/v1/card.js'
import type { LogEvent, MachineLog } from '../../src/v1/spec.js'
import { cardOf, planExample } from '../support/planExample.js'

const withEvent = (event: LogEvent) => (log: MachineLog) => ({ ...log, events: [event] })
const wordsOf = (event: LogEvent) =>
  planExample('tind-4', { log: withEvent(event) }).steps.map((step) => step.do)

it('a submerged machine is carried in, and its card says why', () => {
  const log = withEvent({ kind: 'submersion', date: '2023-10-05' })
  const plan = planExample('tind-4', { log })
  const words = plan.steps.map((step) => step.do)
  expect(words).toContain('carry to level ground')
  expect(words).not.toContain('warm the oil')
  const text = renderText(cardOf(plan)).replaceAll(/\s+/g, ' ')
  expect(text).toContain('Do not start or tow the machine.')
  expect(text).toContain('Gears that turn in water')
})

it('an event before the last change, in the future, or of no harm to the oil changes nothing', () => {
  expect(wordsOf({ kind: 'submersion', date: '2019-01-01' })).toContain('warm the oil')
  expect(wordsOf({ kind: 'submersion', date: '2031-01-01' })).toContain('warm the oil')
  expect(wordsOf({ kind: 'rebuild', date: '2023-10-05' })).toContain('warm the oil')
})
