import { LARGEST_NUMBER } from '../../base/index.js'
import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import { DRIVE_KINDS } from './gearcaseShapes.js'
import {
  amount,
  buildOnce,
  byTag,
  count,
  filledList,
  kind,
  object,
  oneOf,
  optional,
  positive,
} from './makeShape.js'
import { quantityShapes } from './quantityShapes.js'
import { document, map, named, textShapes } from './textShapes.js'

/** What the workshop has to work with. */
export const toolboxShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const quantity = quantityShapes()
  const percent = positive(50)
  const wrench = named(
    'torque-wrench',
    object({
      name: text.text,
      type: oneOf(['click', 'dial', 'beam', 'electronic']),
      drive: text.text,
      scales: filledList(
        object({
          unit: oneOf(UNITS_BY_MEASURE.torque),
          lowest: amount(),
          highest: positive(),
          graduation: positive(),
        }),
      ),
      declaredRange: optional(object({ min: quantity.torque, max: quantity.torque })),
      accuracy: byTag([
        kind('ISO 6789', {}),
        kind('of reading', { percent }),
        kind('of full scale', { percent }),
      ]),
      leverLength: optional(quantity.length),
      calibration: optional(
        object({
          date: text.date,
          cyclesSince: optional(count(0, LARGEST_NUMBER)),
        }),
      ),
    }),
  )
  const filler = named(
    'funnel-and-hose',
    object({
      name: text.text,
      funnel: object({
        shape: oneOf(['cylinder', 'cone']),
        diameter: quantity.length,
        depth: quantity.length,
      }),
      hose: object({ bore: quantity.length, length: quantity.length, drop: quantity.length }),
    }),
  )
  return document('toolbox', {
    name: text.text,
    header: optional(text.text),
    wrenches: map(wrench),
    adaptors: optional(
      map(
        object({
          name: text.text,
          kind: oneOf(['crowfoot', 'straight extension', 'drive adaptor']),
          from: text.text,
          to: text.text,
          extension: optional(quantity.length),
        }),
      ),
    ),
    sockets: map(
      object({
        name: text.text,
        fits: oneOf(DRIVE_KINDS),
        size: optional(text.text),
        drive: optional(text.text),
      }),
    ),
    vessels: map(
      object({
        name: text.text,
        size: quantity.volume,
        graduation: quantity.volume,
        lowestMark: optional(quantity.volume),
      }),
    ),
    pans: map(object({ name: text.text, size: quantity.volume })),
    fillers: map(filler),
    stands: map(object({ name: text.text, count: count(), rating: quantity.mass })),
    jacks: optional(map(object({ name: text.text, rating: quantity.mass }))),
    chocks: optional(count()),
  })
})
