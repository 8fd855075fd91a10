import { buildOnce, kind, list, oneOf } from './makeShape.js'
import { namedUnion, textShapes, withSchemaId } from './textShapes.js'
import { valueShapes } from './valueShapes.js'

/** The numbers under which a part is sold. */
export const makePartNumberFields = () => {
  const other = { partNumber: textShapes().text, 'source?': valueShapes().sourceRef }
  return { 'partNumber?': textShapes().text, 'supersededBy?': other, 'equivalents?': list(other) } as const
}

/** The seals of a joint. */
export const sealShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const values = valueShapes()
  const purchaseFields = {
    replace: ['every opening', 'on condition', 'not stated'] as const,
    ...makePartNumberFields(),
    'source?': values.sourceRef,
  }
  const elastomer = withSchemaId(
    'elastomer',
    oneOf(['NBR', 'HNBR', 'FKM', 'ACM', 'EPDM', 'VMQ', 'FVMQ', 'AU', 'CR', 'FFKM', 'not stated']),
  )
  const { sizeFigure } = text
  const ringSize = {
    inside: sizeFigure,
    outside: sizeFigure,
    thickness: sizeFigure,
    unit: ['mm', 'in'],
  } as const
  return namedUnion('seal', [
    kind('crush washer', {
      form: ['flat', 'folded', 'captive', 'not stated'],
      material: ['copper', 'aluminium', 'soft steel', 'fibre', 'not stated'],
      'size?': ringSize,
      ...purchaseFields,
    }),
    kind('bonded seal', {
      'form?': ['profile ring'],
      material: elastomer,
      'size?': ringSize,
      ...purchaseFields,
    }),
    kind('o-ring', {
      material: elastomer,
      'designation?': text.text,
      'size?': { inside: sizeFigure, section: sizeFigure, unit: ['mm', 'in'] },
      ...purchaseFields,
    }),
    kind('thread sealant', { product: text.text, ...purchaseFields }),
    kind('gasket', { material: text.text, ...purchaseFields }),
    kind('liquid gasket', {
      product: text.text,
      bead: values.millimetres.spec,
      cureBeforeOil: values.hoursOrMinutes.spec,
      ...purchaseFields,
    }),
    kind('none', { 'source?': values.sourceRef }),
    values.notStated,
  ])
})
