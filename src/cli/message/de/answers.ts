import type { AnswerTexts } from '../cliWords.js'
import { count, joinOr } from './count.js'

/** The words of the answers to one-line questions in German. */
export const answers: AnswerTexts = {
  cannotTell: 'Nicht bekannt.',
  doesNotFit: 'Passt nicht.',
  about: ({ time }) => `Etwa ${time}.`,
  print: ({ figure }) => `; zu drucken: ${figure}`,
  finding: ({ severity, message, code }) => `${severity}: ${message} (${code})`,
  due: ({ state, amount, point }) => `${state}: ${amount}, fällig ${point}.`,
  over: ({ amount }) => `${amount} darüber`,
  left: ({ amount }) => `noch ${amount}`,
  dueAt: ({ meter }) => `bei ${meter}`,
  dueOn: ({ date }) => `am ${date}`,
  days: ({ count: days }) => count(days, 'Tag', 'Tage'),
  setTo: ({ setting, min, max }) => `${setting} einstellen. Tatsächliches Drehmoment: ${min} bis ${max}.`,
  setWithCare: ({ setting, min, max }) =>
    `${setting} einstellen (mit Vorsicht). Tatsächliches Drehmoment: ${min} bis ${max}.`,
  pours: ({ count: pours, marks, error }) =>
    `${pours}-mal eingießen: bis ${marks}. Fehler höchstens ${error}.`,
  marks: (groups) =>
    groups
      .map(({ mark, count: times }) => `Teilstrich ${mark}${times === 1 ? '' : ` (${times}-mal)`}`)
      .join(', dann bis '),
  asGiven: 'wie angegeben',
  thisWrench: 'dieser Schlüssel',
  thisJug: 'dieser Messbecher',
  write: ({ text }) => `Schreiben: ${joinOr(text)}.`,
}
