import type { CardWords } from '../message/index.js'
import type { CardModel } from './cardParts.js'
import { markChecked } from './requireCard.js'
import { setSigns } from './setSigns.js'

/** The card with the words for its drawings, and with the language's spaces before the signs between its texts. */
export function finishCard(card: Omit<CardModel, 'marks'>, words: CardWords): CardModel {
  const { colon, semicolon } = words.signs
  return markChecked({
    ...setSigns(card, words),
    marks: {
      computed: words.computedMark,
      inFull: words.labels.inFull,
      pictures: words.pictures,
      legend: words.legend,
      ...(colon !== ': ' && { colon }),
      ...(semicolon !== '; ' && { semicolon }),
    },
  })
}
