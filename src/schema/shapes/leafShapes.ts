import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import { ACROSS_FACE, CASE_FACES, DRIVE_KINDS, FACE_HEIGHTS } from '../../spec/index.js'
import {
  booleanShape,
  buildOnce,
  kind,
  list,
  meetsCheck,
  nonEmptyList,
  object,
  oneOf,
  wholeNumber,
} from './makeShape.js'
import { sealShape } from './sealShape.js'
import { namedObject, namedUnion, textShapes, withKeywords, withSchemaId } from './textShapes.js'
import { objectsWithKey, valueShapes } from './valueShapes.js'
import { LIMITED_SLIP, THREAD_CONDITIONS } from './wordLists.js'

/** The leaves and their parts. */
export const leafShapes = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const values = valueShapes()
  const { notStated } = values
  const sourceField = { 'source?': values.sourceRef }

  const threadCondition = withSchemaId('thread-condition', oneOf([...THREAD_CONDITIONS, 'not stated']))
  const tightening = namedUnion('tightening', [
    kind('torque', {
      torque: values.torque.stated,
      'stages?': list(values.torque.stated),
      'thenAngle?': values.degrees.stated,
      threadCondition,
      ...sourceField,
    }),
    kind('turns', {
      min: text.figure,
      'max?': text.figure,
      'maxTorque?': values.torque.stated,
      threadCondition,
      ...sourceField,
    }),
    kind('not stated', { threadCondition, ...sourceField }),
  ])

  const additive = object({
    name: text.text,
    volume: values.volume.spec,
    includedInRefill: booleanShape(),
    'order?': ['additive first', 'oil first', 'not stated'],
  })
  const oilFields = {
    'ambient?': values.temperature.stated,
    limitedSlip: [...LIMITED_SLIP, 'not stated'] as const,
    'additive?': additive,
  }
  const oilChoice = namedUnion('oil-choice', [
    kind('grade', {
      grade: text.text,
      system: ['SAE J306', 'SAE J300', 'ISO VG'],
      'edition?': text.text,
      'category?': text.text,
      ...oilFields,
    }),
    kind('maker fluid', { name: text.text, ...oilFields }),
  ])
  const oils = namedUnion('oils', [
    kind('oils', { choices: nonEmptyList(oilChoice), ...sourceField }),
    notStated,
  ])

  const unit = oneOf(UNITS_BY_MEASURE.distance)
  const makeIntervalShape = (id: string, figure: typeof text.figure, period: typeof text.period) => {
    const stated = withKeywords(
      { anyOf: objectsWithKey('hours', 'distance', 'period') },
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
          ...sourceField,
        },
        [
          meetsCheck<{ hours?: string; distance?: object; period?: string }>(
            ({ hours, distance, period }) => (hours ?? distance ?? period) !== undefined,
            'spec/interval-empty',
          ),
        ],
      ),
    )
    return namedUnion(id, [stated, notStated])
  }
  const interval = makeIntervalShape('interval', text.limitFigure, text.limitPeriod)
  /** A window may be zero. */
  const window = makeIntervalShape('window', text.intervalFigure, text.period)

  const drive = namedUnion('drive', [
    object({ kind: DRIVE_KINDS, 'size?': text.text, ...sourceField }),
    notStated,
  ])

  const place = namedUnion('place', [kind('place', { text: text.text, ...sourceField }), notStated])

  const position = namedUnion('position', [
    kind('position', {
      face: CASE_FACES,
      'across?': ACROSS_FACE,
      'height?': FACE_HEIGHTS,
      'offset?': values.length.stated,
      ...sourceField,
    }),
    notStated,
  ])

  const condition = namedObject('condition', {
    'variants?': list(text.id),
    'modelYears?': { 'from?': wholeNumber(), 'to?': wholeNumber() },
    'serials?': { 'prefix?': text.text, 'from?': text.text, 'to?': text.text },
    'market?': list(text.text),
  })

  return { values, tightening, oils, interval, window, place, position, drive, seal: sealShape(), condition }
})
