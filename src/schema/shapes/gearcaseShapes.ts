import { leafShapes } from './leafShapes.js'
import {
  boolean,
  buildOnce,
  byTag,
  count,
  filledList,
  kind,
  list,
  object,
  oneOf,
  optional,
} from './makeShape.js'
import { map, named, textShapes } from './textShapes.js'

export const DRIVE_KINDS = [
  'external hex',
  'internal hex',
  'internal square',
  'external square',
  'six-lobe',
  'slot',
  'hand',
] as const
export const WHEEL_MARKS = ['mark down', 'mark level', 'mark up'] as const

/** Gearcases with their openings and covers, and the shields before them. */
export const gearcaseShapes = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const leaf = leafShapes()
  const { values } = leaf
  const appliesTo = optional(leaf.condition)
  const drive = named('drive', object({ kind: oneOf(DRIVE_KINDS), size: optional(text.text) }))
  const fasteners = {
    count: count(1),
    thread: optional(text.text),
    propertyClass: optional(text.text),
    drive,
    tightening: leaf.tightening,
  }
  const opening = named(
    'opening',
    object({
      name: text.text,
      appliesTo,
      uses: filledList(
        object({
          role: oneOf(['fill', 'drain', 'level']),
          wheelMark: optional(oneOf(WHEEL_MARKS)),
        }),
      ),
      thread: optional(text.text),
      housing: optional(oneOf(['steel', 'cast iron', 'aluminium', 'not stated'])),
      drive,
      tightening: leaf.tightening,
      seals: list(leaf.seal),
      magnet: optional(boolean()),
      place: leaf.place,
    }),
  )
  const cover = named(
    'cover',
    object({
      name: text.text,
      appliesTo,
      bolts: object({
        ...fasteners,
        pattern: oneOf(['crosswise', 'from the middle outwards', 'in turn', 'not stated']),
      }),
      seal: leaf.seal,
      magnet: optional(boolean()),
      place: leaf.place,
    }),
  )
  const shield = named(
    'shield',
    object({
      name: text.text,
      appliesTo,
      fasteners: object(fasteners),
      place: leaf.place,
    }),
  )

  const fill = object({
    drainAndRefill: values.volume.spec,
    dryFill: optional(values.volume.spec),
    per: optional(oneOf(['instance', 'all instances'])),
    method: byTag([
      kind('by quantity', { opening: text.id }),
      kind('to level hole', {
        opening: text.id,
        below: optional(values.length.spec),
      }),
      kind('dipstick', {
        opening: text.id,
        reading: oneOf(['screwed in', 'resting']),
      }),
      kind('sight glass', { opening: text.id }),
    ]),
    level: optional(
      object({
        attitude: oneOf(['level on its wheels', 'level on stands', 'not stated']),
        temperature: optional(values.temperature.spec),
        minutesAfterStop: optional(values.minutes.spec),
        engine: oneOf(['stopped', 'running', 'not stated']),
        recheckAfterRun: boolean(),
      }),
    ),
  })
  const gearcase = named(
    'gearcase',
    object({
      name: text.text,
      type: oneOf(['differential', 'final drive', 'transfer case', 'hub reduction', 'bevel box', 'gearbox']),
      appliesTo,
      instances: optional(map(object({ name: text.text }))),
      axle: optional(text.id),
      access: byTag([kind('from the ground', {}), kind('raised', { supports: filledList(text.id) })]),
      oilSpace: byTag([
        kind('own', {
          oils: leaf.oils,
          fill,
          passageTo: optional(list(text.id)),
        }),
        kind('shared', {
          with: text.id,
          portion: optional(values.volume.spec),
        }),
      ]),
      openings: map(opening),
      covers: optional(map(cover)),
      emptying: list(
        byTag([
          kind('drain plug', { opening: text.id }),
          kind('cover', { cover: text.id }),
          kind('suction', { opening: text.id }),
        ]),
      ),
      breather: optional(object({ place: leaf.place })),
      shields: optional(list(text.id)),
      drainTemperature: optional(values.temperature.spec),
      yellowMetal: optional(oneOf(['yes', 'no', 'not stated'])),
    }),
  )
  return { gearcase, shield }
})
