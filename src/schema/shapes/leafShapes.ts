import * as z from 'zod/mini'
import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import { buildOnce } from './buildOnce.js'
import { sealShape } from './sealShape.js'
import { partRegistry, textShapes } from './textShapes.js'
import { requireOneOf, valueShapes } from './valueShapes.js'

/** The leaves that an override replaces whole, and what they are made of. */
export const leafShapes = /* @__PURE__ */ buildOnce(() => {
  const parts = partRegistry()
  const text = textShapes()
  const values = valueShapes()
  const { notStated } = values
  const source = z.exactOptional(values.sourceRef)

  const threadCondition = z
    .enum(['dry', 'oiled', 'sealant', 'anti-seize', 'threadlocker', 'as supplied', 'not stated'])
    .register(parts, { id: 'thread-condition' })
  const tightening = z
    .discriminatedUnion('kind', [
      z.strictObject({
        kind: z.literal('torque'),
        torque: values.torque.stated,
        stages: z.exactOptional(z.array(values.torque.stated)),
        thenAngle: z.exactOptional(values.degrees.stated),
        threadCondition,
        source,
      }),
      z.strictObject({
        kind: z.literal('turns'),
        min: text.figure,
        max: z.exactOptional(text.figure),
        maxTorque: z.exactOptional(values.torque.stated),
        threadCondition,
        source,
      }),
      z.strictObject({ kind: z.literal('not stated'), threadCondition, source }),
    ])
    .register(parts, { id: 'tightening' })

  const additive = z.strictObject({
    name: text.text,
    volume: values.volume.spec,
    includedInRefill: z.boolean(),
  })
  const anyOil = {
    ambient: z.exactOptional(values.temperature.stated),
    limitedSlip: z.enum(['required', 'not permitted', 'either', 'not stated']),
    additive: z.exactOptional(additive),
  }
  const oilChoice = z
    .discriminatedUnion('kind', [
      z.strictObject({
        kind: z.literal('grade'),
        grade: text.text,
        system: z.enum(['SAE J306', 'SAE J300', 'ISO VG']),
        edition: z.exactOptional(text.text),
        category: z.exactOptional(text.text),
        ...anyOil,
      }),
      z.strictObject({ kind: z.literal('maker fluid'), name: text.text, ...anyOil }),
    ])
    .register(parts, { id: 'oil-choice' })
  const oils = z
    .discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('oils'), choices: z.array(oilChoice).check(z.minLength(1)), source }),
      notStated,
    ])
    .register(parts, { id: 'oils' })

  const unit = z.enum(UNITS_BY_MEASURE.distance)
  const intervalOf = (id: string, figure: typeof text.figure, period: typeof text.period) => {
    const stated = z
      .strictObject({
        kind: z.literal('interval'),
        hours: z.exactOptional(figure),
        distance: z.exactOptional(
          z.strictObject({
            value: figure,
            unit,
            printed: z.exactOptional(z.array(z.strictObject({ value: text.intervalFigure, unit }))),
          }),
        ),
        period: z.exactOptional(period),
        source,
      })
      .check(
        z.refine((one) => (one.hours ?? one.distance ?? one.period) !== undefined, {
          error: 'spec/interval-empty',
        }),
      )
      .register(parts, { anyOf: requireOneOf('hours', 'distance', 'period') })
    return z.discriminatedUnion('kind', [stated, notStated]).register(parts, { id })
  }
  const interval = intervalOf('interval', text.limitFigure, text.limitPeriod)
  /** A window may be zero. */
  const window = intervalOf('window', text.intervalFigure, text.period)

  const place = z
    .discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('place'), text: text.text, source }),
      notStated,
    ])
    .register(parts, { id: 'place' })

  const condition = z
    .strictObject({
      variants: z.exactOptional(z.array(text.id)),
      modelYears: z.exactOptional(
        z.strictObject({ from: z.exactOptional(z.int()), to: z.exactOptional(z.int()) }),
      ),
      serials: z.exactOptional(
        z.strictObject({
          prefix: z.exactOptional(text.text),
          from: z.exactOptional(text.text),
          to: z.exactOptional(text.text),
        }),
      ),
      market: z.exactOptional(z.array(text.text)),
    })
    .register(parts, { id: 'condition' })

  return { values, tightening, oils, interval, window, place, seal: sealShape(), condition }
})
