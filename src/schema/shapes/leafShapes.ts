import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import {
  boolean,
  buildOnce,
  byTag,
  filledList,
  holding,
  kind,
  list,
  object,
  oneOf,
  optional,
  whole,
} from './makeShape.js'
import { sealShape } from './sealShape.js'
import { described, named, textShapes } from './textShapes.js'
import { requireOneOf, valueShapes } from './valueShapes.js'

/** The leaves that an override replaces whole, and what they are made of. */
export const leafShapes = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const values = valueShapes()
  const { notStated } = values
  const source = optional(values.sourceRef)

  const threadCondition = named(
    'thread-condition',
    oneOf(['dry', 'oiled', 'sealant', 'anti-seize', 'threadlocker', 'as supplied', 'not stated']),
  )
  const tightening = named(
    'tightening',
    byTag([
      kind('torque', {
        torque: values.torque.stated,
        stages: optional(list(values.torque.stated)),
        thenAngle: optional(values.degrees.stated),
        threadCondition,
        source,
      }),
      kind('turns', {
        min: text.figure,
        max: optional(text.figure),
        maxTorque: optional(values.torque.stated),
        threadCondition,
        source,
      }),
      kind('not stated', { threadCondition, source }),
    ]),
  )

  const additive = object({
    name: text.text,
    volume: values.volume.spec,
    includedInRefill: boolean(),
  })
  const anyOil = {
    ambient: optional(values.temperature.stated),
    limitedSlip: oneOf(['required', 'not permitted', 'either', 'not stated']),
    additive: optional(additive),
  }
  const oilChoice = named(
    'oil-choice',
    byTag([
      kind('grade', {
        grade: text.text,
        system: oneOf(['SAE J306', 'SAE J300', 'ISO VG']),
        edition: optional(text.text),
        category: optional(text.text),
        ...anyOil,
      }),
      kind('maker fluid', { name: text.text, ...anyOil }),
    ]),
  )
  const oils = named('oils', byTag([kind('oils', { choices: filledList(oilChoice), source }), notStated]))

  const unit = oneOf(UNITS_BY_MEASURE.distance)
  const intervalOf = (id: string, figure: typeof text.figure, period: typeof text.period) => {
    const stated = described(
      { anyOf: requireOneOf('hours', 'distance', 'period') },
      kind(
        'interval',
        {
          hours: optional(figure),
          distance: optional(
            object({
              value: figure,
              unit,
              printed: optional(list(object({ value: text.intervalFigure, unit }))),
            }),
          ),
          period: optional(period),
          source,
        },
        [
          holding<{ hours?: string; distance?: object; period?: string }>(
            ({ hours, distance, period }) => (hours ?? distance ?? period) !== undefined,
            'spec/interval-empty',
          ),
        ],
      ),
    )
    return named(id, byTag([stated, notStated]))
  }
  const interval = intervalOf('interval', text.limitFigure, text.limitPeriod)
  /** A window may be zero. */
  const window = intervalOf('window', text.intervalFigure, text.period)

  const place = named('place', byTag([kind('place', { text: text.text, source }), notStated]))

  const condition = named(
    'condition',
    object({
      variants: optional(list(text.id)),
      modelYears: optional(object({ from: optional(whole()), to: optional(whole()) })),
      serials: optional(
        object({
          prefix: optional(text.text),
          from: optional(text.text),
          to: optional(text.text),
        }),
      ),
      market: optional(list(text.text)),
    }),
  )

  return { values, tightening, oils, interval, window, place, seal: sealShape(), condition }
})
