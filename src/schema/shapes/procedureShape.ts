import * as z from 'zod/mini'
import { buildOnce } from './buildOnce.js'
import { WHEEL_MARKS } from './gearcaseShapes.js'
import { identityShape, sheetReferenceShape } from './referenceShapes.js'
import { textShapes } from './textShapes.js'

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
  const step = z.strictObject({
    id: text.id,
    do: z.enum(ACTION_NAMES),
    on: z.exactOptional(text.pointer),
    at: z.exactOptional(
      z.strictObject({
        instance: z.exactOptional(text.id),
        wheelMark: z.exactOptional(z.enum(WHEEL_MARKS)),
      }),
    ),
    values: z.exactOptional(z.record(text.label, text.pointer)),
    note: z.exactOptional(text.text),
  })
  return z.strictObject({
    kind: z.literal('procedure'),
    version: z.literal('1.0'),
    id: text.id,
    name: text.text,
    header: z.exactOptional(text.text),
    sheet: sheetReferenceShape(),
    identity: identityShape(),
    services: z.array(text.id),
    only: z.exactOptional(
      z.array(z.strictObject({ service: text.id, gearcase: text.id, instance: z.exactOptional(text.id) })),
    ),
    steps: z.array(step),
  })
})
