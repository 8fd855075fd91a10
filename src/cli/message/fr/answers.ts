import type { AnswerTexts } from '../cliWords.js'
import { count, joinOr } from './count.js'

/** The words of the answers to one-line questions in French. */
export const answers: AnswerTexts = {
  cannotTell: 'Non connu.',
  doesNotFit: 'Ne convient pas.',
  about: ({ time }) => `Environ ${time}.`,
  print: ({ figure }) => ` ; imprimer ${figure}`,
  finding: ({ severity, message, code }) => `${severity} : ${message} (${code})`,
  due: ({ state, amount, point }) => `${state} : ${amount}, terme ${point}.`,
  over: ({ amount }) => `${amount} de trop`,
  left: ({ amount }) => `reste ${amount}`,
  dueAt: ({ meter }) => `à ${meter}`,
  dueOn: ({ date }) => `le ${date}`,
  days: ({ count: days }) => count(days, 'jour', 'jours'),
  setTo: ({ setting, min, max }) => `Régler sur ${setting}. Couple réel : de ${min} à ${max}.`,
  setWithCare: ({ setting, min, max }) =>
    `Régler sur ${setting} (avec prudence). Couple réel : de ${min} à ${max}.`,
  pours: ({ count: pours, marks, error }) =>
    `Verser ${pours} fois : jusqu’au ${marks}. Erreur au plus ${error}.`,
  marks: (groups) =>
    groups
      .map(({ mark, count: times }) => `repère de ${mark}${times === 1 ? '' : ` (${times} fois)`}`)
      .join(', puis jusqu’au '),
  asGiven: 'comme indiqué',
  thisWrench: 'cette clé',
  thisJug: 'ce récipient',
  write: ({ text }) => `Écrire ${joinOr(text)}.`,
}
