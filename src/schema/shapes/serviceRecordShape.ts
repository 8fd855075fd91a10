import * as z from 'zod/mini'
import { buildOnce } from './buildOnce.js'
import { WHEEL_MARKS } from './gearcaseShapes.js'
import { amount } from './numberShapes.js'
import { quantityShapes } from './quantityShapes.js'
import { sheetReferenceShape } from './referenceShapes.js'
import { partRegistry, textShapes } from './textShapes.js'

/** What was done at one visit. */
export const serviceRecordShape = /* @__PURE__ */ buildOnce(() => {
  const parts = partRegistry()
  const text = textShapes()
  const quantity = quantityShapes()
  const at = { on: text.pointer, wheelMark: z.exactOptional(z.enum(WHEEL_MARKS)) }
  const tighteningDone = z
    .discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('torque set'), ...at, torque: quantity.torque, tool: text.id }),
      z.strictObject({ kind: z.literal('turns'), ...at, turns: amount() }),
      z.strictObject({ kind: z.literal('by the manual'), ...at }),
    ])
    .register(parts, { id: 'tightening-done' })
  const entry = z
    .strictObject({
      service: text.id,
      gearcase: text.id,
      instance: z.exactOptional(text.id),
      drained: z.exactOptional(z.union([quantity.volume, z.literal('not judged')])),
      refilled: z.exactOptional(quantity.volume),
      oil: z.exactOptional(z.strictObject({ name: text.text, container: z.exactOptional(text.id) })),
      oilFinding: z.exactOptional(z.enum(['clear', 'dark', 'milky', 'burnt', 'metallic', 'not judged'])),
      magnet: z.exactOptional(z.enum(['no magnet', 'clean', 'fine paste', 'chips', 'pieces'])),
      opened: z.array(text.pointer),
      tightened: z.array(tighteningDone),
      seals: z.array(
        z.strictObject({
          on: text.pointer,
          done: z.enum(['new', 'inspected and used again']),
          partNumber: z.exactOptional(text.text),
        }),
      ),
      level: z.exactOptional(z.enum(['at the mark', 'below', 'above', 'not checked'])),
      leaks: z.exactOptional(z.enum(['dry', 'weeping', 'dripping', 'not checked'])),
    })
    .register(parts, { id: 'record-entry' })
  return z.strictObject({
    kind: z.literal('service-record'),
    version: z.literal('1.0'),
    id: text.id,
    header: z.exactOptional(text.text),
    machine: text.id,
    sheet: sheetReferenceShape(),
    detail: z.enum(['full', 'date and meters only']),
    date: text.date,
    readings: z.strictObject({
      hours: z.exactOptional(quantity.hours),
      distance: z.exactOptional(quantity.distance),
    }),
    by: z.exactOptional(text.text),
    entries: z.array(entry),
    shields: z.exactOptional(z.array(tighteningDone)),
    usedOil: z.exactOptional(text.text),
    note: z.exactOptional(text.text),
  })
})
