import { buildOnce, count, list, numberFrom } from './makeShape.js'
import { quantityShapes } from './quantityShapes.js'
import { sealShape } from './sealShape.js'
import { documentShape, namedObject, recordById, textShapes } from './textShapes.js'

/** Oil and seals in stock. */
export const stockShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const quantity = quantityShapes()
  const priceField = { 'price?': { value: numberFrom(), currency: text.currency } }
  const oil = namedObject('offered-oil', {
    name: text.text,
    'grade?': text.text,
    'system?': ['SAE J306', 'SAE J300', 'ISO VG'],
    'categories?': list(text.text),
    'makerFluids?': list(text.text),
    'limitedSlip?': ['contains additive', 'no additive', 'not stated'],
    'kv40?': quantity.kinematicViscosity,
    'kv100?': quantity.kinematicViscosity,
    'density15?': quantity.density,
    'pourPoint?': quantity.celsius,
    'source?': text.text,
  })
  return documentShape('stock', {
    name: text.text,
    'header?': text.text,
    containers: recordById({
      name: text.text,
      oil,
      size: quantity.volume,
      count: count(),
      'opened?': quantity.volume,
      ...priceField,
    }),
    seals: recordById({ name: text.text, seal: sealShape(), count: count(), ...priceField }),
  })
})
