import * as z from 'zod/v4/core'
import { gearcaseShapes } from './gearcaseShapes.js'
import { leafShapes } from './leafShapes.js'
import { buildOnce, byTag, count, filledList, kind, list, object, oneOf, optional } from './makeShape.js'
import { ABOVE_ZERO_PATTERN, described, document, map, named, textShapes } from './textShapes.js'

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
  const text = textShapes()
  const leaf = leafShapes()
  const { gearcase, shield } = gearcaseShapes()
  const source = optional(leaf.values.sourceRef)
  const intervals = object({
    first: optional(leaf.interval),
    repeat: leaf.interval,
    severe: optional(
      byTag([
        kind('interval', { interval: leaf.interval, criteria: text.text }),
        kind('factor', { factor: text.figure, criteria: text.text, source }),
      ]),
    ),
    countFrom: oneOf(['completion', 'schedule inside window', 'schedule']),
    window: optional(leaf.window),
  })
  const service = named(
    'service',
    object({
      name: text.text,
      task: oneOf(['check', 'change']),
      appliesTo: optional(leaf.condition),
      satisfies: optional(list(text.id)),
      gearcases: filledList(text.id),
      intervals,
      events: optional(list(oneOf(MACHINE_EVENT_KINDS))),
      notes: optional(map(text.text)),
    }),
  )
  // Of an interval that is put in another's place, the path says whether it may be zero.
  const overrideInterval = described(
    {
      anyOf: [
        {
          type: 'object',
          properties: {
            path: { type: 'string', pattern: WINDOW_PATTERN.source, not: { pattern: '[^a-z]$' } },
          },
        },
        { type: 'object', properties: { to: { $ref: '#/$defs/interval' } } },
      ],
    },
    kind('interval', { path: text.pointer, to: leaf.window }, [
      z._check<{ path: string; to: z.output<typeof leaf.window> }>(({ value: { path, to }, issues }) => {
        if (to.kind !== 'interval' || WINDOW_PATTERN.test(path)) return
        const { hours, distance, period } = to
        for (const [by, input] of Object.entries({ hours, distance: distance?.value, period }))
          if (input !== undefined && !ABOVE_ZERO_PATTERN.test(input))
            issues.push({ code: 'custom', message: 'interval/limit-not-above-zero', path: ['to', by], input })
      }),
    ]),
  )
  const overrideLeaf = named(
    'override-leaf',
    byTag([
      kind('value', { path: text.pointer, to: leaf.values.anyMeasure }),
      kind('tightening', { path: text.pointer, to: leaf.tightening }),
      kind('oils', { path: text.pointer, to: leaf.oils }),
      kind('seal', { path: text.pointer, to: leaf.seal }),
      overrideInterval,
      kind('place', { path: text.pointer, to: leaf.place }),
    ]),
  )
  return document('spec-sheet', {
    revision: text.text,
    header: optional(text.text),
    machine: object({
      make: text.text,
      model: text.text,
      type: text.text,
      mass: optional(leaf.values.mass.spec),
      variants: map(object({ name: text.text, when: optional(leaf.condition) })),
      axles: map(object({ name: text.text, wheels: count(1) })),
      supports: map(object({ at: text.text, axle: optional(text.id) })),
    }),
    sources: map(
      object({
        title: text.text,
        document: oneOf([
          'owner manual',
          'workshop manual',
          'service bulletin',
          'parts list',
          'plate',
          'other',
        ]),
        edition: optional(text.text),
        date: optional(text.date),
      }),
    ),
    gearcases: map(gearcase),
    shields: optional(map(shield)),
    services: map(service),
    overrides: optional(list(object({ when: leaf.condition, set: filledList(overrideLeaf), source }))),
    waivers: optional(list(object({ code: text.text, path: text.pointer, reason: text.text }))),
  })
})
