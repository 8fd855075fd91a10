import { buildOnce, kind, list, oneOf } from './makeShape.js'
import { namedUnion, textShapes, withSchemaId } from './textShapes.js'
import { valueShapes } from './valueShapes.js'
import { ELASTOMERS, REPLACEMENTS, WASHER_FORMS, WASHER_MATERIALS } from './wordLists.js'

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
    replace: [...REPLACEMENTS, 'not stated'] as const,
    ...makePartNumberFields(),
    'source?': values.sourceRef,
  }
  const elastomer = withSchemaId('elastomer', oneOf([...ELASTOMERS, 'not stated']))
  const { sizeFigure } = text
  const ringSize = {
    inside: sizeFigure,
    outside: sizeFigure,
    thickness: sizeFigure,
    unit: ['mm', 'in'],
  } as const
  return namedUnion('seal', [
    kind('crush washer', {
      form: [...WASHER_FORMS, 'not stated'],
      material: [...WASHER_MATERIALS, 'not stated'],
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
