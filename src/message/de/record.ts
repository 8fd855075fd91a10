import type { RecordCodes } from '../../record/index.js'
import type { Texts } from '../catalogue.js'

export const recordTexts: Texts<RecordCodes> = {
  'record/reported-not-done': ({ why }) => `Nicht ausgeführt: ${why}.`,
  'record/old-oil-not-drained': ({ gearcase }) =>
    `${gearcase}: nicht ausgeführt: keine Ablassschraube, kein Deckel und keine Absaugöffnung wurde geöffnet.`,
  'record/new-oil-not-filled': ({ gearcase }) =>
    `${gearcase}: nicht ausgeführt: kein eingefülltes Öl eingetragen.`,
  'record/level-not-checked': ({ gearcase }) =>
    `${gearcase}: nicht ausgeführt: Der Ölstand wurde nicht geprüft.`,
  'record/corrected-record-missing': ({ record }) =>
    `Das Betriebsbuch dieser Maschine hat keinen Nachweis „${record}“ zum Berichtigen.`,
  'record/other-sheet': ({ required, given }) =>
    `Der Nachweis nennt das Datenblatt „${given}“, das Betriebsbuch der Maschine aber „${required}“. Gehört er zu einer anderen Maschine?`,
}
