export { applyPatch } from './applyPatch.js'
export {
  ABSOLUTE_ZERO,
  cutText,
  MAX_COUNT,
  MAX_DEPTH,
  MAX_KEYS,
  MAX_MISTAKES,
  MAX_NUMBER,
  MAX_STRING_LENGTH,
  MAX_TEXT_LENGTH,
  MAX_VALUES,
  requireTree,
} from './documentLimits.js'
export { dropUndefined } from './dropUndefined.js'
export type * from './finding.js'
export { isSameJson } from './isSameJson.js'
export { type FindingMaker, makeFinding, makeReason, type ReasonMaker } from './makeFinding.js'
export { appendKey, joinPointer, readPointer, splitPointer } from './pointers.js'
export { asText, quoteValue, refuse, requireObject, requireOneOf } from './refuse.js'
export { requireKnownKeys } from './requireKnownKeys.js'
export { type NumberRange, requireNumber } from './requireNumber.js'
export { requireShape, type Shape } from './requireShape.js'
export { RETIRED_CODES } from './retiredCodes.js'
export { countEdits, suggestName } from './suggestName.js'
