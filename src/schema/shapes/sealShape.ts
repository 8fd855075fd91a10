import * as z from 'zod/mini'
import { buildOnce } from './buildOnce.js'
import { partRegistry, textShapes } from './textShapes.js'
import { valueShapes } from './valueShapes.js'

/** Everything that seals a joint. */
export const sealShape = /* @__PURE__ */ buildOnce(() => {
  const parts = partRegistry()
  const text = textShapes()
  const values = valueShapes()
  const part = {
    replace: z.enum(['every opening', 'on condition']),
    partNumber: z.exactOptional(text.text),
    source: z.exactOptional(values.sourceRef),
  }
  const elastomer = z
    .enum(['NBR', 'HNBR', 'FKM', 'ACM', 'EPDM', 'VMQ', 'FVMQ', 'AU', 'CR', 'FFKM', 'not stated'])
    .register(parts, { id: 'elastomer' })
  const ringSize = z.exactOptional(
    z.strictObject({
      inside: text.sizeFigure,
      outside: text.sizeFigure,
      thickness: text.sizeFigure,
      unit: z.literal('mm'),
    }),
  )
  return z
    .discriminatedUnion('kind', [
      z.strictObject({
        kind: z.literal('crush washer'),
        form: z.enum(['flat', 'folded']),
        material: z.enum(['copper', 'aluminium', 'soft steel', 'fibre', 'not stated']),
        size: ringSize,
        ...part,
      }),
      z.strictObject({ kind: z.literal('bonded seal'), material: elastomer, size: ringSize, ...part }),
      z.strictObject({
        kind: z.literal('o-ring'),
        material: elastomer,
        designation: z.exactOptional(text.text),
        size: z.exactOptional(
          z.strictObject({ inside: text.sizeFigure, section: text.sizeFigure, unit: z.literal('mm') }),
        ),
        ...part,
      }),
      z.strictObject({ kind: z.literal('thread sealant'), product: text.text, ...part }),
      z.strictObject({ kind: z.literal('gasket'), material: text.text, ...part }),
      z.strictObject({
        kind: z.literal('liquid gasket'),
        product: text.text,
        bead: values.millimetres.spec,
        cureBeforeOil: values.hoursOrMinutes.spec,
        ...part,
      }),
      z.strictObject({ kind: z.literal('none'), source: z.exactOptional(values.sourceRef) }),
      values.notStated,
    ])
    .register(parts, { id: 'seal' })
})
