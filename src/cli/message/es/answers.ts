import type { AnswerTexts } from '../cliWords.js'
import { count, joinOr } from './count.js'

/** The words of the answers to one-line questions in Spanish. */
export const answers: AnswerTexts = {
  cannotTell: 'No se sabe.',
  doesNotFit: 'No encaja.',
  about: ({ time }) => `Unos ${time}.`,
  print: ({ figure }) => `; imprimir ${figure}`,
  finding: ({ severity, message, code }) => `${severity}: ${message} (${code})`,
  due: ({ state, amount, point }) => `${state}: ${amount}, límite ${point}.`,
  over: ({ amount }) => `${amount} de más`,
  left: ({ amount }) => `quedan ${amount}`,
  dueAt: ({ meter }) => `a las ${meter}`,
  dueOn: ({ date }) => `el ${date}`,
  days: ({ count: days }) => count(days, 'día', 'días'),
  setTo: ({ setting, min, max }) => `Ajustar a ${setting}. Par real: de ${min} a ${max}.`,
  setWithCare: ({ setting, min, max }) => `Ajustar a ${setting} (con cuidado). Par real: de ${min} a ${max}.`,
  pours: ({ count: pours, marks, error }) =>
    `${count(pours, 'vertido', 'vertidos')}: hasta la ${marks}. Error máximo: ${error}.`,
  marks: (groups) =>
    groups
      .map(({ mark, count: times }) => `marca de ${mark}${times === 1 ? '' : ` (${times} veces)`}`)
      .join(', después hasta la '),
  asGiven: 'como se indica',
  thisWrench: 'esta llave',
  thisJug: 'esta jarra',
  write: ({ text }) => `Escribir ${joinOr(text)}.`,
}
