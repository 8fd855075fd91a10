import { describe, expect, it } from 'vitest'
import { renderText } from '../../src/card/renderText.js'
import { shortenCard } from '../../src/card/shortenCard.js'

import { parseDocument, type Toolbox } from '../../src/v1/spec.js'
import { cardOf, planExample } from '../support/planExample.js'
import { readExample } from '../support/readExample.js'

const withoutBore = (toolbox: Toolbox): Toolbox => ({
  ...toolbox,
  fillers: Object.fromEntries(
    Object.entries(toolbox.fillers).map(([id, filler]) => {
      const { bore: _, ...hose } = filler.hose
      return [id, { ...filler, hose }]
    }),
  ),
})
const textOf = (plan: ReturnType<typeof planExample>) => renderText(cardOf(plan)).replaceAll(/\s+/g, ' ')
const pourOf = ({ waits }: ReturnType<typeof planExample>) => waits.find(({ kind }) => kind === 'pour')
const codesOf = (plan: ReturnType<typeof planExample>) => pourOf(plan)?.reasons.map(({ code }) => code)

describe('the wait for the hose', () => {
  it('is printed in whole minutes from the start of the pour, with its end sign', () => {
    const plan = planExample('kvist-2')
    const seconds = pourOf(plan)?.seconds ?? 0
    const minutes = Math.round(seconds / 60)
    expect(seconds % 60).not.toBe(0)
    const card = textOf(plan)
    expect(card).toContain(
      `Wait until nothing drips from the hose: about ${minutes} min from the start of the pour.`,
    )
    expect(card).toContain(
      `Time: about ${minutes} min Note: from the start of the pour; done when nothing drips`,
    )
    expect(card).not.toMatch(/hose fills|funnel empties|hose empties/)
    expect(renderText(shortenCard(cardOf(plan))).replaceAll(/\s+/g, ' ')).toContain(
      `Hose empty when nothing drips (about ${minutes} min from the start of the pour)`,
    )
  })

  it('at frost suggests to warm the bottle, at 0 °C too, and not above', () => {
    const at = (value: number) => planExample('kvist-2', { request: { ambient: { value, unit: 'degC' } } })
    for (const cold of [-10, 0]) expect(codesOf(at(cold))).toContain('service/warm-the-bottle')
    expect(codesOf(at(1))).not.toContain('service/warm-the-bottle')
    expect(textOf(at(-10))).toContain('At −10 °C oil is thick: keep the bottle indoors before')
  })

  it('where the bore is not known has its end sign alone', () => {
    const box = withoutBore(readExample('kvist-2', 'toolbox'))
    expect(parseDocument('toolbox', box).ok).toBe(true)
    const plan = planExample('kvist-2', { toolbox: withoutBore })
    expect(pourOf(plan)?.seconds).toBeUndefined()
    expect(codesOf(plan)).toEqual(['service/hose-bore-not-known'])
    const card = textOf(plan)
    expect(card).toContain('Wait until nothing drips from the hose.')
    expect(card).toContain('done when nothing drips')
    expect(plan.findings).toEqual([])
  })
})
