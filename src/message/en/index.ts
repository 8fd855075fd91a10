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
 * The English texts for calculations and for reading documents, a third of {@link en}: for apps without
 * rules, procedures and cards.
 *
 * @example
 * ```ts
 * // What is wrong with a date?
 * import { renderMessage } from 'drivetrain-service/v1/message'
 * import { enCalculations } from 'drivetrain-service/v1/message/en'
 * renderMessage({ code: 'calendar/not-a-date', params: { text: 'soon' } }, enCalculations)
 * // => '“soon” is not a calendar date. Write year, month and day as in 2031-01-12.'
 * ```
 */
export const enCalculations: Messages = {
  language: 'en',
  marks: { decimal: '.', group: '\u202f' },
  list: (items) => join(items, 'and'),
  // Rounded as printed, with up to three decimals.
  plural: (value) => (Number(Math.abs(value).toFixed(3)) === 1 ? 'one' : 'other'),
  texts: calculationTexts,
}

/**
 * The English catalogue: every message, step, label and spoken word. The decimal mark is a point. A narrow
 * no-break space separates groups of three digits, because a comma is the decimal mark in many countries.
 *
 * @example
 * ```ts
 * // What is the decimal mark?
 * import { en } from 'drivetrain-service/v1/message/en'
 * en.marks.decimal // => '.'
 * ```
 */
export const en: Catalogue = {
  ...enCalculations,
  direction: 'ltr',
  review: { kind: 'original' },
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
