import configureMeasurements from 'convert-units'
import type { Exact } from './exact.js'
import {
  add,
  commonDenominator,
  compareExact,
  divide,
  exactOf,
  exactOfDouble,
  findNearestDouble,
  multiply,
  subtract,
} from './exact.js'
import { findUnitPair } from './findUnitPair.js'
import { UNIT_FACTORS, type Unit } from './unit.js'
import { FACTORS_BY_MEASURE } from './unitFactors.js'

type ConfigureArguments = Parameters<typeof configureMeasurements<string, string, string, Exact>>
type Measures = ConfigureArguments[0]
type Wrapper = ConfigureArguments[1]

let converter: ReturnType<typeof makeConverter> | undefined

/**
 * Converts exactly, where the fast path cannot prove its result: convert-units with our table of measures, in
 * fractions. Only this file imports that package.
 */
export function convertExactly(value: number, from: Unit, to: Unit): number {
  converter ??= makeConverter()
  // the package declares numbers as input, but passes the value to the wrapper unchanged
  const exact = exactOfDouble(value) as unknown as number
  return findNearestDouble(converter(exact).from(from).to(to))
}

function makeConverter() {
  return configureMeasurements<string, string, string, Exact>(makeMeasures(), {
    create: toExact,
    add: (left, right) => add(toExact(left), toExact(right)),
    sub: (left, right) => subtract(toExact(left), toExact(right)),
    mul: (left, right) => multiply(toExact(left), toExact(right)),
    div: (left, right) => divide(toExact(left), toExact(right)),
    lt: (left, right) => compareExact(toExact(left), toExact(right)) < 0,
    lte: (left, right) => compareExact(toExact(left), toExact(right)) <= 0,
    gt: (left, right) => compareExact(toExact(left), toExact(right)) > 0,
    gte: (left, right) => compareExact(toExact(left), toExact(right)) >= 0,
  })
}

function toExact(value: string | number | Exact): Exact {
  return typeof value === 'object' ? value : exactOf(String(value))
}

function makeMeasures(): Measures {
  const measures: Measures = {}
  for (const [measure, factors] of Object.entries(FACTORS_BY_MEASURE)) {
    const units = Object.keys(factors) as Unit[]
    measures[measure] = measure === 'temperature' ? makeTemperatureMeasure(units) : makeLinearMeasure(units)
  }
  return measures
}

/** All factors of a measure as whole multiples of one anchor. */
function makeLinearMeasure(units: readonly Unit[]): Measures[string] {
  const factors = units.map((unit) => exactOf(UNIT_FACTORS[unit]))
  const scale = commonDenominator(factors)
  const rows = units.map((unit, at) => {
    const factor = factors[at] ?? { n: 1n, d: 1n }
    return [
      unit,
      { name: { singular: unit, plural: unit }, to_anchor: String((factor.n * scale) / factor.d) },
    ]
  })
  return { systems: { one: Object.fromEntries(rows) } }
}

/** One system for each unit, and (value × n + c) / d between any two. */
function makeTemperatureMeasure(units: readonly Unit[]): Measures[string] {
  const systems: Record<string, object> = {}
  const anchors: Record<string, Record<string, object>> = {}
  for (const from of units) {
    systems[from] = { [from]: { name: { singular: from, plural: from }, to_anchor: 1 } }
    const row: Record<string, object> = {}
    for (const to of units) row[to] = { transform: makeTemperatureTransform(from, to) }
    anchors[from] = row
  }
  return { systems, anchors } as Measures[string]
}

function makeTemperatureTransform(from: Unit, to: Unit): (value: Exact, wrapper: Wrapper) => Exact {
  const { ratio, offset } = findUnitPair(from, to)
  const n = String(ratio.n * offset.d)
  const c = String(offset.n * ratio.d)
  const d = String(ratio.d * offset.d)
  return (value, wrapper) => wrapper.div(wrapper.add(wrapper.mul(value, n), c), d)
}
