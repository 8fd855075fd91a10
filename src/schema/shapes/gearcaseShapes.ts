import * as z from 'zod/mini'
import { buildOnce } from './buildOnce.js'
import { leafShapes } from './leafShapes.js'
import { count } from './numberShapes.js'
import { partRegistry, textShapes } from './textShapes.js'

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
  const parts = partRegistry()
  const text = textShapes()
  const leaf = leafShapes()
  const { values } = leaf
  const appliesTo = z.exactOptional(leaf.condition)
  const drive = z
    .strictObject({ kind: z.enum(DRIVE_KINDS), size: z.exactOptional(text.text) })
    .register(parts, { id: 'drive' })
  const fasteners = {
    count: count(1),
    thread: z.exactOptional(text.text),
    propertyClass: z.exactOptional(text.text),
    drive,
    tightening: leaf.tightening,
  }
  const opening = z
    .strictObject({
      name: text.text,
      appliesTo,
      uses: z
        .array(
          z.strictObject({
            role: z.enum(['fill', 'drain', 'level']),
            wheelMark: z.exactOptional(z.enum(WHEEL_MARKS)),
          }),
        )
        .check(z.minLength(1)),
      thread: z.exactOptional(text.text),
      housing: z.exactOptional(z.enum(['steel', 'cast iron', 'aluminium', 'not stated'])),
      drive,
      tightening: leaf.tightening,
      seals: z.array(leaf.seal),
      magnet: z.exactOptional(z.boolean()),
      place: leaf.place,
    })
    .register(parts, { id: 'opening' })
  const cover = z
    .strictObject({
      name: text.text,
      appliesTo,
      bolts: z.strictObject({
        ...fasteners,
        pattern: z.enum(['crosswise', 'from the middle outwards', 'in turn', 'not stated']),
      }),
      seal: leaf.seal,
      magnet: z.exactOptional(z.boolean()),
      place: leaf.place,
    })
    .register(parts, { id: 'cover' })
  const shield = z
    .strictObject({
      name: text.text,
      appliesTo,
      fasteners: z.strictObject(fasteners),
      place: leaf.place,
    })
    .register(parts, { id: 'shield' })

  const fill = z.strictObject({
    drainAndRefill: values.volume.spec,
    dryFill: z.exactOptional(values.volume.spec),
    per: z.exactOptional(z.enum(['instance', 'all instances'])),
    method: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('by quantity'), opening: text.id }),
      z.strictObject({
        kind: z.literal('to level hole'),
        opening: text.id,
        below: z.exactOptional(values.length.spec),
      }),
      z.strictObject({
        kind: z.literal('dipstick'),
        opening: text.id,
        reading: z.enum(['screwed in', 'resting']),
      }),
      z.strictObject({ kind: z.literal('sight glass'), opening: text.id }),
    ]),
    level: z.exactOptional(
      z.strictObject({
        attitude: z.enum(['level on its wheels', 'level on stands', 'not stated']),
        temperature: z.exactOptional(values.temperature.spec),
        minutesAfterStop: z.exactOptional(values.minutes.spec),
        engine: z.enum(['stopped', 'running', 'not stated']),
        recheckAfterRun: z.boolean(),
      }),
    ),
  })
  const gearcase = z
    .strictObject({
      name: text.text,
      type: z.enum(['differential', 'final drive', 'transfer case', 'hub reduction', 'bevel box', 'gearbox']),
      appliesTo,
      instances: z.exactOptional(z.record(text.id, z.strictObject({ name: text.text }))),
      axle: z.exactOptional(text.id),
      access: z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('from the ground') }),
        z.strictObject({ kind: z.literal('raised'), supports: z.array(text.id).check(z.minLength(1)) }),
      ]),
      oilSpace: z.discriminatedUnion('kind', [
        z.strictObject({
          kind: z.literal('own'),
          oils: leaf.oils,
          fill,
          passageTo: z.exactOptional(z.array(text.id)),
        }),
        z.strictObject({
          kind: z.literal('shared'),
          with: text.id,
          portion: z.exactOptional(values.volume.spec),
        }),
      ]),
      openings: z.record(text.id, opening),
      covers: z.exactOptional(z.record(text.id, cover)),
      emptying: z.array(
        z.discriminatedUnion('kind', [
          z.strictObject({ kind: z.literal('drain plug'), opening: text.id }),
          z.strictObject({ kind: z.literal('cover'), cover: text.id }),
          z.strictObject({ kind: z.literal('suction'), opening: text.id }),
        ]),
      ),
      breather: z.exactOptional(z.strictObject({ place: leaf.place })),
      shields: z.exactOptional(z.array(text.id)),
      drainTemperature: z.exactOptional(values.temperature.spec),
      yellowMetal: z.exactOptional(z.enum(['yes', 'no', 'not stated'])),
    })
    .register(parts, { id: 'gearcase' })
  return { gearcase, shield }
})
