import * as z from 'zod/mini'
import { buildOnce } from './buildOnce.js'
import { amount, count } from './numberShapes.js'
import { quantityShapes } from './quantityShapes.js'
import { sealShape } from './sealShape.js'
import { partRegistry, textShapes } from './textShapes.js'

/** What is on the shelf. */
export const stockShape = /* @__PURE__ */ buildOnce(() => {
  const parts = partRegistry()
  const text = textShapes()
  const quantity = quantityShapes()
  const price = z.exactOptional(z.strictObject({ value: amount(), currency: text.currency }))
  const oil = z
    .strictObject({
      name: text.text,
      grade: z.exactOptional(text.text),
      system: z.exactOptional(z.enum(['SAE J306', 'SAE J300', 'ISO VG'])),
      categories: z.exactOptional(z.array(text.text)),
      makerFluids: z.exactOptional(z.array(text.text)),
      limitedSlip: z.exactOptional(z.enum(['contains additive', 'no additive', 'not stated'])),
      kv40: z.exactOptional(quantity.kinematicViscosity),
      kv100: z.exactOptional(quantity.kinematicViscosity),
      density15: z.exactOptional(quantity.density),
      pourPoint: z.exactOptional(quantity.celsius),
      source: z.exactOptional(text.text),
    })
    .register(parts, { id: 'offered-oil' })
  return z.strictObject({
    kind: z.literal('stock'),
    version: z.literal('1.0'),
    id: text.id,
    name: text.text,
    header: z.exactOptional(text.text),
    containers: z.record(
      text.id,
      z.strictObject({
        name: text.text,
        oil,
        size: quantity.volume,
        count: count(),
        opened: z.exactOptional(quantity.volume),
        price,
      }),
    ),
    seals: z.record(text.id, z.strictObject({ name: text.text, seal: sealShape(), count: count(), price })),
  })
})
