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
 * The German texts for calculations and for reading documents, a third of {@link de}: for apps without
 * rules, procedures and cards.
 *
 * @example
 * ```ts
 * // What is wrong with a date?
 * import { renderMessage } from 'drivetrain-service/v1/message'
 * import { deCalculations } from 'drivetrain-service/v1/message/de'
 * renderMessage({ code: 'calendar/not-a-date', params: { text: 'bald' } }, deCalculations)
 * // => '„bald“ ist kein Kalenderdatum. Jahr, Monat und Tag schreiben wie in 2031-01-12.'
 * ```
 */
export const deCalculations: Messages = {
  language: 'de',
  marks: { decimal: ',', group: '\u202f' },
  list: (items) => join(items, 'und'),
  // Rounded as printed, with up to three decimals.
  plural: (value) => (Number(Math.abs(value).toFixed(3)) === 1 ? 'one' : 'other'),
  texts: calculationTexts,
}

/**
 * The German catalogue: every message, step, label and spoken word. The decimal mark is a comma. A narrow
 * no-break space separates groups of three digits.
 *
 * @example
 * ```ts
 * // What is the decimal mark?
 * import { de } from 'drivetrain-service/v1/message/de'
 * de.marks.decimal // => ','
 * ```
 */
export const de: Catalogue = {
  ...deCalculations,
  direction: 'ltr',
  review: {
    kind: 'not reviewed',
    note: 'Übersetzung ungeprüft: Im Zweifel gelten englische Karte und Anleitung.',
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
