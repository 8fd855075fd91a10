import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import { DRIVE_KINDS } from '../../spec/index.js'
import { boolean, buildOnce, filledList, holding, kind, list, object, oneOf, whole } from './makeShape.js'
import { sealShape } from './sealShape.js'
import { choice, described, named, part, textShapes } from './textShapes.js'
import { objectsWith, valueShapes } from './valueShapes.js'

/** The leaves and their parts. */
export const leafShapes = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const values = valueShapes()
  const { notStated } = values
  const cited = { 'source?': values.sourceRef }

  const threadCondition = named(
    'thread-condition',
    oneOf(['dry', 'oiled', 'sealant', 'anti-seize', 'threadlocker', 'as supplied', 'not stated']),
  )
  const tightening = choice('tightening', [
    kind('torque', {
      torque: values.torque.stated,
      'stages?': list(values.torque.stated),
      'thenAngle?': values.degrees.stated,
      threadCondition,
      ...cited,
    }),
    kind('turns', {
      min: text.figure,
      'max?': text.figure,
      'maxTorque?': values.torque.stated,
      threadCondition,
      ...cited,
    }),
    kind('not stated', { threadCondition, ...cited }),
  ])

  const additive = object({
    name: text.text,
    volume: values.volume.spec,
    includedInRefill: boolean(),
    'order?': ['additive first', 'oil first', 'not stated'],
  })
  const anyOil = {
    'ambient?': values.temperature.stated,
    limitedSlip: ['required', 'not permitted', 'either', 'not stated'] as const,
    'additive?': additive,
  }
  const oilChoice = choice('oil-choice', [
    kind('grade', {
      grade: text.text,
      system: ['SAE J306', 'SAE J300', 'ISO VG'],
      'edition?': text.text,
      'category?': text.text,
      ...anyOil,
    }),
    kind('maker fluid', { name: text.text, ...anyOil }),
  ])
  const oils = choice('oils', [kind('oils', { choices: filledList(oilChoice), ...cited }), notStated])

  const unit = oneOf(UNITS_BY_MEASURE.distance)
  const intervalOf = (id: string, figure: typeof text.figure, period: typeof text.period) => {
    const stated = described(
      { anyOf: objectsWith('hours', 'distance', 'period') },
      kind(
        'interval',
        {
          'hours?': figure,
          'distance?': {
            value: figure,
            unit,
            'printed?': list({ value: text.intervalFigure, unit }),
          },
          'period?': period,
          ...cited,
        },
        [
          holding<{ hours?: string; distance?: object; period?: string }>(
            ({ hours, distance, period }) => (hours ?? distance ?? period) !== undefined,
            'spec/interval-empty',
          ),
        ],
      ),
    )
    return choice(id, [stated, notStated])
  }
  const interval = intervalOf('interval', text.limitFigure, text.limitPeriod)
  /** A window may be zero. */
  const window = intervalOf('window', text.intervalFigure, text.period)

  const drive = choice('drive', [object({ kind: DRIVE_KINDS, 'size?': text.text, ...cited }), notStated])

  const place = choice('place', [kind('place', { text: text.text, ...cited }), notStated])

  const condition = part('condition', {
    'variants?': list(text.id),
    'modelYears?': { 'from?': whole(), 'to?': whole() },
    'serials?': { 'prefix?': text.text, 'from?': text.text, 'to?': text.text },
    'market?': list(text.text),
  })

  return { values, tightening, oils, interval, window, place, drive, seal: sealShape(), condition }
})
