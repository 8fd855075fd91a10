import * as z from 'zod/mini'
import { buildOnce } from './buildOnce.js'
import { partRegistry, textShapes } from './textShapes.js'

/** Which sheet a log, a procedure or a record was written against. */
export const sheetReferenceShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  return z
    .strictObject({ id: text.id, revision: text.text })
    .register(partRegistry(), { id: 'sheet-reference' })
})

/** What is known of one machine. */
export const identityShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  return z
    .strictObject({
      variant: z.exactOptional(text.id),
      modelYear: z.exactOptional(z.int()),
      serial: z.exactOptional(text.text),
      market: z.exactOptional(text.text),
    })
    .register(partRegistry(), { id: 'identity' })
})
