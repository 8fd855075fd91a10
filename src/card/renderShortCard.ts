import type { CardModel } from './cardParts.js'
import { renderHtml } from './renderHtml.js'
import { shortenCard } from './shortenCard.js'

/**
 * The expert's card as one HTML file for one printed page. As Markdown or text: {@link renderMarkdown} or
 * {@link renderText} of {@link shortenCard}.
 *
 * @param card - from {@link cardModel}
 * @throws TypeError when `card` is no card
 *
 * @example
 * ```ts
 * import { cardModel, renderShortCard } from 'drivetrain-service/v1/card'
 * import { en } from 'drivetrain-service/v1/message/en'
 * import { planVisit } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const log = { kind: 'machine-log', version: '1.0', id: 'one', name: 'Station 1', sheet: { id: 'example', revision: '1' }, identity: {}, meters: {}, records: [] } as const
 * const due = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
 * const planned = planVisit({ sheet, log, today: '2031-10-06' }, { services: 'due', due, iso6789: '2017' })
 * if (!planned.ok) throw new Error('no plan')
 * // Is it a card of its own?
 * renderShortCard(cardModel(planned, en)).includes('<title>Gear oil, short card: Station 1</title>') // => true
 * ```
 */
export function renderShortCard(card: CardModel): string {
  return renderHtml(shortenCard(card))
}
