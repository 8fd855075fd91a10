import { describe, expect, it } from 'vitest'
import { renderHtml } from '../../src/card/renderHtml.js'
import { shortenCard } from '../../src/card/shortenCard.js'
import { cardOf, planExample } from '../support/planExample.js'

describe('the short card', () => {
  it('has no heading without anything below it', () => {
    const card = shortenCard(cardOf(planExample('tind-4')))
    expect(card.sections.filter(({ parts }) => parts.length === 0)).toEqual([])
    expect(renderHtml(shortenCard(cardOf(planExample('tind-4'))))).not.toContain(
      'Not in the manual; not known',
    )
  })

  it('still lists missing facts', () => {
    const html = renderHtml(shortenCard(cardOf(planExample('kvist-2'))))
    expect(html).toContain('Not in the manual; not known')
    expect(html).toContain('torque not stated')
  })
})
