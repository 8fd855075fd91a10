import { requireOneOf, requireShape, requireTree, type Shape } from '../base/index.js'
import type { CardDrawing, CardModel, CardPart, CardPicture, PictureName } from './cardParts.js'

const LINE_SHAPE = [{ text: 'string', 'from?': 'string', 'tone?': 'string' }] as const
const CAUTION_SHAPE = { 'word?': 'string', line: LINE_SHAPE } as const
const PICTURE_SHAPE = { name: LINE_SHAPE, drawing: { kind: 'string' }, text: [LINE_SHAPE] } as const
const STEP_SHAPE = {
  number: 'number',
  steps: ['string'],
  cautions: [CAUTION_SHAPE],
  full: LINE_SHAPE,
  short: LINE_SHAPE,
  figures: [LINE_SHAPE],
  'note?': LINE_SHAPE,
} as const
const DRAWING_SHAPE = { stated: {}, trueBand: { low: 'number', high: 'number' }, setting: 'number' } as const

const PART_SHAPES: Readonly<Record<CardPart['kind'], Shape>> = {
  table: {
    caption: LINE_SHAPE,
    columns: ['string'],
    rows: [
      [{ lines: [LINE_SHAPE], 'drawing?': DRAWING_SHAPE, 'bar?': { fraction: 'number', text: 'string' } }],
    ],
  },
  list: { 'heading?': 'string', items: [{ line: LINE_SHAPE, notes: [LINE_SHAPE] }] },
  plate: {
    name: LINE_SHAPE,
    'drawings?': [PICTURE_SHAPE],
    rows: [{ label: LINE_SHAPE, value: LINE_SHAPE, size: 'string', notes: [LINE_SHAPE] }],
  },
  steps: { groups: [{ heading: LINE_SHAPE, steps: [STEP_SHAPE] }] },
  panel: {
    name: LINE_SHAPE,
    drawings: [PICTURE_SHAPE],
    access: LINE_SHAPE,
    quantity: LINE_SHAPE,
    oil: LINE_SHAPE,
    notes: [LINE_SHAPE],
    columns: { tool: 'string', manual: 'string', setting: 'string' },
    rows: [
      {
        mark: LINE_SHAPE,
        name: LINE_SHAPE,
        tool: LINE_SHAPE,
        toolForm: LINE_SHAPE,
        manual: LINE_SHAPE,
        manualNotes: LINE_SHAPE,
        setting: LINE_SHAPE,
        wrench: LINE_SHAPE,
        notes: [LINE_SHAPE],
      },
    ],
  },
  picture: PICTURE_SHAPE,
  scenes: {
    columns: { show: 'string', say: 'string', screen: 'string', hold: 'string' },
    scenes: [
      {
        number: 'number',
        title: LINE_SHAPE,
        time: 'string',
        shots: [{ text: 'string', marks: ['string'] }],
        say: [{ text: 'string' }],
        screen: [LINE_SHAPE],
        hold: [CAUTION_SHAPE],
      },
    ],
  },
  blanks: { 'heading?': LINE_SHAPE, fields: [{ label: 'string', 'choices?': ['string'] }] },
}

const PICTURES: readonly PictureName[] = ['washer', 'wheel marks', 'pour']

const DRAWING_SHAPES: Readonly<Record<CardDrawing['kind'], Shape>> = {
  scale: {
    scale: { lowest: 'number', highest: 'number', graduation: 'number' },
    settings: [{ label: 'string', value: 'number' }],
  },
  pour: {
    bars: [{ label: 'string', 'ends?': [{ seconds: 'number', clock: 'string' }], end: 'string' }],
  },
  jug: { size: 'number', graduation: 'number', marks: [{ value: 'number', label: 'string' }] },
  case: {
    ends: ['string'],
    parts: [{ label: 'string', at: 'string', x: 'number', y: 'number' }],
  },
  wheel: { positions: [{ label: 'string', mark: 'string' }] },
  bolts: { numbers: ['number'], layout: 'string' },
  'true sizes': {
    checkLine: { millimetres: 'number', label: 'string' },
    labels: 'string',
    shapes: [{ kind: 'string', labels: ['string'] }],
  },
}

const CARD_SHAPE: Shape = {
  language: 'string',
  direction: 'string',
  extent: 'string',
  title: 'string',
  shortTitle: 'string',
  machine: LINE_SHAPE,
  about: LINE_SHAPE,
  'header?': LINE_SHAPE,
  variant: { label: 'string', lines: [LINE_SHAPE] },
  facts: [{ label: 'string', value: LINE_SHAPE }],
  authority: ['string'],
  cautions: { label: 'string', cautions: [CAUTION_SHAPE] },
  sections: [{ id: 'string', heading: 'string', parts: [{}] }],
  marks: {
    inFull: 'string',
    pictures: { '*': 'string' },
    legend: { '*': 'string' },
    'colon?': 'string',
    'semicolon?': 'string',
  },
}

/** Cards that were checked or made here: checking takes longer than writing, and a card is written in several forms. */
const CHECKED = new WeakSet<CardModel>()

/** Remembers that the card needs no check. */
export function markChecked(card: CardModel): CardModel {
  CHECKED.add(card)
  return card
}

/** Throws a TypeError that names the wrong field if `card` is not a result of {@link cardModel}. */
export function requireCard(card: CardModel): void {
  if (CHECKED.has(card)) return
  const advice = 'pass the result of cardModel'
  if (card?.kind !== 'service-card')
    throw new TypeError(`card must be a card, with kind 'service-card'; ${advice}`)
  requireTree('card', card)
  requireShape('card', card, CARD_SHAPE, advice)
  for (const [index, { parts }] of card.sections.entries())
    for (const [partIndex, part] of parts.entries()) {
      const partPath = `card.sections[${index}].parts[${partIndex}]`
      requireOneOf(`${partPath}.kind`, part.kind, Object.keys(PART_SHAPES))
      requireShape(partPath, part, PART_SHAPES[part.kind], advice)
      if (part.kind === 'picture') requireDrawing(partPath, part)
      if ('drawings' in part)
        for (const [at, one] of (part.drawings ?? []).entries())
          requireDrawing(`${partPath}.drawings[${at}]`, one)
      if ('picture' in part && part.picture !== undefined)
        requireOneOf(`${partPath}.picture`, part.picture, PICTURES)
    }
}

function requireDrawing(path: string, { drawing }: CardPicture): void {
  requireOneOf(`${path}.drawing.kind`, drawing.kind, Object.keys(DRAWING_SHAPES))
  requireShape(`${path}.drawing`, drawing, DRAWING_SHAPES[drawing.kind], 'pass the result of cardModel')
}
