import { MAX_NUMBER } from '../../base/index.js'
import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import { DRIVE_KINDS } from '../../spec/index.js'
import { buildOnce, count, kind, nonEmptyList, numberFrom, positiveNumber, taggedUnion } from './makeShape.js'
import { quantityShapes } from './quantityShapes.js'
import { documentShape, namedObject, recordById, textShapes } from './textShapes.js'

/** The workshop's tools and equipment. */
export const toolboxShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const quantity = quantityShapes()
  const percent = positiveNumber(50)
  const wrench = namedObject('torque-wrench', {
    name: text.text,
    type: ['click', 'dial', 'beam', 'electronic'],
    drive: text.text,
    scales: nonEmptyList({
      unit: UNITS_BY_MEASURE.torque,
      lowest: numberFrom(),
      highest: positiveNumber(),
      graduation: positiveNumber(),
    }),
    'declaredRange?': { min: quantity.torque, max: quantity.torque },
    accuracy: taggedUnion([
      kind('ISO 6789', {}),
      kind('of reading', { percent }),
      kind('of full scale', { percent }),
    ]),
    'leverLength?': quantity.length,
    'calibration?': { date: text.date, 'cyclesSince?': count(0, MAX_NUMBER) },
  })
  const funnelAndHose = namedObject('funnel-and-hose', {
    name: text.text,
    funnel: { shape: ['cylinder', 'cone'], diameter: quantity.length, depth: quantity.length },
    hose: { 'bore?': quantity.length, length: quantity.length, drop: quantity.length },
  })
  return documentShape('toolbox', {
    name: text.text,
    'header?': text.text,
    wrenches: recordById(wrench),
    'adaptors?': recordById({
      name: text.text,
      kind: ['crowfoot', 'straight extension', 'drive adaptor'],
      from: text.text,
      to: text.text,
      'extension?': quantity.length,
    }),
    sockets: recordById({
      name: text.text,
      fits: DRIVE_KINDS,
      'size?': text.text,
      'drive?': text.text,
    }),
    vessels: recordById({
      name: text.text,
      size: quantity.volume,
      graduation: quantity.volume,
      'lowestMark?': quantity.volume,
    }),
    pans: recordById({ name: text.text, size: quantity.volume }),
    fillers: recordById(funnelAndHose),
    stands: recordById({ name: text.text, count: count(), rating: quantity.mass }),
    'ramps?': recordById({ name: text.text, count: count(), rating: quantity.mass }),
    'jacks?': recordById({ name: text.text, rating: quantity.mass }),
    'chocks?': count(),
  })
})
