import { buildOnce, whole } from './makeShape.js'
import { part, textShapes } from './textShapes.js'

/** The sheet of a log, a procedure or a record. */
export const sheetReferenceShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  return part('sheet-reference', { id: text.id, revision: text.text })
})

/** The known facts of one machine. */
export const identityShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  return part('identity', {
    'variant?': text.id,
    'modelYear?': whole(),
    'serial?': text.text,
    'market?': text.text,
  })
})
