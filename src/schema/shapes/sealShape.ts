import { buildOnce, kind, list, oneOf } from './makeShape.js'
import { choice, named, textShapes } from './textShapes.js'
import { valueShapes } from './valueShapes.js'

/** The numbers under which a part is sold. */
export const numberedPart = () => {
  const other = { partNumber: textShapes().text, 'source?': valueShapes().sourceRef }
  return { 'partNumber?': textShapes().text, 'supersededBy?': other, 'equivalents?': list(other) } as const
}

/** The seals of a joint. */
export const sealShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const values = valueShapes()
  const bought = {
    replace: ['every opening', 'on condition', 'not stated'] as const,
    ...numberedPart(),
    'source?': values.sourceRef,
  }
  const elastomer = named(
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
  return choice('seal', [
    kind('crush washer', {
      form: ['flat', 'folded', 'captive', 'not stated'],
      material: ['copper', 'aluminium', 'soft steel', 'fibre', 'not stated'],
      'size?': ringSize,
      ...bought,
    }),
    kind('bonded seal', { 'form?': ['profile ring'], material: elastomer, 'size?': ringSize, ...bought }),
    kind('o-ring', {
      material: elastomer,
      'designation?': text.text,
      'size?': { inside: sizeFigure, section: sizeFigure, unit: ['mm', 'in'] },
      ...bought,
    }),
    kind('thread sealant', { product: text.text, ...bought }),
    kind('gasket', { material: text.text, ...bought }),
    kind('liquid gasket', {
      product: text.text,
      bead: values.millimetres.spec,
      cureBeforeOil: values.hoursOrMinutes.spec,
      ...bought,
    }),
    kind('none', { 'source?': values.sourceRef }),
    values.notStated,
  ])
})
