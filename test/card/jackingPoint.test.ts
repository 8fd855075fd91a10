import { expect, it } from 'vitest'
import { renderText } from '../../src/v1/card.js'
import type { SpecSheet } from '../../src/v1/spec.js'
import { cardOf, planExample } from '../support/planExample.js'

const card = (jack?: string) => {
  const sheet = (given: SpecSheet): SpecSheet => ({
    ...given,
    machine: {
      ...given.machine,
      supports: Object.fromEntries(
        Object.entries(given.machine.supports).map(([id, support]) => [
          id,
          { ...support, ...(jack === undefined ? {} : { jack }) },
        ]),
      ),
    },
  })
  return renderText(cardOf(planExample('tind-4', { sheet }))).replaceAll(/\s+/g, ' ')
}

it('the jack goes where the sheet says, and the stands to their own place', () => {
  const text = card('the tow eye')
  expect(text).toContain('Raise the machine with the jack (the tow eye) and set it on rated stands')
  expect(text).not.toContain('it is not stated here')
})

it('a jacking point that is not stated is in the manual, never at the stands', () => {
  expect(card()).toContain('Find the jacking point in the manual: it is not stated here.')
  expect(card()).toMatch(/WARNING: A parking brake on the lifted axle/)
  expect(card()).toMatch(/Chock both sides of each wheel/)
})
