import { WHEEL_MARKS } from './gearcaseShapes.js'
import { buildOnce, list, object, oneOf, optional, record } from './makeShape.js'
import { identityShape, sheetReferenceShape } from './referenceShapes.js'
import { document, textShapes } from './textShapes.js'

/** Everything that a step can do, in the order of a usual job. */
const ACTION_NAMES = [
  'read the manual',
  'wear protection',
  'park on level ground',
  'warm the oil',
  'stop the engine',
  'chock the wheels',
  'raise the machine',
  'set on stands',
  'lower the machine',
  'remove shield',
  'refit shield',
  'turn the wheel',
  'clean around',
  'crack loose',
  'nip by hand',
  'place the pan',
  'take out',
  'let drain',
  'suck out the oil',
  'take off cover',
  'inspect the oil',
  'inspect the magnet',
  'clean the magnet',
  'clear the breather',
  'take off old seal',
  'wipe the seal face',
  'fit new seal',
  'inspect the seal',
  'apply sealant',
  'fit',
  'tighten',
  'fit cover',
  'tighten cover',
  'wait for the cure',
  'measure the oil',
  'add the additive',
  'pour the oil',
  'wait for the hose',
  'check the level',
  'top up',
  'short run',
  'let settle',
  'check for leaks',
  'wipe down',
  'take used oil away',
  'record',
] as const

/** A writer's own steps for a sheet. */
export const procedureShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const step = object({
    id: text.id,
    do: oneOf(ACTION_NAMES),
    on: optional(text.pointer),
    at: optional(
      object({
        instance: optional(text.id),
        wheelMark: optional(oneOf(WHEEL_MARKS)),
      }),
    ),
    values: optional(record(text.label, text.pointer)),
    note: optional(text.text),
  })
  return document('procedure', {
    name: text.text,
    header: optional(text.text),
    sheet: sheetReferenceShape(),
    identity: identityShape(),
    services: list(text.id),
    only: optional(list(object({ service: text.id, gearcase: text.id, instance: optional(text.id) }))),
    steps: list(step),
  })
})
