import type { RecordCodes } from '../../record/index.js'
import type { Texts } from '../catalogue.js'

export const recordTexts: Texts<RecordCodes> = {
  'record/said-not-done': ({ why }) => `Not done: ${why}.`,
  'record/oil-not-out': ({ gearcase }) =>
    `${gearcase}: not counted as done: no drain plug, cover or suction opening was opened.`,
  'record/oil-not-in': ({ gearcase }) => `${gearcase}: not done, since no oil is recorded as filled in.`,
  'record/level-not-looked-at': ({ gearcase }) => `${gearcase}: not done, since the level was not looked at.`,
  'record/corrects-nothing': ({ record }) => `The log of this machine has no record “${record}” to correct.`,
  'record/other-sheet': ({ required, given }) =>
    `The record was made by the sheet “${given}”, but the machine's log names “${required}”. Is it of another machine?`,
}
