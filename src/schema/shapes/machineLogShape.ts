import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import { MACHINE_EVENT_KINDS } from '../../spec/index.js'
import { buildOnce, kind, list, numberFrom, object, positiveNumber, taggedUnion } from './makeShape.js'
import { identityShape, quantityShapes, sheetReferenceShape } from './quantityShapes.js'
import { serviceRecordShape } from './serviceRecordShape.js'
import { documentShape, textShapes } from './textShapes.js'

/** The history of one machine. */
export const machineLogShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const { date } = text
  const meter = { 'rollover?': positiveNumber(), readings: list({ date, value: numberFrom() }) }
  const meterName = ['hours', 'distance'] as const
  const reading = numberFrom()
  const event = taggedUnion([
    kind('meter swap', {
      date,
      meter: meterName,
      oldReading: reading,
      newReading: reading,
    }),
    kind('meter reset', { date, meter: meterName, oldReading: reading }),
    kind('meter rollover', { date, meter: meterName }),
    object({
      kind: MACHINE_EVENT_KINDS,
      date,
      'gearcases?': list(text.id),
      'note?': text.text,
    }),
  ])
  return documentShape('machine-log', {
    name: text.text,
    'header?': text.text,
    'place?': text.text,
    sheet: sheetReferenceShape(),
    identity: identityShape(),
    'commissioned?': date,
    'use?': ['normal', 'severe'],
    meters: {
      'hours?': { unit: 'h', ...meter },
      'distance?': { unit: UNITS_BY_MEASURE.distance, ...meter },
    },
    'events?': list(event),
    records: list(serviceRecordShape()),
    'topUps?': list({
      date,
      gearcase: text.id,
      'instance?': text.id,
      volume: quantityShapes().volume,
      oil: text.text,
    }),
    'pauses?': list({ from: date, to: date }),
  })
})
