import type { Catalogue, Messages } from '../catalogue.js'
import { join } from '../phrases.js'
import { calendarTexts } from './calendar.js'
import { cardWords } from './card.js'
import { cueWords } from './cues.js'
import { fillTexts } from './fill.js'
import { intervalTexts } from './interval.js'
import { lineTexts } from './lines.js'
import { oilTexts } from './oil.js'
import { paperWords } from './papers.js'
import { procedureTexts } from './procedure.js'
import { quantityTexts } from './quantity.js'
import { recordTexts } from './record.js'
import { rulesTexts } from './rules.js'
import { sealTexts } from './seal.js'
import { serviceTexts } from './service.js'
import { slipWords } from './slip.js'
import { specTexts } from './spec.js'
import { speechWords } from './speech.js'
import { stepTexts } from './steps.js'
import { threadTexts } from './thread.js'
import { torqueTexts } from './torque.js'
import { wallWords } from './wall.js'

const calculationTexts = {
  ...calendarTexts,
  ...fillTexts,
  ...intervalTexts,
  ...oilTexts,
  ...quantityTexts,
  ...sealTexts,
  ...specTexts,
  ...threadTexts,
  ...torqueTexts,
} satisfies Messages['texts']

/**
 * The French texts for calculations and for reading documents, a third of {@link fr}: for apps without
 * rules, procedures and cards.
 *
 * @example
 * ```ts
 * // What is wrong with a date?
 * import { renderMessage } from 'drivetrain-service/v1/message'
 * import { frCalculations } from 'drivetrain-service/v1/message/fr'
 * renderMessage({ code: 'calendar/not-a-date', params: { text: 'soon' } }, frCalculations)
 * // => '« soon » n’est pas une date du calendrier. Écrire année, mois et jour comme dans 2031-01-12.'
 * ```
 */
export const frCalculations: Messages = {
  language: 'fr',
  marks: { decimal: ',', group: '\u202f' },
  list: (items) => join(items, 'et'),
  // Rounded as printed, with up to three decimals.
  plural(value) {
    const shown = Number(Math.abs(value).toFixed(3))
    if (shown < 2) return 'one'
    return shown % 1_000_000 === 0 ? 'many' : 'other'
  },
  texts: calculationTexts,
}

/**
 * The French catalogue: every message, step, label and spoken word. The decimal mark is a comma; a narrow no-break space
 * separates groups of three digits. The translation is not reviewed: each card says so.
 *
 * @example
 * ```ts
 * // What is the decimal mark?
 * import { fr } from 'drivetrain-service/v1/message/fr'
 * fr.marks.decimal // => ','
 * ```
 */
export const fr: Catalogue = {
  ...frCalculations,
  direction: 'ltr',
  review: {
    kind: 'not reviewed',
    note: 'Traduction non relue : en cas de doute, la fiche anglaise et le manuel de la machine font foi.',
  },
  texts: { ...calculationTexts, ...procedureTexts, ...recordTexts, ...rulesTexts, ...serviceTexts },
  steps: stepTexts,
  lines: lineTexts,
  card: cardWords,
  cues: cueWords,
  slip: slipWords,
  wall: wallWords,
  papers: paperWords,
  speech: speechWords,
}
