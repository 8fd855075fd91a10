import type { CardModel } from './cardParts.js'
import { renderHtml } from './renderHtml.js'
import { shortenCard } from './shortenCard.js'

/**
 * The expert's card as one HTML file for one printed page. As Markdown or text: {@link renderMarkdown} or
 * {@link renderText} of {@link shortenCard}.
 *
 * @param card - from {@link cardModel}
 * @throws TypeError when `card` is no card
 */
export function renderShortCard(card: CardModel): string {
  return renderHtml(shortenCard(card))
}
