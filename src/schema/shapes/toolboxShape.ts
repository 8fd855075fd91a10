import * as z from 'zod/mini'
import { LARGEST_NUMBER } from '../../base/index.js'
import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import { buildOnce } from './buildOnce.js'
import { DRIVE_KINDS } from './gearcaseShapes.js'
import { amount, count, positive } from './numberShapes.js'
import { quantityShapes } from './quantityShapes.js'
import { partRegistry, textShapes } from './textShapes.js'

/** What the workshop has to work with. */
export const toolboxShape = /* @__PURE__ */ buildOnce(() => {
  const parts = partRegistry()
  const text = textShapes()
  const quantity = quantityShapes()
  const percent = positive(50)
  const wrench = z
    .strictObject({
      name: text.text,
      type: z.enum(['click', 'dial', 'beam', 'electronic']),
      drive: text.text,
      scales: z
        .array(
          z.strictObject({
            unit: z.enum(UNITS_BY_MEASURE.torque),
            lowest: amount(),
            highest: positive(),
            graduation: positive(),
          }),
        )
        .check(z.minLength(1)),
      declaredRange: z.exactOptional(z.strictObject({ min: quantity.torque, max: quantity.torque })),
      accuracy: z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('ISO 6789') }),
        z.strictObject({ kind: z.literal('of reading'), percent }),
        z.strictObject({ kind: z.literal('of full scale'), percent }),
      ]),
      leverLength: z.exactOptional(quantity.length),
      calibration: z.exactOptional(
        z.strictObject({
          date: text.date,
          cyclesSince: z.exactOptional(z.int().check(z.minimum(0), z.maximum(LARGEST_NUMBER))),
        }),
      ),
    })
    .register(parts, { id: 'torque-wrench' })
  const filler = z
    .strictObject({
      name: text.text,
      funnel: z.strictObject({
        shape: z.enum(['cylinder', 'cone']),
        diameter: quantity.length,
        depth: quantity.length,
      }),
      hose: z.strictObject({ bore: quantity.length, length: quantity.length, drop: quantity.length }),
    })
    .register(parts, { id: 'funnel-and-hose' })
  return z.strictObject({
    kind: z.literal('toolbox'),
    version: z.literal('1.0'),
    id: text.id,
    name: text.text,
    header: z.exactOptional(text.text),
    wrenches: z.record(text.id, wrench),
    adaptors: z.exactOptional(
      z.record(
        text.id,
        z.strictObject({
          name: text.text,
          kind: z.enum(['crowfoot', 'straight extension', 'drive adaptor']),
          from: text.text,
          to: text.text,
          extension: z.exactOptional(quantity.length),
        }),
      ),
    ),
    sockets: z.record(
      text.id,
      z.strictObject({
        name: text.text,
        fits: z.enum(DRIVE_KINDS),
        size: z.exactOptional(text.text),
        drive: z.exactOptional(text.text),
      }),
    ),
    vessels: z.record(
      text.id,
      z.strictObject({
        name: text.text,
        size: quantity.volume,
        graduation: quantity.volume,
        lowestMark: z.exactOptional(quantity.volume),
      }),
    ),
    pans: z.record(text.id, z.strictObject({ name: text.text, size: quantity.volume })),
    fillers: z.record(text.id, filler),
    stands: z.record(text.id, z.strictObject({ name: text.text, count: count(), rating: quantity.mass })),
    jacks: z.exactOptional(z.record(text.id, z.strictObject({ name: text.text, rating: quantity.mass }))),
    chocks: z.exactOptional(count()),
  })
})
