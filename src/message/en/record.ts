import type { RecordCodes } from '../../record/index.js'
import type { Texts } from '../catalogue.js'

export const recordTexts: Texts<RecordCodes> = {
  'record/reported-not-done': ({ why }) => `Not done: ${why}.`,
  'record/old-oil-not-drained': ({ gearcase }) =>
    `${gearcase}: not done: no drain plug, cover or suction opening was opened.`,
  'record/new-oil-not-filled': ({ gearcase }) => `${gearcase}: not done: no oil is recorded as filled in.`,
  'record/level-not-checked': ({ gearcase }) => `${gearcase}: not done: the level was not checked.`,
  'record/corrected-record-missing': ({ record }) =>
    `The log of this machine has no record “${record}” to correct.`,
  'record/other-sheet': ({ required, given }) =>
    `The record names the sheet “${given}”, but the machine's log names “${required}”. Is it for another machine?`,
}
