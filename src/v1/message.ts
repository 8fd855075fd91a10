export {
  type AllCodes,
  type CardSectionId,
  type CardWords,
  type Catalogue,
  explain,
  renderMessage,
  type Say,
  type SpeechWords,
  type StepParams,
  type StepText,
  type StepTexts,
  type Texts,
} from '../message/index.js'
