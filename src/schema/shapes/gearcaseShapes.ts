import { WHEEL_MARKS } from '../../spec/index.js'
import { leafShapes } from './leafShapes.js'
import {
  booleanShape,
  buildOnce,
  count,
  kind,
  list,
  nonEmptyList,
  object,
  shapeOrWord,
  taggedUnion,
} from './makeShape.js'
import { makePartNumberFields } from './sealShape.js'
import { namedObject, recordById, textShapes } from './textShapes.js'
import { ATTITUDES, BOLT_PATTERNS, DIPSTICK_READINGS, ENGINE_STATES, OPENING_ROLES } from './wordLists.js'

/** Gearcases with their openings and covers, and the shields in front of them. */
export const gearcaseShapes = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const leaf = leafShapes()
  const { values } = leaf
  const named = { name: text.text, 'appliesTo?': leaf.condition }
  const fasteners = {
    count: shapeOrWord(count(1), 'not stated'),
    'thread?': text.text,
    'propertyClass?': text.text,
    drive: leaf.drive,
    tightening: leaf.tightening,
  }
  const opening = namedObject('opening', {
    ...named,
    uses: nonEmptyList({ role: OPENING_ROLES, 'wheelMark?': WHEEL_MARKS }),
    'thread?': text.text,
    'housing?': ['steel', 'cast iron', 'aluminium', 'not stated'],
    drive: leaf.drive,
    tightening: leaf.tightening,
    seals: list(leaf.seal),
    'magnet?': booleanShape(),
    place: leaf.place,
    'position?': leaf.position,
  })
  const cover = namedObject('cover', {
    ...named,
    bolts: {
      ...fasteners,
      pattern: [...BOLT_PATTERNS, 'not stated'],
    },
    seal: leaf.seal,
    'magnet?': booleanShape(),
    place: leaf.place,
    'position?': ['upright', 'bottom', 'not stated'],
    'carriesBearings?': booleanShape(),
  })
  const filter = namedObject('filter', {
    ...named,
    kind: ['spin-on filter', 'cartridge filter', 'strainer'],
    held: taggedUnion([
      kind('screwed', { 'thread?': text.text, drive: leaf.drive, tightening: leaf.tightening }),
      kind('behind opening', { opening: text.id }),
      kind('behind cover', { cover: text.id }),
    ]),
    seals: list(leaf.seal),
    ...makePartNumberFields(),
    change: ['every change', 'clean every change', 'not stated'],
    place: leaf.place,
  })
  const shield = namedObject('shield', {
    ...named,
    fasteners: fasteners,
    place: leaf.place,
    'guards?': ['moving parts', 'the underside', 'not stated'],
    'reachedThrough?': booleanShape(),
  })

  const fill = object({
    drainAndRefill: values.volume.spec,
    'dryFill?': values.volume.spec,
    'per?': ['instance', 'all instances'],
    method: taggedUnion([
      kind('by quantity', { opening: text.id }),
      kind('to level hole', { opening: text.id, 'below?': values.length.spec }),
      kind('dipstick', { opening: text.id, reading: DIPSTICK_READINGS }),
      kind('sight glass', { opening: text.id }),
      values.notStated,
    ]),
    'level?': {
      attitude: ATTITUDES,
      'temperature?': values.temperature.spec,
      'minutesAfterStop?': values.minutes.spec,
      engine: [...ENGINE_STATES, 'not stated'],
      recheckAfterRun: booleanShape(),
    },
  })
  const gearcase = namedObject('gearcase', {
    name: text.text,
    type: ['differential', 'final drive', 'transfer case', 'hub reduction', 'bevel box', 'gearbox'],
    'appliesTo?': leaf.condition,
    'instances?': recordById({ name: text.text }),
    'axle?': text.id,
    access: taggedUnion([
      kind('from the ground', {}),
      kind('raised', { supports: nonEmptyList(text.id) }),
      values.notStated,
    ]),
    oilSpace: taggedUnion([
      kind('own', { oils: leaf.oils, fill, 'passageTo?': list(text.id) }),
      kind('shared', { with: text.id, 'portion?': values.volume.spec }),
    ]),
    openings: recordById(opening),
    'covers?': recordById(cover),
    'filters?': recordById(filter),
    emptying: list(
      taggedUnion([
        kind('drain plug', { opening: text.id, 'also?': nonEmptyList(text.id) }),
        kind('cover', { cover: text.id }),
        kind('suction', { opening: text.id }),
      ]),
    ),
    'breather?': { place: leaf.place, 'position?': leaf.position },
    'shields?': list(text.id),
    'drainTemperature?': values.temperature.spec,
    'workingTemperature?': values.temperature.spec,
    'yellowMetal?': ['yes', 'no', 'not stated'],
  })
  return { gearcase, shield }
})
