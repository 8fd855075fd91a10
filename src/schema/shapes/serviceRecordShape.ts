import { MIXED_FLUIDS, TIGHTENED_WITHOUT_FIGURE, WHEEL_MARKS } from '../../spec/index.js'
import { buildOnce, kind, list, numberFrom, shapeOrWord } from './makeShape.js'
import { quantityShapes, sheetReferenceShape } from './quantityShapes.js'
import { documentShape, namedObject, namedUnion, textShapes } from './textShapes.js'

/** The work done at one visit. */
export const serviceRecordShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const quantity = quantityShapes()
  const at = { on: text.pointer, 'wheelMark?': WHEEL_MARKS }
  const recordedTightening = namedUnion('tightening-done', [
    kind('torque set', { ...at, torque: quantity.torque, tool: text.id }),
    kind('turns', { ...at, turns: numberFrom() }),
    ...TIGHTENED_WITHOUT_FIGURE.map((word) => kind(word, { ...at })),
  ])
  const entry = namedObject('record-entry', {
    service: text.id,
    gearcase: text.id,
    'instance?': text.id,
    'notDone?': text.text,
    'drained?': shapeOrWord(quantity.volume, 'not judged'),
    'refilled?': quantity.volume,
    'oil?': { name: text.text, 'container?': text.id, 'batch?': text.text },
    'oilFinding?': ['clear', 'dark', 'milky', 'burnt', 'metallic', 'not judged'],
    'magnet?': ['no magnet', 'clean', 'fine paste', 'chips', 'pieces'],
    'sample?': {
      bottle: text.text,
      'taken?': ['mid-stream', 'first oil', 'from the pan', 'extracted', 'not known'],
      'laboratory?': text.text,
      'result?': text.text,
    },
    opened: list(text.pointer),
    tightened: list(recordedTightening),
    seals: list({
      on: text.pointer,
      done: ['new', 'inspected and used again'],
      'partNumber?': text.text,
    }),
    'filters?': list({
      on: text.pointer,
      done: ['new', 'cleaned'],
      'partNumber?': text.text,
      'found?': ['clean', 'fine paste', 'chips', 'pieces'],
    }),
    'level?': ['at the mark', 'below', 'above', 'not checked'],
    'leaks?': ['dry', 'weeping', 'dripping', 'not checked'],
  })
  const readings = { 'hours?': quantity.hours, 'distance?': quantity.distance }
  return documentShape('service-record', {
    'header?': text.text,
    machine: text.id,
    sheet: sheetReferenceShape(),
    detail: ['full', 'date and meters only'],
    date: text.date,
    readings,
    'by?': text.text,
    entries: list(entry),
    'shields?': list(recordedTightening),
    'workingTime?': quantity.workingTime,
    'usedOil?': text.text,
    'usedOilLog?': list(
      namedObject('used-oil', {
        'volume?': quantity.volume,
        'to?': text.text,
        'receipt?': text.text,
        'keptApart?': MIXED_FLUIDS,
      }),
    ),
    'corrects?': text.id,
    'corrected?': { 'date?': text.date, 'readings?': readings },
    'photos?': list(
      namedObject('photo', {
        file: text.text,
        'sha256?': text.sha256,
        'step?': text.text,
      }),
    ),
    'certificates?': list({ tool: text.id, number: text.text, 'date?': text.date, 'validTo?': text.date }),
    'signature?': namedObject('signature', {
      name: text.text,
      'date?': text.date,
      'file?': text.text,
      'sha256?': text.sha256,
    }),
    'note?': text.text,
  })
})
