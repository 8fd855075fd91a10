import type { CardModel, CardPart, CardSection, CardTable, FigurePanelRow } from './cardParts.js'
import { markChecked, requireCard } from './requireCard.js'

const SHORT_CARD_SECTIONS: ReadonlySet<CardSection['id']> = new Set([
  'figures',
  'tightening',
  'steps',
  'missing',
])
/** The column of the tightening table with figures in other units. */
const OTHER_UNITS_COLUMN = 2

function shortenTable(table: CardTable): CardTable {
  const isKept = (_value: unknown, column: number) => column !== OTHER_UNITS_COLUMN
  const rows = table.rows.map((row) =>
    row
      .filter(isKept)
      .map((cell, column) => (column === 0 ? { ...cell, lines: cell.lines.slice(0, 1) } : cell)),
  )
  return { ...table, columns: table.columns.filter(isKept), rows }
}

function shortenPart(part: CardPart, section: CardSection['id']): CardPart[] {
  if (part.kind === 'plate') {
    const isGap = ({ value }: FigurePanelRow) => value.some(({ tone }) => tone === 'gap')
    const rows = part.rows.filter((row) => row.size !== 'small' || isGap(row))
    return rows.length === 0 ? [] : [{ ...part, rows: rows.map((row) => ({ ...row, notes: [] })) }]
  }
  if (section === 'missing' && part.kind === 'list') {
    const gaps = part.items.filter(({ line }) => line.some(({ from }) => from !== undefined))
    return gaps.length === 0 ? [] : [{ ...part, items: gaps }]
  }
  if (section === 'tightening') return part.kind === 'table' ? [shortenTable(part)] : []
  return [part]
}

/**
 * The short card, for a technician who knows this job on this machine: figures, settings, short steps with cautions,
 * gaps. An owner's slip stays as it is: everything on it is for the owner.
 */
export function shortenCard(card: CardModel): CardModel {
  requireCard(card)
  if (card.extent === 'slip') return card
  return markChecked({
    ...card,
    extent: 'short',
    title: card.shortTitle,
    sections: card.sections
      .filter(({ id }) => SHORT_CARD_SECTIONS.has(id))
      .map((section) => ({
        ...section,
        parts: section.parts.flatMap((part) => shortenPart(part, section.id)),
      }))
      .filter(({ parts }) => parts.length > 0),
  })
}
