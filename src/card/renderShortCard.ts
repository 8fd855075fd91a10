import type { CardModel } from './cardParts.js'
import { renderHtml } from './renderHtml.js'
import { shortenCard } from './shortenCard.js'

/** The short card as one HTML file for one printed page. */
export function renderShortCard(card: CardModel): string {
  return renderHtml(shortenCard(card))
}
