import * as z from 'zod/mini'
import { type Measure, UNITS_BY_MEASURE, type Unit } from '../../quantity/index.js'
import { buildOnce } from './buildOnce.js'
import { partRegistry, type TextShapes, textShapes } from './textShapes.js'

type FigureShape = TextShapes['figure']

/** For schema readers: an object that has one of these keys. */
export const requireOneOf = (...keys: readonly string[]) =>
  keys.map((key) => ({ type: 'object', properties: { [key]: {} }, required: [key] }))

/** Sources, and values as a manual prints them, for any list of units. */
export const valueShapes = /* @__PURE__ */ buildOnce(() => {
  const parts = partRegistry()
  const text = textShapes()
  const sourceRef = z
    .strictObject({
      ref: text.id,
      page: z.exactOptional(text.text),
      confidence: z.enum(['read', 'second hand', 'doubtful']),
    })
    .register(parts, { id: 'source-ref' })
  const notStated = z
    .strictObject({ kind: z.literal('not stated'), source: z.exactOptional(sourceRef) })
    .register(parts, { id: 'not-stated' })

  /** The three ways to print a value in units that share one figure grammar. */
  const printedArms = <const Units extends readonly string[]>(units: Units, figure: FigureShape) => {
    const unit = z.enum(units)
    const asPrinted = z.exactOptional(text.text)
    return {
      nominal: { kind: z.literal('nominal'), value: figure, unit, asPrinted },
      tolerance: {
        kind: z.literal('nominal with tolerance'),
        value: figure,
        minus: text.figure,
        plus: text.figure,
        unit,
        asPrinted,
      },
      limits: {
        kind: z.literal('limits'),
        min: z.exactOptional(figure),
        max: z.exactOptional(figure),
        unit,
        asPrinted,
      },
    }
  }

  /** Limits must have one of the two: without both they hold every value. */
  const withLimit = <Limits extends z.ZodMiniType<{ min?: string; max?: string }>>(
    limits: Limits,
  ): Limits => {
    const checked = limits.check(
      z.refine(({ min, max }) => (min ?? max) !== undefined, { error: 'spec/limits-empty' }),
    )
    parts.add(checked, { anyOf: requireOneOf('min', 'max') })
    return checked
  }

  /** A stated value, and one that may also be not stated. */
  const inUnits = <const Units extends readonly string[]>(
    name: string,
    units: Units,
    figure: FigureShape = text.figure,
  ) => {
    const arms = printedArms(units, figure)
    const printed = z
      .discriminatedUnion('kind', [
        z.strictObject(arms.nominal),
        z.strictObject(arms.tolerance),
        withLimit(z.strictObject(arms.limits)),
      ])
      .register(parts, { id: `printed-${name}` })
    const beside = {
      printed: z.exactOptional(z.array(printed)),
      source: z.exactOptional(sourceRef),
    }
    const statedArms = [
      z.strictObject({ ...arms.nominal, ...beside }),
      z.strictObject({ ...arms.tolerance, ...beside }),
      withLimit(z.strictObject({ ...arms.limits, ...beside })),
    ] as const
    return {
      statedArms,
      stated: z.discriminatedUnion('kind', statedArms).register(parts, { id: `stated-${name}` }),
      spec: z.discriminatedUnion('kind', [...statedArms, notStated]).register(parts, { id: `spec-${name}` }),
    }
  }

  /** Of any measure, for an override; whether it fits its target is a rule. Only a temperature may be negative. */
  const inAnyUnits = () => {
    const { temperature, ...others } = UNITS_BY_MEASURE
    // Both typed by all units, as the interface has it.
    const degrees = inUnits<readonly Unit[]>('any-temperature', temperature, text.signedFigure).statedArms
    const amounts = inUnits<readonly Unit[]>('any-amount', Object.values(others).flat()).statedArms
    return z
      .discriminatedUnion('kind', [
        z.discriminatedUnion('unit', [degrees[0], amounts[0]]),
        z.discriminatedUnion('unit', [degrees[1], amounts[1]]),
        z.discriminatedUnion('unit', [degrees[2], amounts[2]]),
        notStated,
      ])
      .register(parts, { id: 'spec-any' })
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
