import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import {
  amount,
  buildOnce,
  byTag,
  kind,
  list,
  literal,
  object,
  oneOf,
  optional,
  positive,
} from './makeShape.js'
import { quantityShapes } from './quantityShapes.js'
import { identityShape, sheetReferenceShape } from './referenceShapes.js'
import { serviceRecordShape } from './serviceRecordShape.js'
import { MACHINE_EVENT_KINDS } from './specSheetShape.js'
import { document, textShapes } from './textShapes.js'

/** One machine's history. */
export const machineLogShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const meter = {
    rollover: optional(positive()),
    readings: list(object({ date: text.date, value: amount() })),
  }
  const date = text.date
  const meterName = oneOf(['hours', 'distance'])
  const reading = amount()
  const event = byTag([
    kind('meter swap', {
      date,
      meter: meterName,
      oldReading: reading,
      newReading: reading,
    }),
    kind('meter reset', { date, meter: meterName, oldReading: reading }),
    kind('meter rollover', { date, meter: meterName }),
    object({
      kind: oneOf(MACHINE_EVENT_KINDS),
      date,
      gearcases: optional(list(text.id)),
      note: optional(text.text),
    }),
  ])
  return document('machine-log', {
    name: text.text,
    header: optional(text.text),
    sheet: sheetReferenceShape(),
    identity: identityShape(),
    commissioned: optional(date),
    use: optional(oneOf(['normal', 'severe'])),
    meters: object({
      hours: optional(object({ unit: literal('h'), ...meter })),
      distance: optional(object({ unit: oneOf(UNITS_BY_MEASURE.distance), ...meter })),
    }),
    events: optional(list(event)),
    records: list(serviceRecordShape()),
    topUps: optional(
      list(
        object({
          date,
          gearcase: text.id,
          instance: optional(text.id),
          volume: quantityShapes().volume,
          oil: text.text,
        }),
      ),
    ),
    pauses: optional(list(object({ from: date, to: date }))),
  })
})
