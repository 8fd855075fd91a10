import { type Measure, UNITS_BY_MEASURE, type Unit } from '../../quantity/index.js'
import { buildOnce, type Fields, kind, list, meetsCheck, oneOf, taggedUnion } from './makeShape.js'
import { namedObject, namedUnion, textShapes, withKeywords, withSchemaId } from './textShapes.js'

/** For schema readers: objects with at least one of the keys, one alternative for each key. */
export const objectsWithKey = (...keys: readonly string[]) =>
  keys.map((key) => ({ type: 'object', properties: { [key]: {} }, required: [key] }))

/** Sources, and printed values in any list of units. */
export const valueShapes = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const sourceRef = namedObject('source-ref', {
    ref: text.id,
    'page?': text.text,
    confidence: ['read', 'second hand', 'doubtful'],
  })
  const notStated = withSchemaId('not-stated', kind('not stated', { 'source?': sourceRef }))

  /** The three forms of a printed value, with extra fields. */
  const makeAlternatives = <Unit extends string, ExtraFields extends Fields>(
    unit: ReturnType<typeof oneOf<Unit>>,
    figure: typeof text.figure,
    extraFields: ExtraFields,
  ) => {
    const commonFields = { unit, 'asPrinted?': text.text, ...extraFields }
    const limits = kind('limits', { 'min?': figure, 'max?': figure, ...commonFields }, [
      // Limits without both ends include every value.
      meetsCheck<{ min?: string; max?: string }>(
        ({ min, max }) => (min ?? max) !== undefined,
        'spec/limits-empty',
      ),
    ])
    return [
      kind('nominal', { value: figure, ...commonFields }),
      kind('nominal with tolerance', {
        value: figure,
        minus: text.figure,
        plus: text.figure,
        ...commonFields,
      }),
      withKeywords({ anyOf: objectsWithKey('min', 'max') }, limits),
    ] as const
  }

  /** A stated value, and a value that may also be `not stated`. */
  const makeValueShapes = <const Units extends readonly string[]>(
    name: string,
    units: Units,
    figure = text.figure,
  ) => {
    const unit = oneOf<Units[number]>(units)
    const printed = namedUnion(`printed-${name}`, makeAlternatives(unit, figure, {}))
    const arms = makeAlternatives(unit, figure, { 'printed?': list(printed), 'source?': sourceRef })
    return {
      arms,
      stated: namedUnion(`stated-${name}`, arms),
      spec: namedUnion(`spec-${name}`, [...arms, notStated]),
    }
  }

  /**
   * A value of any measure, for an override. A rule checks that it matches its leaf. Only a temperature may
   * be negative.
   */
  const makeAnyValueShape = () => {
    const { temperature, ...others } = UNITS_BY_MEASURE
    // Both have the type of all units, as in the interface.
    const { arms: degrees } = makeValueShapes<readonly Unit[]>(
      'any-temperature',
      temperature,
      text.signedFigure,
    )
    const { arms: amounts } = makeValueShapes<readonly Unit[]>('any-amount', Object.values(others).flat())
    return namedUnion('spec-any', [
      taggedUnion([degrees[0], amounts[0]], 'unit'),
      taggedUnion([degrees[1], amounts[1]], 'unit'),
      taggedUnion([degrees[2], amounts[2]], 'unit'),
      notStated,
    ])
  }

  const makeShapesForMeasure = <const M extends Measure>(measure: M) =>
    makeValueShapes(measure, UNITS_BY_MEASURE[measure])
  return {
    sourceRef,
    notStated,
    torque: makeShapesForMeasure('torque'),
    volume: makeShapesForMeasure('volume'),
    mass: makeShapesForMeasure('mass'),
    length: makeShapesForMeasure('length'),
    temperature: makeValueShapes('temperature', UNITS_BY_MEASURE.temperature, text.signedFigure),
    millimetres: makeValueShapes('mm', ['mm']),
    degrees: makeValueShapes('deg', ['deg']),
    minutes: makeValueShapes('min', ['min']),
    hoursOrMinutes: makeValueShapes('h-or-min', ['h', 'min']),
    anyMeasure: makeAnyValueShape(),
  }
})
