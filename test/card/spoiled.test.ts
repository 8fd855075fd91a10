import { describe, expect, it } from 'vitest'
import { cardModel } from '../../src/card/cardModel.js'
import type { CardModel } from '../../src/card/cardParts.js'
import { cueList } from '../../src/card/cueList.js'
import { paperModel } from '../../src/card/paperModel.js'
import { renderHtml } from '../../src/card/renderHtml.js'
import { renderMarkdown } from '../../src/card/renderMarkdown.js'
import { renderText } from '../../src/card/renderText.js'
import { renderWebVtt } from '../../src/card/renderWebVtt.js'
import { shortenCard } from '../../src/card/shortenCard.js'
import { slipModel } from '../../src/card/slipModel.js'
import { type OwnerSlip, ownerSlip, type VisitPlan } from '../../src/service/index.js'
import { en } from '../../src/v1/message/en.js'
import { planExample, requestExample } from '../support/planExample.js'

// A plan or a card that a caller assembled or cut wrongly: each part in turn is omitted or has another value. The
// functions may return or throw, but they throw their own errors, never those of the engine.

const ring: Record<string, unknown> = {}
ring['ring'] = ring
const SPOILT: Readonly<Record<string, unknown>> = {
  nothing: undefined,
  null: null,
  'a number': 7,
  'a ring': ring,
}
const OWN = /^[a-z]+(\.|\[|\b).* must (be|contain) |^text must be /

type Path = readonly (string | number)[]

/** Every path of a value down to a depth; for a list, only the first entry of each set of keys. */
function paths(value: unknown, depth: number, path: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null || depth === 0) return [path]
  const seen = new Set<string>()
  const entries = Object.entries(value).filter(([, child]) => {
    const keys = Object.keys((child as object | null) ?? {}).join()
    return !Array.isArray(value) || (!seen.has(keys) && seen.add(keys))
  })
  return [path, ...entries.flatMap(([key, child]) => paths(child, depth - 1, [...path, key]))]
}

function makeInvalid(value: unknown, [key, ...rest]: Path, by: unknown): unknown {
  if (key === undefined) return by
  if (Array.isArray(value))
    return value.map((item, at) => (String(at) === key ? makeInvalid(item, rest, by) : item))
  const fields = value as Readonly<Record<string, unknown>>
  return { ...fields, [key]: makeInvalid(fields[key], rest, by) }
}

function faultsOf(value: unknown, depth: number, run: (invalidValue: never) => unknown): readonly string[] {
  return paths(value, depth).flatMap((path) =>
    Object.entries(SPOILT).flatMap(([kind, by]) => {
      try {
        run(makeInvalid(value, path, by) as never)
        return []
      } catch (error) {
        const message = error instanceof Error ? error.message : String(error)
        return OWN.test(message) ? [] : [`/${path.join('/')} ${kind}: ${message}`]
      }
    }),
  )
}

const { findings, ...plan } = planExample('kvist-2')
const card = cardModel({ value: plan, findings }, en)

describe('a spoiled plan', () => {
  it('is read or refused by name', () => {
    expect(paths(plan, 3).length).toBeGreaterThan(150)
    expect(faultsOf(plan, 3, (value: VisitPlan) => cardModel({ value, findings }, en))).toEqual([])
    expect(faultsOf(plan, 3, (value: VisitPlan) => cueList(value, en))).toEqual([])
    const cues = cueList(plan, en)
    const starts = cues.map((_cue, place) => place * 400)
    expect(faultsOf(cues, 3, (value: typeof cues) => renderWebVtt(value, starts))).toEqual([])
    expect(
      faultsOf(cues, 3, (value: typeof cues) => paperModel({ kind: 'cues', plan, cues: value }, en)),
    ).toEqual([])
  })

  it('is named with what was expected', () => {
    const build = (value: unknown) => () => cardModel({ value, findings: [] } as never, en)
    expect(build(null)).toThrow('planned.value must be an object, got null')
    expect(build({ kind: 'spec-sheet' })).toThrow(
      "planned.value must be a visit plan, with kind 'visit-plan'",
    )
    expect(build({ ...plan, oil: 7 })).toThrow('planned.value.oil must be a list, got 7')
    expect(build({ ...plan, oil: [{ ...plan.oil[0], part: null }] })).toThrow(
      'planned.value.oil[0].part must be',
    )
    expect(build({ ...plan, due: [ring] })).toThrow('planned.value must be nested at most')
  })
})

describe("a spoiled owner's slip", () => {
  it('is read or refused by name', () => {
    const { sheet, log, today, due } = requestExample('acre-26')
    const slip = ownerSlip({ sheet, log, today, faults: [] }, { due })
    expect(paths(slip, 5).length).toBeGreaterThan(80)
    expect(faultsOf(slip, 5, (value: OwnerSlip) => slipModel(value, en))).toEqual([])
  })
})

describe('a spoiled card', () => {
  it.each([
    ['renderHtml', renderHtml],
    ['renderMarkdown', renderMarkdown],
    ['renderText', renderText],
    ['shortenCard', shortenCard],
  ] as const)('%s', (_name, render: (card: CardModel) => unknown) => {
    expect(faultsOf(card, 5, render)).toEqual([])
  })
})
