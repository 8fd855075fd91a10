import type { RecordCodes } from '../../record/index.js'
import type { Texts } from '../catalogue.js'

export const recordTexts: Texts<RecordCodes> = {
  'record/reported-not-done': ({ why }) => `No hecho: ${why}.`,
  'record/old-oil-not-drained': ({ gearcase }) =>
    `${gearcase}: no hecho: no se abrió ningún tapón de drenaje, tapa ni abertura de aspiración.`,
  'record/new-oil-not-filled': ({ gearcase }) =>
    `${gearcase}: no hecho: no consta que se llenara con aceite.`,
  'record/level-not-checked': ({ gearcase }) => `${gearcase}: no hecho: no se comprobó el nivel.`,
  'record/corrected-record-missing': ({ record }) =>
    `El historial de esta máquina no tiene ningún registro “${record}” que corregir.`,
  'record/other-sheet': ({ required, given }) =>
    `El registro nombra la hoja “${given}”, pero el historial de la máquina nombra “${required}”. ¿Es de otra máquina?`,
}
