import { buildOnce, wholeNumber } from './makeShape.js'
import { namedObject, textShapes } from './textShapes.js'

/** The sheet of a log, a procedure or a record. */
export const sheetReferenceShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  return namedObject('sheet-reference', { id: text.id, revision: text.text })
})

/** The known facts of one machine. */
export const identityShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  return namedObject('identity', {
    'variant?': text.id,
    'modelYear?': wholeNumber(),
    'serial?': text.text,
    'market?': text.text,
  })
})
