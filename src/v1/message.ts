export type {
  AllCodes,
  CardSectionId,
  CardWords,
  Catalogue,
  LineText,
  Messages,
  Say,
  SlipSectionId,
  SlipWords,
  SpeechWords,
  StepParams,
  StepText,
  StepTexts,
  Texts,
} from '../message/index.js'
export { explain, renderMessage } from '../message/index.js'
