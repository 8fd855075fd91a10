import { MAX_NUMBER } from '../../base/index.js'
import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import { DRIVE_KINDS } from '../../spec/index.js'
import { amount, buildOnce, byTag, count, filledList, kind, positive } from './makeShape.js'
import { quantityShapes } from './quantityShapes.js'
import { document, map, part, textShapes } from './textShapes.js'

/** The workshop's tools and equipment. */
export const toolboxShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const quantity = quantityShapes()
  const percent = positive(50)
  const wrench = part('torque-wrench', {
    name: text.text,
    type: ['click', 'dial', 'beam', 'electronic'],
    drive: text.text,
    scales: filledList({
      unit: UNITS_BY_MEASURE.torque,
      lowest: amount(),
      highest: positive(),
      graduation: positive(),
    }),
    'declaredRange?': { min: quantity.torque, max: quantity.torque },
    accuracy: byTag([
      kind('ISO 6789', {}),
      kind('of reading', { percent }),
      kind('of full scale', { percent }),
    ]),
    'leverLength?': quantity.length,
    'calibration?': { date: text.date, 'cyclesSince?': count(0, MAX_NUMBER) },
  })
  const filler = part('funnel-and-hose', {
    name: text.text,
    funnel: { shape: ['cylinder', 'cone'], diameter: quantity.length, depth: quantity.length },
    hose: { 'bore?': quantity.length, length: quantity.length, drop: quantity.length },
  })
  return document('toolbox', {
    name: text.text,
    'header?': text.text,
    wrenches: map(wrench),
    'adaptors?': map({
      name: text.text,
      kind: ['crowfoot', 'straight extension', 'drive adaptor'],
      from: text.text,
      to: text.text,
      'extension?': quantity.length,
    }),
    sockets: map({
      name: text.text,
      fits: DRIVE_KINDS,
      'size?': text.text,
      'drive?': text.text,
    }),
    vessels: map({
      name: text.text,
      size: quantity.volume,
      graduation: quantity.volume,
      'lowestMark?': quantity.volume,
    }),
    pans: map({ name: text.text, size: quantity.volume }),
    fillers: map(filler),
    stands: map({ name: text.text, count: count(), rating: quantity.mass }),
    'jacks?': map({ name: text.text, rating: quantity.mass }),
    'chocks?': count(),
  })
})
