import fc from 'fast-check'
import { expect, it } from 'vitest'
import { en } from '../../src/message/en/index.js'
import {
  type CardModel,
  cardModel,
  cardStyle,
  cueList,
  paperModel,
  renderText,
  wallModel,
} from '../../src/v1/card.js'
import { type WallFacts, wallFacts } from '../../src/v1/service.js'
import { law } from '../support/law.js'
import type { JudgedPlan } from '../support/planExample.js'
import { readExample } from '../support/readExample.js'
import { withHostileNames } from './hostilePlan.js'

// A name of a document is only text: it changes no part, no scene and no style of any paper.

const anyName = fc.oneof(fc.string({ unit: 'binary', maxLength: 40 }), fc.string({ maxLength: 40 }))

const shapeOf = ({ sections }: CardModel) => sections.map(({ parts }) => parts.map(({ kind }) => kind))

function card(plan: JudgedPlan): CardModel {
  const { findings, ...value } = plan
  return cardModel({ value, findings }, en)
}

function wallOf(): WallFacts {
  const facts = wallFacts(
    { sheet: readExample('tind-4', 'sheet'), identity: {}, toolbox: readExample('tind-4', 'toolbox') },
    { iso6789: '2017' },
  )
  if (!facts.ok) throw new Error(JSON.stringify(facts.findings))
  return facts.value
}
const wall = wallOf()

it('the scenes of a film are the same for any name, and their sheet has the same parts (law)', () => {
  const plain = cueList(withHostileNames('plain'), en)
  const plainPaper = paperModel({ kind: 'cues', plan: withHostileNames('plain'), cues: plain }, en)
  law(30, anyName, (name) => {
    const plan = withHostileNames(name)
    const cues = cueList(plan, en)
    const about = (all: typeof cues) => all.map(({ id, kind, from, shots }) => [id, kind, from, shots.length])
    expect(about(cues)).toEqual(about(plain))
    for (const { say } of cues)
      for (const { text } of say) expect(text).not.toMatch(/[\n\u202a-\u202e\u2066-\u2069]/)
    expect(shapeOf(paperModel({ kind: 'cues', plan, cues }, en))).toEqual(shapeOf(plainPaper))
  })
})

it('the style of a card is the same for any name, and has none of it (law)', () => {
  const plain = cardStyle(card(withHostileNames('plain')))
  law(30, anyName, (name) => {
    expect(cardStyle(card(withHostileNames(name)))).toBe(plain)
  })
})

it('a wall card has the same parts for any name, and prints (law)', () => {
  const renamed = (name: string) => withHostileNames(name, wall as never) as unknown as WallFacts
  const plain = shapeOf(wallModel(renamed('plain'), en))
  law(30, anyName, (name) => {
    const model = wallModel(renamed(name), en)
    expect(shapeOf(model)).toEqual(plain)
    expect(renderText(model)).not.toMatch(/undefined|NaN|\[object|[\u202a-\u202e]/)
  })
})
