export { applyPatch } from './applyPatch.js'
export { asText } from './asText.js'
export { cutText } from './cutText.js'
export {
  ABSOLUTE_ZERO,
  MAX_COUNT,
  MAX_DEPTH,
  MAX_NUMBER,
  MAX_STRING_LENGTH,
  MAX_TEXT_LENGTH,
  MAX_VALUES,
} from './documentLimits.js'
export { dropUndefined } from './dropUndefined.js'
export type {
  DocumentKind,
  DocumentReference,
  Finding,
  FindingOf,
  Fix,
  JsonPointer,
  Param,
  Params,
  Place,
  Reason,
  Result,
  Severity,
} from './finding.js'
export { isSameJson } from './isSameJson.js'
export { joinPointer } from './joinPointer.js'
export { type FindingMaker, makeFinding } from './makeFinding.js'
export { makeReason, type ReasonMaker } from './makeReason.js'
export { quoteValue } from './quoteValue.js'
export { readPointer } from './readPointer.js'
export { refuse } from './refuse.js'
export { requireKnownKeys } from './requireKnownKeys.js'
export { type NumberRange, requireNumber } from './requireNumber.js'
export { requireObject } from './requireObject.js'
export { requireOneOf } from './requireOneOf.js'
export { requireShape, type Shape } from './requireShape.js'
export { requireTree } from './requireTree.js'
export { RETIRED_CODES } from './retiredCodes.js'
export { splitPointer } from './splitPointer.js'
export { countEdits, suggestName } from './suggestName.js'
