import type { PlugHousing, ThreadCodes } from '../../thread/index.js'
import type { Texts } from '../catalogue.js'
import { join, nameOf } from '../phrases.js'

const HOUSINGS: Readonly<Record<PlugHousing, string>> = {
  steel: 'Stahl',
  'cast iron': 'Gusseisen',
  aluminium: 'Aluminium',
  'not stated': 'nicht angegeben',
}

export const threadTexts: Texts<ThreadCodes> = {
  'thread/unknown-thread': ({ text }) =>
    `„${text}“ ist kein bekanntes Gewinde. Schreiben wie M18x1.5, G 1/2, R 1/2, 1/2-14 NPT oder 3/8-16 UNC.`,
  'thread/parallel-or-taper': ({ text, candidates }) =>
    `„${text}“ kann zylindrisch oder kegelig sein: ${join(candidates, 'oder')}. Klären, welches, und das schreiben.`,
  'thread/pitch-not-known': ({ text, diameter }) =>
    `„${text}“ nennt keine Steigung, und für M${diameter} ist keine Regelsteigung bekannt. Steigung schreiben, wie in M18x1.5.`,
  'thread/pitch-too-coarse': ({ text, pitch, diameter }) =>
    `„${text}“: Eine Steigung von ${pitch} mm ist zu grob für ${diameter} mm. Beide Werte prüfen.`,
  'thread/size-not-known': ({ text, size, system }) =>
    `„${text}“: Die Größe ${size} ist in ${system} nicht bekannt. Größe in der Anleitung prüfen.`,
  'thread/threads-per-inch-differ': ({ text, stated, usual }) =>
    `„${text}“ nennt ${stated} Gänge je Zoll; diese Größe hat ${usual}. Klären, was gemeint ist.`,
  'thread/unusual-pitch': ({ text, pitch, diameter }) =>
    `„${text}“: ${pitch} mm ist für ${diameter} mm eine ungewöhnliche Steigung. In der Anleitung prüfen.`,
  'thread/too-long': ({ length, max }, say) =>
    `Dieser Text hat ${say.number(length)} Zeichen; ein Gewinde hat höchstens ${say.number(max)}.`,
  'thread/plug-band': ({ thread, housing, min, max }, say) =>
    `Verschlussschrauben ${thread} (Gehäuse: ${nameOf(HOUSINGS, housing)}) werden üblicherweise mit ${say.quantity(min)} bis ${say.quantity(max)} angezogen. Dieser weite Bereich aus veröffentlichten Tabellen dient nur dazu, falsche Einheiten zu finden.`,
  'thread/plug-not-in-table': ({ thread, housing }) =>
    `Für ${thread} (Gehäuse: ${nameOf(HOUSINGS, housing)}) ist kein veröffentlichtes Drehmoment bekannt, daher wird es nicht verglichen.`,
  'thread/taper-plug': ({ thread }) =>
    `${thread} ist ein kegeliges Gewinde: Es wird nach Umdrehungen angezogen, die Drehmomenttabelle gilt nicht.`,
}
