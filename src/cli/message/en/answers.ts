import type { AnswerTexts } from '../cliWords.js'
import { count, joinOr } from './count.js'

/** The words of the answers to one-line questions in English. */
export const answers: AnswerTexts = {
  cannotTell: 'Cannot tell.',
  doesNotFit: 'Does not fit.',
  about: ({ time }) => `About ${time}.`,
  print: ({ figure }) => `; print ${figure}`,
  finding: ({ severity, message, code }) => `${severity}: ${message} (${code})`,
  due: ({ state, amount, point }) => `${state}: ${amount}, due ${point}.`,
  over: ({ amount }) => `${amount} over`,
  left: ({ amount }) => `${amount} left`,
  dueAt: ({ meter }) => `at ${meter}`,
  dueOn: ({ date }) => `on ${date}`,
  days: ({ count: days }) => count(days, 'day'),
  setTo: ({ setting, min, max }) => `Set ${setting}. Actual torque: ${min} to ${max}.`,
  setWithCare: ({ setting, min, max }) => `Set ${setting} (with care). Actual torque: ${min} to ${max}.`,
  pours: ({ count: pours, marks, error }) =>
    `${count(pours, 'pour')}: to the ${marks}. Error at most ${error}.`,
  marks: (groups) =>
    groups
      .map(({ mark, count: times }) => `${mark} mark${times === 1 ? '' : ` ${times} times`}`)
      .join(', then to the '),
  asGiven: 'as given',
  thisWrench: 'this wrench',
  thisJug: 'this jug',
  write: ({ text }) => `Write ${joinOr(text)}.`,
}
