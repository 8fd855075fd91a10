import type { CardModel, CardPart, CardSection, CardTable, PlateRow } from './cardParts.js'

const KEPT: ReadonlySet<CardSection['id']> = new Set(['figures', 'tightening', 'steps', 'missing'])
/** Column of the tightening table that only repeats the figure in other units. */
const IN_OTHER_UNITS = 2

function shortenTable(table: CardTable): CardTable {
  const keeps = (_value: unknown, column: number) => column !== IN_OTHER_UNITS
  const rows = table.rows.map((row) =>
    row
      .filter(keeps)
      .map((cell, column) => (column === 0 ? { ...cell, lines: cell.lines.slice(0, 1) } : cell)),
  )
  return { ...table, columns: table.columns.filter(keeps), rows }
}

function shortenPart(part: CardPart, section: CardSection['id']): CardPart[] {
  if (part.kind === 'plate') {
    const isGap = ({ value }: PlateRow) => value.some(({ tone }) => tone === 'gap')
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
 * The expert's card: figures, wrench settings, the order of work in a few words a step with its cautions, and what is
 * missing. For somebody who has not done this job on this machine, use the whole card.
 *
 * @param card - from {@link cardModel}
 * @returns a card for the same renderers
 * @throws TypeError when `card` is no card
 *
 * @example
 * ```ts
 * import { cardModel, shortenCard } from 'drivetrain-service/v1/card'
 * import { en } from 'drivetrain-service/v1/message/en'
 * import { planVisit } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const log = { kind: 'machine-log', version: '1.0', id: 'one', name: 'Station 1', sheet: { id: 'example', revision: '1' }, identity: {}, meters: {}, records: [] } as const
 * const due = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
 * const planned = planVisit({ sheet, log, today: '2031-10-06' }, { services: 'due', due, iso6789: '2017' })
 * if (!planned.ok) throw new Error('no plan')
 * // What does the expert’s card leave of a visit without work?
 * shortenCard(cardModel(planned, en)).title // => 'Gear oil, short card'
 * ```
 */
export function shortenCard(card: CardModel): CardModel {
  if (card?.kind !== 'service-card') throw new TypeError("card must be a card, with kind 'service-card'")
  return {
    ...card,
    extent: 'short',
    title: card.shortTitle,
    sections: card.sections
      .filter(({ id }) => KEPT.has(id))
      .map((section) => ({
        ...section,
        parts: section.parts.flatMap((part) => shortenPart(part, section.id)),
      }))
      .filter(({ parts }) => parts.length > 0),
  }
}
