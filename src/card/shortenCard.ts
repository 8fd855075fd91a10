import type { CardModel, CardSection } from './cardParts.js'

const KEPT: ReadonlySet<CardSection['id']> = new Set(['figures', 'tightening', 'steps', 'missing'])

/**
 * The expert's card: figures, wrench settings, the order of work in a few words a step, and what is missing. For
 * somebody who has not done this job on this machine, use the whole card.
 *
 * @param card - from {@link cardModel}
 * @returns a card for the same renderers
 * @throws TypeError when `card` is no card
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
        parts: section.parts.filter((part) => section.id !== 'tightening' || part.kind === 'table'),
      })),
  }
}
