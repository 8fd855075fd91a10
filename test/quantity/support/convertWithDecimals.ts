import configureMeasurements from 'convert-units'
import { Decimal as SharedDecimal } from 'decimal.js'
import { commonDenominator, exactOf, exactOfDouble, formatDecimal } from '../../../src/quantity/exact.js'
import { findUnitPair } from '../../../src/quantity/findUnitPair.js'
import { UNIT_FACTORS, UNITS_BY_MEASURE, type Unit } from '../../../src/quantity/unit.js'

type Table = Parameters<typeof configureMeasurements<string, string, string, SharedDecimal>>
type Measures = Table[0]
type Wrapper = Table[1]

/**
 * Enough digits for the exact value of any double, any step and a fraction of a degree, so that only the division at
 * the end rounds, and exact ties stay exact.
 */
const PRECISION = 1200

let convertDecimal: ReturnType<typeof makeConverter> | undefined

/**
 * A third calculation: the same table in convert-units with decimals of 1,200 digits from decimal.js.
 */
export function convertWithDecimals(value: number, from: Unit, to: Unit): number {
  convertDecimal ??= makeConverter()
  // the package's types know only numbers as input; the wrapper reads the exact decimal text
  const { n, d } = exactOfDouble(value)
  const twos = d.toString(2).length - 1
  const text = formatDecimal(n * 5n ** BigInt(twos), twos) as unknown as number
  return convertDecimal(text).from(from).to(to).toNumber()
}

function makeConverter() {
  const Decimal = SharedDecimal.clone({ defaults: true, precision: PRECISION, rounding: 6 })
  const wrapper: Wrapper = {
    create: (value) => new Decimal(value),
    add: (left, right) => new Decimal(left).plus(right),
    sub: (left, right) => new Decimal(left).minus(right),
    mul: (left, right) => new Decimal(left).times(right),
    div: (left, right) => new Decimal(left).div(right),
    lt: (left, right) => new Decimal(left).lt(right),
    lte: (left, right) => new Decimal(left).lte(right),
    gt: (left, right) => new Decimal(left).gt(right),
    gte: (left, right) => new Decimal(left).gte(right),
  }
  return configureMeasurements<string, string, string, SharedDecimal>(makeMeasures(), wrapper)
}

function makeMeasures(): Measures {
  const measures: Measures = {}
  for (const [measure, units] of Object.entries(UNITS_BY_MEASURE)) {
    measures[measure] =
      measure === 'temperature' ? temperatureMeasure(units as readonly Unit[]) : linearMeasure(units)
  }
  return measures
}

/** All factors of a measure as whole numbers of one anchor, so that there is only one division, at the end. */
function linearMeasure(units: readonly Unit[]): Measures[string] {
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

/** A system for each unit, and (value × n + c) / d between any two, since anchor and shift would round twice. */
function temperatureMeasure(units: readonly Unit[]): Measures[string] {
  const systems: Record<string, object> = {}
  const anchors: Record<string, Record<string, object>> = {}
  for (const from of units) {
    systems[from] = { [from]: { name: { singular: from, plural: from }, to_anchor: 1 } }
    const row: Record<string, object> = {}
    for (const to of units) row[to] = { transform: temperatureTransform(from, to) }
    anchors[from] = row
  }
  return { systems, anchors } as Measures[string]
}

function temperatureTransform(from: Unit, to: Unit): (value: SharedDecimal, cls: Wrapper) => SharedDecimal {
  const { ratio, offset } = findUnitPair(from, to)
  const n = String(ratio.n * offset.d)
  const c = String(offset.n * ratio.d)
  const d = String(ratio.d * offset.d)
  return (value, cls) => cls.div(cls.add(cls.mul(value, n), c), d)
}
