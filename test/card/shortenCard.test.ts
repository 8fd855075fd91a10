import { describe, expect, it } from 'vitest'
import { renderShortCard } from '../../src/card/renderShortCard.js'
import { shortenCard } from '../../src/card/shortenCard.js'
import { en } from '../../src/message/en/index.js'
import { cardModel } from '../../src/v1/card.js'
import { planExample } from '../support/planExample.js'

describe('the short card', () => {
  it('has no heading without anything below it', () => {
    const card = shortenCard(cardModel(planExample('tind-4'), en))
    expect(card.sections.filter(({ parts }) => parts.length === 0)).toEqual([])
    expect(renderShortCard(cardModel(planExample('tind-4'), en))).not.toContain(
      'Not in the manual; not known',
    )
  })

  it('still says what is missing where something is', () => {
    const html = renderShortCard(cardModel(planExample('kvist-2'), en))
    expect(html).toContain('Not in the manual; not known')
    expect(html).toContain('torque not stated')
  })
})
