import { ACTION_NAMES, MACHINE_EVENT_KINDS, WHEEL_MARKS } from '../../spec/index.js'
import { buildOnce, list, object, record } from './makeShape.js'
import { identityShape, sheetReferenceShape } from './quantityShapes.js'
import { documentShape, textShapes } from './textShapes.js'

/** The steps of one visit. */
export const procedureShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const step = object({
    id: text.id,
    do: ACTION_NAMES,
    'on?': text.pointer,
    'at?': { 'instance?': text.id, 'wheelMark?': WHEEL_MARKS },
    'values?': record(text.label, text.pointer),
    'note?': text.text,
  })
  return documentShape('procedure', {
    name: text.text,
    'header?': text.text,
    sheet: sheetReferenceShape(),
    identity: identityShape(),
    services: list(text.id),
    'only?': list({ service: text.id, gearcase: text.id, 'instance?': text.id }),
    'events?': list(MACHINE_EVENT_KINDS),
    steps: list(step),
  })
})
