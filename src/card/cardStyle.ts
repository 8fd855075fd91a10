import type { CardModel } from './cardParts.js'
import { styleOfPaper } from './html/paperStyle.js'
import { scopeStyle } from './html/scopeStyle.js'
import { requireCard } from './requireCard.js'

/** Stylesheets by their layout. */
const styles = new Map<string, string>()

/**
 * The stylesheet of a card, for an app that forbids styles in a page (`style-src 'self'`). Serve it as a file and name it
 * to {@link renderHtml}. The rules apply only to the card, so the app's own page does not change.
 *
 * @param card - from {@link cardModel}; cards of one kind have the same stylesheet
 * @returns CSS, the same bytes for the same version of this package
 * @throws TypeError if `card` is not a card
 *
 * Source: Content Security Policy Level 3, `style-src`, from memory.
 *
 * @example
 * ```ts
 * import { cardModel, cardStyle } from 'drivetrain-service/v1/card'
 * import { en } from 'drivetrain-service/v1/message/en'
 * import { planVisit } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const log = { kind: 'machine-log', version: '1.0', id: 'one', name: 'Station 1', sheet: { id: 'example', revision: '1' }, identity: {}, meters: {}, records: [] } as const
 * const due = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
 * const planned = planVisit({ sheet, log, today: '2031-10-06' }, { services: 'due', due, iso6789: '2017' })
 * if (!planned.ok) throw new Error('no plan')
 * // Does the stylesheet request anything?
 * cardStyle(cardModel(planned, en)).includes('url(') // => false
 * ```
 */
export function cardStyle(card: CardModel): string {
  requireCard(card)
  const layout = styleOfPaper(card.extent)
  const style = styles.get(layout) ?? scopeStyle(layout)
  styles.set(layout, style)
  return style
}
