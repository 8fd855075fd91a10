import { buildOnce, object, optional, whole } from './makeShape.js'
import { named, textShapes } from './textShapes.js'

/** Which sheet a log, a procedure or a record was written against. */
export const sheetReferenceShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  return named('sheet-reference', object({ id: text.id, revision: text.text }))
})

/** What is known of one machine. */
export const identityShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  return named(
    'identity',
    object({
      variant: optional(text.id),
      modelYear: optional(whole()),
      serial: optional(text.text),
      market: optional(text.text),
    }),
  )
})
