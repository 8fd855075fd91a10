import { WHEEL_MARKS } from '../../spec/index.js'
import { leafShapes } from './leafShapes.js'
import { boolean, buildOnce, byTag, count, filledList, kind, list, object, orWord } from './makeShape.js'
import { numberedPart } from './sealShape.js'
import { map, part, textShapes } from './textShapes.js'

/** Gearcases with their openings and covers, and the shields in front of them. */
export const gearcaseShapes = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const leaf = leafShapes()
  const { values } = leaf
  const named = { name: text.text, 'appliesTo?': leaf.condition }
  const fasteners = {
    count: orWord(count(1), 'not stated'),
    'thread?': text.text,
    'propertyClass?': text.text,
    drive: leaf.drive,
    tightening: leaf.tightening,
  }
  const opening = part('opening', {
    ...named,
    uses: filledList({ role: ['fill', 'drain', 'level'], 'wheelMark?': WHEEL_MARKS }),
    'thread?': text.text,
    'housing?': ['steel', 'cast iron', 'aluminium', 'not stated'],
    drive: leaf.drive,
    tightening: leaf.tightening,
    seals: list(leaf.seal),
    'magnet?': boolean(),
    place: leaf.place,
  })
  const cover = part('cover', {
    ...named,
    bolts: {
      ...fasteners,
      pattern: ['crosswise', 'from the middle outwards', 'in turn', 'not stated'],
    },
    seal: leaf.seal,
    'magnet?': boolean(),
    place: leaf.place,
    'position?': ['upright', 'bottom', 'not stated'],
    'carriesBearings?': boolean(),
  })
  const filter = part('filter', {
    ...named,
    kind: ['spin-on filter', 'cartridge filter', 'strainer'],
    held: byTag([
      kind('screwed', { 'thread?': text.text, drive: leaf.drive, tightening: leaf.tightening }),
      kind('behind opening', { opening: text.id }),
      kind('behind cover', { cover: text.id }),
    ]),
    seals: list(leaf.seal),
    ...numberedPart(),
    change: ['every change', 'clean every change', 'not stated'],
    place: leaf.place,
  })
  const shield = part('shield', {
    ...named,
    fasteners: fasteners,
    place: leaf.place,
    'guards?': ['moving parts', 'the underside', 'not stated'],
    'reachedThrough?': boolean(),
  })

  const fill = object({
    drainAndRefill: values.volume.spec,
    'dryFill?': values.volume.spec,
    'per?': ['instance', 'all instances'],
    method: byTag([
      kind('by quantity', { opening: text.id }),
      kind('to level hole', { opening: text.id, 'below?': values.length.spec }),
      kind('dipstick', { opening: text.id, reading: ['screwed in', 'resting'] }),
      kind('sight glass', { opening: text.id }),
      values.notStated,
    ]),
    'level?': {
      attitude: ['level on its wheels', 'level on stands', 'not stated'],
      'temperature?': values.temperature.spec,
      'minutesAfterStop?': values.minutes.spec,
      engine: ['stopped', 'running', 'not stated'],
      recheckAfterRun: boolean(),
    },
  })
  const gearcase = part('gearcase', {
    name: text.text,
    type: ['differential', 'final drive', 'transfer case', 'hub reduction', 'bevel box', 'gearbox'],
    'appliesTo?': leaf.condition,
    'instances?': map({ name: text.text }),
    'axle?': text.id,
    access: byTag([
      kind('from the ground', {}),
      kind('raised', { supports: filledList(text.id) }),
      values.notStated,
    ]),
    oilSpace: byTag([
      kind('own', { oils: leaf.oils, fill, 'passageTo?': list(text.id) }),
      kind('shared', { with: text.id, 'portion?': values.volume.spec }),
    ]),
    openings: map(opening),
    'covers?': map(cover),
    'filters?': map(filter),
    emptying: list(
      byTag([
        kind('drain plug', { opening: text.id, 'also?': filledList(text.id) }),
        kind('cover', { cover: text.id }),
        kind('suction', { opening: text.id }),
      ]),
    ),
    'breather?': { place: leaf.place },
    'shields?': list(text.id),
    'drainTemperature?': values.temperature.spec,
    'workingTemperature?': values.temperature.spec,
    'yellowMetal?': ['yes', 'no', 'not stated'],
  })
  return { gearcase, shield }
})
