import { buildOnce, byTag, kind, literal, object, oneOf, optional } from './makeShape.js'
import { named, textShapes } from './textShapes.js'
import { valueShapes } from './valueShapes.js'

/** Everything that seals a joint. */
export const sealShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const values = valueShapes()
  const part = {
    replace: oneOf(['every opening', 'on condition']),
    partNumber: optional(text.text),
    source: optional(values.sourceRef),
  }
  const elastomer = named(
    'elastomer',
    oneOf(['NBR', 'HNBR', 'FKM', 'ACM', 'EPDM', 'VMQ', 'FVMQ', 'AU', 'CR', 'FFKM', 'not stated']),
  )
  const ringSize = optional(
    object({
      inside: text.sizeFigure,
      outside: text.sizeFigure,
      thickness: text.sizeFigure,
      unit: literal('mm'),
    }),
  )
  return named(
    'seal',
    byTag([
      kind('crush washer', {
        form: oneOf(['flat', 'folded']),
        material: oneOf(['copper', 'aluminium', 'soft steel', 'fibre', 'not stated']),
        size: ringSize,
        ...part,
      }),
      kind('bonded seal', { material: elastomer, size: ringSize, ...part }),
      kind('o-ring', {
        material: elastomer,
        designation: optional(text.text),
        size: optional(object({ inside: text.sizeFigure, section: text.sizeFigure, unit: literal('mm') })),
        ...part,
      }),
      kind('thread sealant', { product: text.text, ...part }),
      kind('gasket', { material: text.text, ...part }),
      kind('liquid gasket', {
        product: text.text,
        bead: values.millimetres.spec,
        cureBeforeOil: values.hoursOrMinutes.spec,
        ...part,
      }),
      kind('none', { source: optional(values.sourceRef) }),
      values.notStated,
    ]),
  )
})
