import * as z from 'zod/mini'
import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import { buildOnce } from './buildOnce.js'
import { amount, positive } from './numberShapes.js'
import { quantityShapes } from './quantityShapes.js'
import { identityShape, sheetReferenceShape } from './referenceShapes.js'
import { serviceRecordShape } from './serviceRecordShape.js'
import { MACHINE_EVENT_KINDS } from './specSheetShape.js'
import { textShapes } from './textShapes.js'

/** One machine's history. */
export const machineLogShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const meter = {
    rollover: z.exactOptional(positive()),
    readings: z.array(z.strictObject({ date: text.date, value: amount() })),
  }
  const date = text.date
  const meterName = z.enum(['hours', 'distance'])
  const reading = amount()
  const event = z.discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('meter swap'),
      date,
      meter: meterName,
      oldReading: reading,
      newReading: reading,
    }),
    z.strictObject({ kind: z.literal('meter reset'), date, meter: meterName, oldReading: reading }),
    z.strictObject({ kind: z.literal('meter rollover'), date, meter: meterName }),
    z.strictObject({
      kind: z.enum(MACHINE_EVENT_KINDS),
      date,
      gearcases: z.exactOptional(z.array(text.id)),
      note: z.exactOptional(text.text),
    }),
  ])
  return z.strictObject({
    kind: z.literal('machine-log'),
    version: z.literal('1.0'),
    id: text.id,
    name: text.text,
    header: z.exactOptional(text.text),
    sheet: sheetReferenceShape(),
    identity: identityShape(),
    commissioned: z.exactOptional(date),
    use: z.exactOptional(z.enum(['normal', 'severe'])),
    meters: z.strictObject({
      hours: z.exactOptional(z.strictObject({ unit: z.literal('h'), ...meter })),
      distance: z.exactOptional(z.strictObject({ unit: z.enum(UNITS_BY_MEASURE.distance), ...meter })),
    }),
    events: z.exactOptional(z.array(event)),
    records: z.array(serviceRecordShape()),
    topUps: z.exactOptional(
      z.array(
        z.strictObject({
          date,
          gearcase: text.id,
          instance: z.exactOptional(text.id),
          volume: quantityShapes().volume,
          oil: text.text,
        }),
      ),
    ),
    pauses: z.exactOptional(z.array(z.strictObject({ from: date, to: date }))),
  })
})
