import type { Catalogue, Messages } from '../catalogue.js'
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
import { join } from './words.js'

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

/** One, or, for whole millions, `many` as in `un millón de horas`; rounded as printed, with up to three decimals. */
function choosePlural(value: number): Intl.LDMLPluralRule {
  const rounded = Number(Math.abs(value).toFixed(3))
  if (rounded === 1) return 'one'
  return rounded !== 0 && rounded % 1_000_000 === 0 ? 'many' : 'other'
}

/**
 * The Spanish texts for calculations and for reading documents, a third of {@link es}: for apps without
 * rules, procedures and cards.
 *
 * @example
 * ```ts
 * // What is wrong with a date?
 * import { renderMessage } from 'drivetrain-service/v1/message'
 * import { esCalculations } from 'drivetrain-service/v1/message/es'
 * renderMessage({ code: 'calendar/not-a-date', params: { text: 'pronto' } }, esCalculations)
 * // => '“pronto” no es una fecha del calendario. Escribir año, mes y día como en 2031-01-12.'
 * ```
 */
export const esCalculations: Messages = {
  language: 'es',
  marks: { decimal: ',', group: '\u202f' },
  list: (items) => join(items, 'y'),
  plural: choosePlural,
  texts: calculationTexts,
}

/**
 * The Spanish catalogue: every message, step, label and spoken word, neutral for all countries that speak it. The
 * decimal mark is a comma. A narrow no-break space separates groups of three digits. The translation is not
 * reviewed yet, and each card says so.
 *
 * @example
 * ```ts
 * // What is the decimal mark?
 * import { es } from 'drivetrain-service/v1/message/es'
 * es.marks.decimal // => ','
 * ```
 */
export const es: Catalogue = {
  ...esCalculations,
  direction: 'ltr',
  review: {
    kind: 'not reviewed',
    note: 'Traducción no revisada: en caso de duda, valen la ficha en inglés y el manual de la máquina.',
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
