import { amount, buildOnce, count, list, object, oneOf, optional } from './makeShape.js'
import { quantityShapes } from './quantityShapes.js'
import { sealShape } from './sealShape.js'
import { document, map, named, textShapes } from './textShapes.js'

/** What is on the shelf. */
export const stockShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const quantity = quantityShapes()
  const price = optional(object({ value: amount(), currency: text.currency }))
  const oil = named(
    'offered-oil',
    object({
      name: text.text,
      grade: optional(text.text),
      system: optional(oneOf(['SAE J306', 'SAE J300', 'ISO VG'])),
      categories: optional(list(text.text)),
      makerFluids: optional(list(text.text)),
      limitedSlip: optional(oneOf(['contains additive', 'no additive', 'not stated'])),
      kv40: optional(quantity.kinematicViscosity),
      kv100: optional(quantity.kinematicViscosity),
      density15: optional(quantity.density),
      pourPoint: optional(quantity.celsius),
      source: optional(text.text),
    }),
  )
  return document('stock', {
    name: text.text,
    header: optional(text.text),
    containers: map(
      object({
        name: text.text,
        oil,
        size: quantity.volume,
        count: count(),
        opened: optional(quantity.volume),
        price,
      }),
    ),
    seals: map(object({ name: text.text, seal: sealShape(), count: count(), price })),
  })
})
