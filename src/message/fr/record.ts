import type { RecordCodes } from '../../record/index.js'
import type { Texts } from '../catalogue.js'
import { quote } from './words.js'

export const recordTexts: Texts<RecordCodes> = {
  'record/reported-not-done': ({ why }) => `Non effectué : ${why}.`,
  'record/old-oil-not-drained': ({ gearcase }) =>
    `${gearcase} : non effectué : aucun bouchon de vidange, couvercle ou orifice d’aspiration n’a été ouvert.`,
  'record/new-oil-not-filled': ({ gearcase }) =>
    `${gearcase} : non effectué : aucun remplissage d’huile n’est noté.`,
  'record/level-not-checked': ({ gearcase }) =>
    `${gearcase} : non effectué : le niveau n’a pas été contrôlé.`,
  'record/corrected-record-missing': ({ record }) =>
    `Le carnet de cette machine n’a pas de rapport ${quote(record)} à corriger.`,
  'record/other-sheet': ({ required, given }) =>
    `Le rapport cite la fiche technique ${quote(given)}, mais le carnet de la machine cite ${quote(required)}. Concerne-t-il une autre machine ?`,
}
