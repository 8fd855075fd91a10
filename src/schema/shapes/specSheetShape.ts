import * as z from 'zod/v4/core'
import { MACHINE_EVENT_KINDS, WARRANTY_FACTS } from '../../spec/index.js'
import { gearcaseShapes } from './gearcaseShapes.js'
import { leafShapes } from './leafShapes.js'
import { booleanShape, buildOnce, count, kind, list, nonEmptyList, object, taggedUnion } from './makeShape.js'
import {
  ABOVE_ZERO_PATTERN,
  documentShape,
  namedObject,
  namedUnion,
  recordById,
  textShapes,
  withKeywords,
} from './textShapes.js'
import { DOCUMENT_KINDS } from './wordLists.js'

const WINDOW_PATTERN = /\/window$/

/** The manual's figures for one machine model. */
export const specSheetShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const leaf = leafShapes()
  const { gearcase, shield } = gearcaseShapes()
  const sourceField = { 'source?': leaf.values.sourceRef }
  const intervals = object({
    'first?': leaf.interval,
    repeat: leaf.interval,
    'severe?': taggedUnion([
      kind('interval', { interval: leaf.interval, criteria: text.text }),
      kind('factor', { factor: text.figure, criteria: text.text, ...sourceField }),
    ]),
    countFrom: ['completion', 'schedule inside window', 'schedule'],
    'window?': leaf.window,
  })
  const service = namedObject('service', {
    name: text.text,
    task: ['check', 'change'],
    'appliesTo?': leaf.condition,
    'satisfies?': list(text.id),
    gearcases: nonEmptyList(text.id),
    intervals,
    'events?': list(MACHINE_EVENT_KINDS),
    'supplies?': list(text.text),
    'samples?': list(text.id),
    'notes?': recordById(text.text),
  })
  // Whether an overriding interval may be zero depends on its path.
  const overrideInterval = withKeywords(
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
  const overrideLeaf = namedUnion('override-leaf', [
    kind('value', { path: text.pointer, to: leaf.values.anyMeasure }),
    kind('tightening', { path: text.pointer, to: leaf.tightening }),
    kind('oils', { path: text.pointer, to: leaf.oils }),
    kind('seal', { path: text.pointer, to: leaf.seal }),
    overrideInterval,
    kind('place', { path: text.pointer, to: leaf.place }),
    kind('position', { path: text.pointer, to: leaf.position }),
    kind('drive', { path: text.pointer, to: leaf.drive }),
  ])
  return documentShape('spec-sheet', {
    revision: text.text,
    'header?': text.text,
    machine: {
      make: text.text,
      model: text.text,
      type: text.text,
      'mass?': leaf.values.mass.spec,
      variants: recordById({ name: text.text, 'when?': leaf.condition }),
      axles: recordById({ name: text.text, wheels: count(1), 'ramps?': booleanShape() }),
      supports: recordById({ at: text.text, 'jack?': text.text, 'axle?': text.id }),
      'secure?': list({ item: text.text, how: text.text, when: ['before work', 'before a run'] }),
    },
    sources: recordById({
      title: text.text,
      document: DOCUMENT_KINDS,
      'edition?': text.text,
      'date?': text.date,
    }),
    gearcases: recordById(gearcase),
    'shields?': recordById(shield),
    services: recordById(service),
    'warranty?': namedObject('warranty-terms', { asks: nonEmptyList(WARRANTY_FACTS), ...sourceField }),
    'overrides?': list({ when: leaf.condition, set: nonEmptyList(overrideLeaf), ...sourceField }),
    'waivers?': list({ code: text.text, path: text.pointer, reason: text.text }),
  })
})
