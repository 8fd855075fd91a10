import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { renderText } from '../../src/card/renderText.js'
import { compareSeals } from '../../src/seal/compareSeals.js'
import { kitContents, orderList } from '../../src/v1/service.js'
import { parseSpecSheet, type Seal, writeShort } from '../../src/v1/spec.js'
import { law } from '../support/law.js'
import { add, patched } from '../support/patched.js'
import { cardOf, planExample, requestExample } from '../support/planExample.js'

const DRAIN = '/gearcases/front/openings/drain/seals/0'
const normalizeSpaces = (text: string) => text.replaceAll(/[\u00a0\s]+/g, ' ')

function planWith(change: object) {
  const sheet = patched(...Object.entries(change).map(([key, value]) => add(`${DRAIN}/${key}`, value)))
  return planExample('tind-4', { sheet, services: ['gear-oil-change'] })
}
const drainOf = (plan: ReturnType<typeof planExample>) => plan.seals.find(({ part }) => part.path === DRAIN)

describe('a part with a superseding number', () => {
  const superseded = {
    supersededBy: { partNumber: 'HB-1419', source: { ref: 'manual', confidence: 'read' } },
  }

  it('is bought under the new number; plan, kit, order list and card show the old one too', () => {
    const plan = planWith(superseded)
    const kit = kitContents(plan)
    expect(kit.seals.map(({ name }) => name)).toContain('HB-1419 (was HB-1418) crush washer 14 × 18 × 1.5 mm')
    const planWithoutNumbers = planExample('tind-4', {
      sheet: patched(add(`${DRAIN}/supersededBy`, { partNumber: 'HB-1419' })),
      stock: (stock) => ({ ...stock, seals: {} }),
      services: ['gear-oil-change'],
    })
    expect(orderList([kitContents(planWithoutNumbers)]).seals.map(({ name }) => name)).toContain(
      'HB-1419 (was HB-1418) crush washer 14 × 18 × 1.5 mm',
    )
    expect(normalizeSpaces(renderText(cardOf(plan)))).toContain('HB-1419 (was HB-1418)')
  })

  it('is in stock under each of its numbers', () => {
    expect(drainOf(planWith(superseded))).toMatchObject({ stock: { id: 'washer-14' }, buy: 0 })
    const byNew = { partNumber: 'HB-1', supersededBy: { partNumber: 'hb-1418' } }
    expect(drainOf(planWith(byNew))).toMatchObject({ stock: { id: 'washer-14' }, buy: 0 })
    const byOther = { partNumber: 'HB-1', equivalents: [{ partNumber: 'KX-9' }, { partNumber: 'HB-1418' }] }
    expect(drainOf(planWith(byOther))).toMatchObject({ stock: { id: 'washer-14' }, buy: 0 })
    expect(drainOf(planWith({ partNumber: 'HB-1' }))?.buy).toBe(1)
  })

  it('an example has one: its new number is on the card', () => {
    const plan = planExample('reach-55')
    expect(normalizeSpaces(renderText(cardOf(plan)))).toContain('BR-3011 (was BR-3001)')
  })
})

describe('documents', () => {
  const { sheet } = requestExample('tind-4')
  const withSeal = (seal: unknown) => ({
    ...sheet,
    gearcases: {
      ...sheet.gearcases,
      front: {
        ...sheet.gearcases['front'],
        openings: {
          ...sheet.gearcases['front']?.openings,
          drain: { ...sheet.gearcases['front']?.openings['drain'], seals: [seal] },
        },
      },
    },
  })
  const seal = sheet.gearcases['front']?.openings['drain']?.seals[0]

  it('a short sheet keeps each number with its source', () => {
    const source = { ref: 'bulletin', page: '2', confidence: 'read' } as const
    const numbered = {
      ...seal,
      supersededBy: { partNumber: 'HB-1419', source },
      equivalents: [{ partNumber: 'KX 14' }],
    }
    const read = parseSpecSheet(withSeal(numbered))
    if (!read.ok) throw new Error(JSON.stringify(read.findings))
    const parsedAgain = parseSpecSheet(writeShort(read.value))
    expect(parsedAgain.ok && parsedAgain.value).toEqual(read.value)
    expect(JSON.stringify(writeShort(read.value))).toContain(
      'superseded by HB-1419 [bulletin p. 2], equivalent to KX 14',
    )
  })

  it.each([
    [{ supersededBy: 'HB-1' }],
    [{ supersededBy: { partNumber: 5 } }],
    [{ supersededBy: { partNumber: Number.NaN } }],
    [{ supersededBy: { partNumber: '' } }],
    [{ supersededBy: { partNumber: 'x'.repeat(30_000) } }],
    [{ supersededBy: { partNumber: 'HB-1', __proto__x: 1 } }],
    [{ equivalents: { partNumber: 'HB-1' } }],
    [{ equivalents: [{}] }],
  ])('%j gives findings', (change) => {
    expect(parseSpecSheet(withSeal({ ...seal, ...change })).ok).toBe(false)
  })
})

it('law: two seals with numbers are the same exactly if they share one, in either order', () => {
  const number = fc.constantFrom('A-1', 'B-2', 'C-3', 'D-4', '__proto__')
  const numbers = fc.record({
    partNumber: number,
    supersededBy: fc.option(number, { nil: undefined }),
    equivalents: fc.array(number, { maxLength: 3 }),
  })
  const sealOf = ({
    partNumber,
    supersededBy,
    equivalents,
  }: {
    partNumber: string
    supersededBy: string | undefined
    equivalents: string[]
  }): Seal => ({
    kind: 'gasket',
    material: 'paper',
    replace: 'every opening',
    partNumber,
    ...(supersededBy !== undefined && { supersededBy: { partNumber: supersededBy } }),
    equivalents: equivalents.map((equivalent) => ({ partNumber: equivalent })),
  })
  law(300, numbers, numbers, (candidate, other) => {
    const all = (part: typeof candidate) => [part.partNumber, part.supersededBy, ...part.equivalents]
    const expected = all(candidate).some((name) => name !== undefined && all(other).includes(name))
      ? 'yes'
      : 'no'
    expect(compareSeals(sealOf(candidate), sealOf(other))).toBe(expected)
    expect(compareSeals(sealOf(other), sealOf(candidate))).toBe(expected)
  })
})
