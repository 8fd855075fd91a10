import { requireOneOf, requireShape, requireTree, type Shape } from '../base/index.js'
import type { CardModel, CardPart, PictureName } from './cardParts.js'

const LINE = [{ text: 'string', 'from?': 'string', 'tone?': 'string' }] as const
const CAUTION = { 'word?': 'string', line: LINE } as const
const STEP = { number: 'number', cautions: [CAUTION], full: LINE, short: LINE, 'note?': LINE } as const
const DRAWING = { stated: {}, trueBand: { low: 'number', high: 'number' }, setting: 'number' } as const

const PARTS: Readonly<Record<CardPart['kind'], Shape>> = {
  table: { caption: LINE, columns: ['string'], rows: [[{ lines: [LINE], 'drawing?': DRAWING }]] },
  list: { 'heading?': 'string', items: [{ line: LINE, notes: [LINE] }] },
  plate: { name: LINE, rows: [{ label: LINE, value: LINE, size: 'string', notes: [LINE] }] },
  steps: { groups: [{ heading: LINE, steps: [STEP] }] },
  blanks: { 'heading?': LINE, fields: [{ label: 'string', 'choices?': ['string'] }] },
}

const PICTURES: readonly PictureName[] = ['plug', 'washer', 'wheel marks', 'pour']

const CARD: Shape = {
  language: 'string',
  direction: 'string',
  extent: 'string',
  title: 'string',
  shortTitle: 'string',
  machine: LINE,
  about: LINE,
  'header?': LINE,
  variant: { label: 'string', lines: [LINE] },
  facts: [{ label: 'string', value: LINE }],
  authority: ['string'],
  cautions: { label: 'string', cautions: [CAUTION] },
  sections: [{ id: 'string', heading: 'string', parts: [{}] }],
  marks: { pictures: { '*': 'string' }, legend: { '*': 'string' } },
}

/** Throws TypeError, naming the place, for anything that is not a card of {@link cardModel}. */
export function requireCard(card: CardModel): void {
  const cure = 'pass the result of cardModel'
  if (card?.kind !== 'service-card')
    throw new TypeError(`card must be a card, with kind 'service-card'; ${cure}`)
  requireTree('card', card)
  requireShape('card', card, CARD, cure)
  for (const [index, { parts }] of card.sections.entries())
    for (const [place, part] of parts.entries()) {
      const at = `card.sections[${index}].parts[${place}]`
      requireOneOf(`${at}.kind`, part.kind, Object.keys(PARTS))
      requireShape(at, part, PARTS[part.kind], cure)
      if ('picture' in part && part.picture !== undefined)
        requireOneOf(`${at}.picture`, part.picture, PICTURES)
    }
}
