import * as z from 'zod/mini'
import { buildOnce } from './buildOnce.js'
import { gearcaseShapes } from './gearcaseShapes.js'
import { leafShapes } from './leafShapes.js'
import { count } from './numberShapes.js'
import { ABOVE_ZERO_PATTERN, partRegistry, textShapes } from './textShapes.js'

/** Events in a machine's life that make services due. */
export const MACHINE_EVENT_KINDS = [
  'submersion',
  'rebuild',
  'storage',
  'contamination',
  'seal failure',
] as const

const WINDOW_PATTERN = /\/window$/

/** What the manual says about one machine model. */
export const specSheetShape = /* @__PURE__ */ buildOnce(() => {
  const parts = partRegistry()
  const text = textShapes()
  const leaf = leafShapes()
  const { gearcase, shield } = gearcaseShapes()
  const source = z.exactOptional(leaf.values.sourceRef)
  const intervals = z.strictObject({
    first: z.exactOptional(leaf.interval),
    repeat: leaf.interval,
    severe: z.exactOptional(
      z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('interval'), interval: leaf.interval, criteria: text.text }),
        z.strictObject({ kind: z.literal('factor'), factor: text.figure, criteria: text.text, source }),
      ]),
    ),
    countFrom: z.enum(['completion', 'schedule inside window', 'schedule']),
    window: z.exactOptional(leaf.window),
  })
  const service = z
    .strictObject({
      name: text.text,
      task: z.enum(['check', 'change']),
      appliesTo: z.exactOptional(leaf.condition),
      satisfies: z.exactOptional(z.array(text.id)),
      gearcases: z.array(text.id).check(z.minLength(1)),
      intervals,
      events: z.exactOptional(z.array(z.enum(MACHINE_EVENT_KINDS))),
      notes: z.exactOptional(z.record(text.id, text.text)),
    })
    .register(parts, { id: 'service' })
  // Of an interval that is put in another's place, the path says whether it may be zero.
  const overrideInterval = z
    .strictObject({ kind: z.literal('interval'), path: text.pointer, to: leaf.window })
    .check((read) => {
      const { path, to } = read.value
      if (to.kind !== 'interval' || WINDOW_PATTERN.test(path)) return
      const { hours, distance, period } = to
      for (const [by, limit] of Object.entries({ hours, distance: distance?.value, period }))
        if (limit !== undefined && !ABOVE_ZERO_PATTERN.test(limit))
          read.issues.push({
            code: 'custom',
            message: 'interval/limit-not-above-zero',
            path: ['to', by],
            input: limit,
          })
    })
    .register(parts, {
      anyOf: [
        {
          type: 'object',
          properties: {
            path: { type: 'string', pattern: WINDOW_PATTERN.source, not: { pattern: '[^a-z]$' } },
          },
        },
        { type: 'object', properties: { to: { $ref: '#/$defs/interval' } } },
      ],
    })
  const overrideLeaf = z
    .discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('value'), path: text.pointer, to: leaf.values.anyMeasure }),
      z.strictObject({ kind: z.literal('tightening'), path: text.pointer, to: leaf.tightening }),
      z.strictObject({ kind: z.literal('oils'), path: text.pointer, to: leaf.oils }),
      z.strictObject({ kind: z.literal('seal'), path: text.pointer, to: leaf.seal }),
      overrideInterval,
      z.strictObject({ kind: z.literal('place'), path: text.pointer, to: leaf.place }),
    ])
    .register(parts, { id: 'override-leaf' })
  return z.strictObject({
    kind: z.literal('spec-sheet'),
    version: z.literal('1.0'),
    id: text.id,
    revision: text.text,
    header: z.exactOptional(text.text),
    machine: z.strictObject({
      make: text.text,
      model: text.text,
      type: text.text,
      mass: z.exactOptional(leaf.values.mass.spec),
      variants: z.record(text.id, z.strictObject({ name: text.text, when: z.exactOptional(leaf.condition) })),
      axles: z.record(text.id, z.strictObject({ name: text.text, wheels: count(1) })),
      supports: z.record(text.id, z.strictObject({ at: text.text, axle: z.exactOptional(text.id) })),
    }),
    sources: z.record(
      text.id,
      z.strictObject({
        title: text.text,
        document: z.enum([
          'owner manual',
          'workshop manual',
          'service bulletin',
          'parts list',
          'plate',
          'other',
        ]),
        edition: z.exactOptional(text.text),
        date: z.exactOptional(text.date),
      }),
    ),
    gearcases: z.record(text.id, gearcase),
    shields: z.exactOptional(z.record(text.id, shield)),
    services: z.record(text.id, service),
    overrides: z.exactOptional(
      z.array(
        z.strictObject({ when: leaf.condition, set: z.array(overrideLeaf).check(z.minLength(1)), source }),
      ),
    ),
    waivers: z.exactOptional(
      z.array(z.strictObject({ code: text.text, path: text.pointer, reason: text.text })),
    ),
  })
})
