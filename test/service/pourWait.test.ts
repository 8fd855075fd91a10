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
const withBore = (toolbox: Toolbox, value: number): Toolbox => ({
  ...toolbox,
  fillers: Object.fromEntries(
    Object.entries(toolbox.fillers).map(([id, filler]) => [
      id,
      { ...filler, hose: { ...filler.hose, bore: { value, unit: 'mm' as const } } },
    ]),
  ),
})
const textOf = (plan: ReturnType<typeof planExample>) => renderText(cardOf(plan)).replaceAll(/\s+/g, ' ')
const pourOf = ({ waits }: ReturnType<typeof planExample>) => waits.find(({ kind }) => kind === 'pour')
const codesOf = (plan: ReturnType<typeof planExample>) => pourOf(plan)?.reasons.map(({ code }) => code)

describe('the wait for the hose', () => {
  it('is printed in whole minutes from the start of the pour, with the sign that it is over', () => {
    const plan = planExample('kvist-2')
    const seconds = pourOf(plan)?.seconds ?? 0
    const minutes = Math.round(seconds / 60)
    expect(seconds % 60).not.toBe(0)
    const card = textOf(plan)
    expect(card).toContain(
      `Wait until nothing drips from the hose: about ${minutes} min from the start of the pour.`,
    )
    expect(card).toContain(`pour, about ${minutes} min from the start of the pour, until nothing drips`)
    expect(card).not.toMatch(/hose fills|funnel empties|hose empties/)
    // The figures of a short line are in its margin.
    expect(renderText(shortenCard(cardOf(plan))).replaceAll(/\s+/g, ' ')).toMatch(
      new RegExp(`hose empty when nothing drips.{0,40} about ${minutes} min`),
    )
  })

  it('at frost suggests to warm the bottle, at 0 °C too, and not above', () => {
    const at = (value: number) => planExample('kvist-2', { request: { ambient: { value, unit: 'degC' } } })
    for (const degrees of [-10, 0]) expect(codesOf(at(degrees))).toContain('service/warm-the-bottle')
    expect(codesOf(at(1))).not.toContain('service/warm-the-bottle')
    expect(textOf(at(-10))).toContain('At −10 °C oil is thick: keep the bottle indoors before the visit')
  })

  it('1.11: where the bore is not known says when it is over, and gives a range for usual hoses', () => {
    const box = withoutBore(readExample('kvist-2', 'toolbox'))
    expect(parseDocument('toolbox', box).ok).toBe(true)
    const plan = planExample('kvist-2', { toolbox: withoutBore })
    expect(pourOf(plan)?.seconds).toBeUndefined()
    expect(codesOf(plan)).toEqual(['service/hose-bore-not-known', 'service/usual-hoses'])
    // The limits are the times through hoses of 8 and 16 mm, in whole minutes, rounded outward.
    const secondsAt = (bore: number) =>
      pourOf(planExample('kvist-2', { toolbox: (box) => withBore(box, bore) }))?.seconds ?? 0
    const params = pourOf(plan)?.reasons[1]?.params ?? {}
    const { fastest, slowest } = params as Record<string, { value: number }>
    expect([fastest?.value, slowest?.value]).toEqual([
      Math.max(1, Math.floor(secondsAt(16) / 60)),
      Math.ceil(secondsAt(8) / 60),
    ])
    const card = textOf(plan)
    expect(card).toContain(
      `Wait until nothing drips from the hose. About ${fastest?.value} to ${slowest?.value} min for usual hoses (bore 8 to 16 mm).`,
    )
    expect(card).toContain('until nothing drips')
    expect(plan.findings).toEqual([])
  })

  it('1.11: where no usual hose can be calculated, only says when it is over', () => {
    const shortBox = (box: Toolbox): Toolbox => {
      const boxWithoutBore = withoutBore(box)
      const [[id, filler] = []] = Object.entries(boxWithoutBore.fillers)
      if (id === undefined || filler === undefined) throw new Error('no filler')
      const hose = { ...filler.hose, drop: { value: 2, unit: 'm' }, length: { value: 1, unit: 'm' } } as const
      return { ...boxWithoutBore, fillers: { [id]: { ...filler, hose } } }
    }
    expect(codesOf(planExample('kvist-2', { toolbox: shortBox }))).toEqual(['service/hose-bore-not-known'])
  })
})
