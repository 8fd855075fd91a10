import { WHEEL_MARKS } from './gearcaseShapes.js'
import {
  amount,
  buildOnce,
  byTag,
  either,
  kind,
  list,
  literal,
  object,
  oneOf,
  optional,
} from './makeShape.js'
import { quantityShapes } from './quantityShapes.js'
import { sheetReferenceShape } from './referenceShapes.js'
import { document, named, textShapes } from './textShapes.js'

/** What was done at one visit. */
export const serviceRecordShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const quantity = quantityShapes()
  const at = { on: text.pointer, wheelMark: optional(oneOf(WHEEL_MARKS)) }
  const tighteningDone = named(
    'tightening-done',
    byTag([
      kind('torque set', { ...at, torque: quantity.torque, tool: text.id }),
      kind('turns', { ...at, turns: amount() }),
      kind('by the manual', { ...at }),
    ]),
  )
  const entry = named(
    'record-entry',
    object({
      service: text.id,
      gearcase: text.id,
      instance: optional(text.id),
      drained: optional(either([quantity.volume, literal('not judged')])),
      refilled: optional(quantity.volume),
      oil: optional(object({ name: text.text, container: optional(text.id) })),
      oilFinding: optional(oneOf(['clear', 'dark', 'milky', 'burnt', 'metallic', 'not judged'])),
      magnet: optional(oneOf(['no magnet', 'clean', 'fine paste', 'chips', 'pieces'])),
      opened: list(text.pointer),
      tightened: list(tighteningDone),
      seals: list(
        object({
          on: text.pointer,
          done: oneOf(['new', 'inspected and used again']),
          partNumber: optional(text.text),
        }),
      ),
      level: optional(oneOf(['at the mark', 'below', 'above', 'not checked'])),
      leaks: optional(oneOf(['dry', 'weeping', 'dripping', 'not checked'])),
    }),
  )
  return document('service-record', {
    header: optional(text.text),
    machine: text.id,
    sheet: sheetReferenceShape(),
    detail: oneOf(['full', 'date and meters only']),
    date: text.date,
    readings: object({
      hours: optional(quantity.hours),
      distance: optional(quantity.distance),
    }),
    by: optional(text.text),
    entries: list(entry),
    shields: optional(list(tighteningDone)),
    usedOil: optional(text.text),
    note: optional(text.text),
  })
})
