import type { BlockContent, ListItem, Paragraph, PhrasingContent, Root, RootContent, TableCell } from 'mdast'
import { gfmToMarkdown } from 'mdast-util-gfm'
import { toMarkdown } from 'mdast-util-to-markdown'
import type {
  CardBlanks,
  CardCell,
  CardList,
  CardModel,
  CardPart,
  CardPlate,
  CardSteps,
  CardTable,
  Line,
} from './cardParts.js'
import { requireCard } from './requireCard.js'

const text = (value: string): PhrasingContent => ({ type: 'text', value })
const strong = (line: readonly PhrasingContent[]): PhrasingContent => ({
  type: 'strong',
  children: [...line],
})
const paragraph = (children: PhrasingContent[]): Paragraph => ({ type: 'paragraph', children })
const heading = (depth: 1 | 2 | 3, children: PhrasingContent[]): RootContent => ({
  type: 'heading',
  depth,
  children,
})

/** Gaps are bold; everything else is plain, so that the figure is easy to see. */
function phrasing(line: Line): PhrasingContent[] {
  return line.map(({ text: value, tone }) => (tone === 'gap' ? strong([text(value)]) : text(value)))
}

function cautionParagraph(word: string | undefined, line: Line): Paragraph {
  return paragraph([
    ...(word === undefined ? [] : [strong([text(`${word}:`)]), text(' ')]),
    ...phrasing(line),
  ])
}

function cellPhrasing(cell: CardCell): PhrasingContent[] {
  return cell.lines.flatMap((line, index) => [...(index === 0 ? [] : [text('; ')]), ...phrasing(line)])
}

function tableBlocks(table: CardTable): RootContent[] {
  const row = (cells: PhrasingContent[][]) => ({
    type: 'tableRow' as const,
    children: cells.map((children): TableCell => ({ type: 'tableCell', children })),
  })
  const head = row(table.columns.map((column) => [text(column)]))
  return [
    paragraph([strong(phrasing(table.caption))]),
    { type: 'table', children: [head, ...table.rows.map((cells) => row(cells.map(cellPhrasing)))] },
  ]
}

function listItem(line: PhrasingContent[], notes: readonly Line[], box: boolean): ListItem {
  const below: BlockContent[] = notes.map((note) => paragraph(phrasing(note)))
  return {
    type: 'listItem',
    spread: false,
    ...(box && { checked: false }),
    children: [paragraph(line), ...below],
  }
}

function listBlocks(list: CardList): RootContent[] {
  const items = list.items.map(({ line, notes }) => listItem(phrasing(line), notes, list.box))
  const head = list.heading === undefined ? [] : [heading(3, [text(list.heading)])]
  return [...head, { type: 'list', ordered: false, spread: false, children: items }]
}

function plateBlocks(plate: CardPlate): RootContent[] {
  const rows = plate.rows.map(({ label, value, notes }) =>
    listItem([...phrasing(label), text(': '), strong(phrasing(value))], notes, false),
  )
  return [heading(3, phrasing(plate.name)), { type: 'list', ordered: false, spread: false, children: rows }]
}

function stepBlocks(steps: CardSteps, { extent }: CardModel): RootContent[] {
  return steps.groups.flatMap(({ heading: name, steps: within }) => [
    heading(3, phrasing(name)),
    {
      type: 'list' as const,
      ordered: true,
      start: within[0]?.number ?? 1,
      spread: false,
      children: within.map((step) => {
        const cautions = step.cautions.map(({ word, line }) => cautionParagraph(word, line))
        const note = step.note === undefined ? [] : [paragraph(phrasing(step.note))]
        const line = paragraph(phrasing(extent === 'full' ? step.full : step.short))
        return {
          type: 'listItem' as const,
          spread: false,
          checked: false,
          children: [...cautions, line, ...note],
        }
      }),
    },
  ])
}

function blankBlocks(blanks: CardBlanks): RootContent[] {
  const head = blanks.heading === undefined ? [] : [heading(3, phrasing(blanks.heading))]
  const items = blanks.fields.map(({ label, choices }) => {
    const answers = choices === undefined ? '________' : choices.map((choice) => `☐ ${choice}`).join('  ')
    return listItem([text(`${label}: ${answers}`)], [], false)
  })
  return [...head, { type: 'list', ordered: false, spread: false, children: items }]
}

function partBlocks(part: CardPart, card: CardModel): RootContent[] {
  switch (part.kind) {
    case 'table':
      return tableBlocks(part)
    case 'list':
      return listBlocks(part)
    case 'plate':
      return plateBlocks(part)
    case 'steps':
      return stepBlocks(part, card)
    case 'blanks':
      return blankBlocks(part)
  }
}

/**
 * The card as Markdown with GitHub's tables and tick boxes, for a wiki or an issue. Cautions come before their step.
 *
 * @param card - from {@link cardModel}
 * @returns Markdown; names from the sheet can make no markup
 * @throws TypeError when `card` is not a card
 *
 * @example
 * ```ts
 * import { cardModel, renderMarkdown } from 'drivetrain-service/v1/card'
 * import { en } from 'drivetrain-service/v1/message/en'
 * import { planVisit } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const log = { kind: 'machine-log', version: '1.0', id: 'one', name: 'Station 1', sheet: { id: 'example', revision: '1' }, identity: {}, meters: {}, records: [] } as const
 * const due = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
 * const planned = planVisit({ sheet, log, today: '2031-10-06' }, { services: 'due', due, iso6789: '2017' })
 * if (!planned.ok) throw new Error('no plan')
 * // What is the first line?
 * renderMarkdown(cardModel(planned, en)).split('\n')[0] // => '# Gear oil service card: Station 1'
 * ```
 */
export function renderMarkdown(card: CardModel): string {
  requireCard(card)
  const facts = card.facts.map(({ label, value }) =>
    listItem([text(`${label}: `), ...phrasing(value)], [], false),
  )
  const variant = [
    strong([text(`${card.variant.label}:`)]),
    text(' '),
    ...phrasing(card.variant.lines[0] ?? []),
  ]
  const cautions = card.cautions.cautions.map(({ word, line }) => cautionParagraph(word, line))
  const children: RootContent[] = [
    heading(1, [text(`${card.title}: `), ...phrasing(card.machine)]),
    paragraph(phrasing(card.about)),
    paragraph(variant),
    ...card.variant.lines.slice(1).map((line) => paragraph(phrasing(line))),
    ...(card.header === undefined ? [] : [paragraph(phrasing(card.header))]),
    ...card.authority.map((sentence) => paragraph([strong([text(sentence)])])),
    { type: 'list', ordered: false, spread: false, children: facts },
    ...(cautions.length === 0 ? [] : [{ type: 'blockquote' as const, children: cautions }]),
    ...card.sections.flatMap((section) => [
      heading(2, [text(section.heading)]),
      ...section.parts.flatMap((part) => partBlocks(part, card)),
    ]),
  ]
  const root: Root = { type: 'root', children }
  return toMarkdown(root, { bullet: '-', extensions: [gfmToMarkdown({ tablePipeAlign: false })] })
}
