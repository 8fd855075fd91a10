import { UNITS_BY_MEASURE } from '../../../src/quantity/unit.js'
import type { Unit } from '../../../src/v1/quantity.js'

/**
 * A second calculation of every unit, only from the statutory definitions, in whole fractions: 25.4 mm to the inch,
 * 0.45359237 kg to the pound, 9.80665 m/s² of standard gravity, 231 in³ and 4.54609 L to the gallons (each read in
 * GNU units 3.15 and UCUM 2.2). It shares no code with `src`.
 */
export type Fraction = readonly [numerator: bigint, denominator: bigint]

const by = ([a, b]: Fraction, [c, d]: Fraction): Fraction => [a * c, b * d]
const per = ([a, b]: Fraction, [c, d]: Fraction): Fraction => [a * d, b * c]
const wholeFraction = (n: bigint): Fraction => [n, 1n]

const inch: Fraction = [254n, 10000n]
const foot = by(inch, wholeFraction(12n))
const mile = by(foot, wholeFraction(5280n))
const pound: Fraction = [45359237n, 100000000n]
const ounce = per(pound, wholeFraction(16n))
const gravity: Fraction = [980665n, 100000n]
const poundForce = by(pound, gravity)
const ounceForce = by(ounce, gravity)
const litre: Fraction = [1n, 1000n]
const gallonUs = by(wholeFraction(231n), by(inch, by(inch, inch)))
const gallonImperial = by([454609n, 100000n], litre)
const milli: Fraction = [1n, 1000n]
const centi: Fraction = [1n, 100n]

/** One unit in coherent SI units (kelvins for a temperature interval). */
const IN_SI: { readonly [U in Unit]: Fraction } = {
  'N.m': wholeFraction(1n),
  'cN.m': centi,
  'dN.m': [1n, 10n],
  'kN.m': wholeFraction(1000n),
  'lbf.ft': by(poundForce, foot),
  'lbf.in': by(poundForce, inch),
  'ozf.in': by(ounceForce, inch),
  'kgf.m': gravity,
  'kgf.cm': by(gravity, centi),
  mL: by(milli, litre),
  L: litre,
  cm3: by(centi, by(centi, centi)),
  fl_oz_us: per(gallonUs, wholeFraction(128n)),
  pt_us: per(gallonUs, wholeFraction(8n)),
  qt_us: per(gallonUs, wholeFraction(4n)),
  gal_us: gallonUs,
  fl_oz_imp: per(gallonImperial, wholeFraction(160n)),
  pt_imp: per(gallonImperial, wholeFraction(8n)),
  qt_imp: per(gallonImperial, wholeFraction(4n)),
  gal_imp: gallonImperial,
  mm: milli,
  cm: centi,
  m: wholeFraction(1n),
  in: inch,
  ft: foot,
  km: wholeFraction(1000n),
  mi: mile,
  N: wholeFraction(1n),
  kN: wholeFraction(1000n),
  lbf: poundForce,
  kPa: wholeFraction(1000n),
  MPa: wholeFraction(1000000n),
  bar: wholeFraction(100000n),
  psi: per(poundForce, by(inch, inch)),
  degC: wholeFraction(1n),
  degF: [5n, 9n],
  K: wholeFraction(1n),
  degC_diff: wholeFraction(1n),
  degF_diff: [5n, 9n],
  K_diff: wholeFraction(1n),
  g: milli,
  kg: wholeFraction(1n),
  oz: ounce,
  lb: pound,
  h: wholeFraction(3600n),
  min: wholeFraction(60n),
  s: wholeFraction(1n),
  d: wholeFraction(86400n),
  deg: wholeFraction(1n),
  'km/h': [1000n, 3600n],
  mph: per(mile, wholeFraction(3600n)),
  'mm2/s': by(milli, milli),
  'mPa.s': milli,
  'kg/m3': wholeFraction(1n),
}

/** The zero of the scale, in degrees of the unit above absolute zero. */
const ZERO: { readonly [U in Unit]?: Fraction } = { degC: [27315n, 100n], degF: [45967n, 100n] }

