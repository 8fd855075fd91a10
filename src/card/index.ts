// The functions and types that other modules import.
export { cardModel, type PlannedVisit } from './cardModel.js'
export type {
  CardBlanks,
  CardCell,
  CardDrawing,
  CardFigurePanel,
  CardList,
  CardModel,
  CardPanel,
  CardPart,
  CardPicture,
  CardScene,
  CardScenes,
  CardSection,
  CardStep,
  CardSteps,
  CardTable,
  FigurePanelRow,
  Line,
  PanelRow,
  Paper,
  PictureName,
  Span,
  SpanTone,
} from './cardParts.js'
export { cardStyle } from './cardStyle.js'
export { cueList } from './cueList.js'
export type { Cue, CueShot, CueSpeech } from './cueParts.js'
export { nameSeal } from './nameSeal.js'
export { type PaperFacts, paperModel } from './paperModel.js'
export { type HtmlOptions, renderHtml } from './renderHtml.js'
export { renderMarkdown } from './renderMarkdown.js'
export { renderText } from './renderText.js'
export { renderWebVtt } from './renderWebVtt.js'
export { shortenCard } from './shortenCard.js'
export { slipModel } from './slipModel.js'
export { summariseVisit } from './summariseVisit.js'
export { wallModel } from './wallModel.js'
export { wrapText } from './wrapText.js'
