// The functions and types that other rooms import.
export type { CardSectionId, CardWords } from './cardWords.js'
export type * from './catalogue.js'
export { cleanText } from './cleanText.js'
export { explain } from './explain.js'
export { renderMessage } from './renderMessage.js'
export { showAmount, showQuantity } from './showQuantity.js'
export type { SlipSectionId, SlipWords } from './slipWords.js'
export type { WallSectionId, WallWords } from './wallWords.js'
