import { type Measure, UNITS_BY_MEASURE, type Unit } from '../../quantity/index.js'
import { buildOnce, byTag, type Fields, holding, kind, list, oneOf } from './makeShape.js'
import { choice, described, named, part, textShapes } from './textShapes.js'

/** For schema readers: an object with the first key, one with the second, and so on. */
export const objectsWith = (...keys: readonly string[]) =>
  keys.map((key) => ({ type: 'object', properties: { [key]: {} }, required: [key] }))

/** Sources, and printed values for any list of units. */
export const valueShapes = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  const sourceRef = part('source-ref', {
    ref: text.id,
    'page?': text.text,
    confidence: ['read', 'second hand', 'doubtful'],
  })
  const notStated = named('not-stated', kind('not stated', { 'source?': sourceRef }))

  /** The three ways to print a value, with further fields. */
  const armsOf = <const Units extends readonly string[], Beside extends Fields>(
    units: Units,
    figure: typeof text.figure,
    beside: Beside,
  ) => {
    const rest = { unit: oneOf<Units[number]>(units), 'asPrinted?': text.text, ...beside }
    const limits = kind('limits', { 'min?': figure, 'max?': figure, ...rest }, [
      // Limits without both include every value.
      holding<{ min?: string; max?: string }>(
        ({ min, max }) => (min ?? max) !== undefined,
        'spec/limits-empty',
      ),
    ])
    return [
      kind('nominal', { value: figure, ...rest }),
      kind('nominal with tolerance', { value: figure, minus: text.figure, plus: text.figure, ...rest }),
      described({ anyOf: objectsWith('min', 'max') }, limits),
    ] as const
  }

  /** A stated value, and one that may also be not stated. */
  const inUnits = <const Units extends readonly string[]>(
    name: string,
    units: Units,
    figure = text.figure,
  ) => {
    const printed = choice(`printed-${name}`, armsOf(units, figure, {}))
    const arms = armsOf(units, figure, { 'printed?': list(printed), 'source?': sourceRef })
    return {
      arms,
      stated: choice(`stated-${name}`, arms),
      spec: choice(`spec-${name}`, [...arms, notStated]),
    }
  }

  /** A value of any measure, for an override; a rule checks that it matches its target. Only a temperature may be negative. */
  const inAnyUnits = () => {
    const { temperature, ...others } = UNITS_BY_MEASURE
    // Both typed by all units, as the interface has it.
    const { arms: degrees } = inUnits<readonly Unit[]>('any-temperature', temperature, text.signedFigure)
    const { arms: amounts } = inUnits<readonly Unit[]>('any-amount', Object.values(others).flat())
    return choice('spec-any', [
      byTag([degrees[0], amounts[0]], 'unit'),
      byTag([degrees[1], amounts[1]], 'unit'),
      byTag([degrees[2], amounts[2]], 'unit'),
      notStated,
    ])
  }

  const byMeasure = <const M extends Measure>(measure: M) => inUnits(measure, UNITS_BY_MEASURE[measure])
  return {
    sourceRef,
    notStated,
    torque: byMeasure('torque'),
    volume: byMeasure('volume'),
    mass: byMeasure('mass'),
    length: byMeasure('length'),
    temperature: inUnits('temperature', UNITS_BY_MEASURE.temperature, text.signedFigure),
    millimetres: inUnits('mm', ['mm']),
    degrees: inUnits('deg', ['deg']),
    minutes: inUnits('min', ['min']),
    hoursOrMinutes: inUnits('h-or-min', ['h', 'min']),
    anyMeasure: inAnyUnits(),
  }
})