export function exactResult(value: Fraction, from: Unit, to: Unit): Fraction {
  const [a, b] = ZERO[from] ?? [0n, 1n]
  const absolute: Fraction = [value[0] * b + a * value[1], value[1] * b]
  const moved = per(by(absolute, IN_SI[from]), IN_SI[to])
  const [c, d] = ZERO[to] ?? [0n, 1n]
  return [moved[0] * d - c * moved[1], moved[1] * d]
}

/** The exact value of a double, from its bits. */
export function exactDouble(value: number): Fraction {
  const bits = bitsOf(value)
  const exponent = Number((bits >> 52n) & 0x7ffn)
  const mantissa = (bits & 0xfffffffffffffn) | (exponent === 0 ? 0n : 1n << 52n)
  const exponentOfTwo = (exponent === 0 ? 1 : exponent) - 1075
  const signed = bits >> 63n ? -mantissa : mantissa
  return exponentOfTwo >= 0 ? [signed << BigInt(exponentOfTwo), 1n] : [signed, 1n << BigInt(-exponentOfTwo)]
}

export function exactDecimal(text: string): Fraction {
  const [before = '', after = ''] = text.split('.')
  return [BigInt(before + after), 10n ** BigInt(after.length)]
}

function bitsOf(value: number): bigint {
  const view = new DataView(new ArrayBuffer(8))
  view.setFloat64(0, value)
  return view.getBigUint64(0)
}

function doubleOf(bits: bigint): number {
  const view = new DataView(new ArrayBuffer(8))
  view.setBigUint64(0, bits)
  return view.getFloat64(0)
}

/** The next double away from zero (`1n`) or towards it (`-1n`). */
function neighbour(value: number, step: bigint): number {
  return doubleOf(bitsOf(value) + step)
}

const distance = ([a, b]: Fraction, [c, d]: Fraction): Fraction => {
  const gap = a * d - c * b
  return [gap < 0n ? -gap : gap, b * d]
}
const isLess = ([a, b]: Fraction, [c, d]: Fraction): boolean => a * d < c * b

/** Whether no double is nearer to the exact value, and on a tie the last bit is even. */
export function isNearest(result: number, exact: Fraction): boolean {
  const size: Fraction = [exact[0] < 0n ? -exact[0] : exact[0], exact[1]]
  if (result === 0) return exact[0] === 0n
  if (result < 0 !== exact[0] < 0n) return false
  const ownGap = distance(exactDouble(Math.abs(result)), size)
  for (const step of [1n, -1n]) {
    const other = neighbour(Math.abs(result), step)
    if (!Number.isFinite(other)) continue
    const gap = distance(exactDouble(other), size)
    if (isLess(gap, ownGap)) return false
    const tie = !isLess(ownGap, gap)
    if (tie && bitsOf(Math.abs(result)) % 2n !== 0n) return false
  }
  return true
}

/** Whether the exact value is halfway between a double and one of its neighbours. */
export function isTie(result: number, exact: Fraction): boolean {
  const [n, d] = exact
  return [1n, -1n].some((step) => {
    const [a, b] = exactDouble(result)
    const [c, e] = exactDouble(neighbour(result, step))
    return (a * e + c * b) * d === 2n * n * b * e
  })
}

/**
 * Whether a double of full precision can represent the exact value: not above the largest, not below the smallest
 * normal.
 */
export function isNormal([n, d]: Fraction): boolean {
  const size = n < 0n ? -n : n
  return n === 0n || (size <= (2n ** 1024n - 2n ** 970n) * d && size * 2n ** 1022n >= d)
}

export type Pair = readonly [from: Unit, to: Unit]

/** Every ordered pair of different units of one measure. */
export function allPairs(choose: (measure: string) => boolean): Pair[] {
  return Object.entries(UNITS_BY_MEASURE)
    .filter(([measure]) => choose(measure))
    .flatMap(([, units]) =>
      units.flatMap((from) => units.filter((to) => to !== from).map((to): Pair => [from, to])),
    )
}

export const isLinear = (measure: string): boolean => measure !== 'temperature'
