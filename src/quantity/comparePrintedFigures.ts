import type { Reason } from '../base/index.js'
import type { FigureSlip, QuantityCodes } from './codes.js'
import type { Exact } from './exact.js'
import { add, compareExact, divide, exactOf, findNearestDouble, multiply, subtract } from './exact.js'
import { type BandSpans, type FigureSpan, readBandSpans } from './figureSpan.js'
import { findUnitPair } from './findUnitPair.js'
import { requireBand } from './requireQuantity.js'
import type { PrintedBand, Unit } from './unit.js'

/** The result of comparing two printed values of one thing. */
export interface PrintedComparison {
  /** `small miss` is at most 5 % of the first value; `slip` is a difference by a known ratio. */
  readonly verdict: 'agree' | 'small miss' | 'slip' | 'differ' | 'not comparable'
  readonly slip?: FigureSlip
  readonly reasons: readonly Reason<keyof QuantityCodes & string>[]
}

/** The ratio that shows each slip, and the unit that one of the two figures must have. */
const SLIPS: readonly { readonly slip: FigureSlip; readonly ratio: string; readonly units: RegExp }[] = [
  { slip: 'foot for inch', ratio: '12', units: /^lbf\./ },
  { slip: 'kilogram-force for newton', ratio: '9.80665', units: /^kgf/ },
  {
    slip: 'number copied between pound-foot and newton metre',
    ratio: '1.3558179483314004',
    units: /^lbf\.ft/,
  },
  { slip: 'US for imperial measure', ratio: '4546.09/3785.411784', units: /^(gal|qt|pt)_/ },
  { slip: 'US for imperial fluid ounce', ratio: '28.4130625/29.5735295625', units: /^fl_oz/ },
]

const MAX_SMALL_MISS: Exact = { n: 1n, d: 20n }

/**
 * Compares two figures that a manual prints for the same thing. They agree if one true value can be in the rounding
 * range of each. For measured values use {@link compareQuantities}.
 */
export function comparePrintedFigures(first: PrintedBand, second: PrintedBand): PrintedComparison {
  requireBand('first', first)
  requireBand('second', second)
  const firstSpans = readBandSpans(first)
  const secondSpans = convertSpans(readBandSpans(second), second.unit, first.unit)
  const pairs = pairSpans(firstSpans, secondSpans)
  const values = { first, second }
  if (pairs === undefined) {
    const code = 'quantity/printed-figures-not-comparable'
    return { verdict: 'not comparable', reasons: [{ code, params: values }] }
  }
  if (pairs.every(([firstSpan, secondSpan, part]) => spansMeet(firstSpan, secondSpan, part)))
    return { verdict: 'agree', reasons: [] }
  for (const { slip, ratio, units } of SLIPS) {
    if (!units.test(first.unit) && !units.test(second.unit)) continue
    const factor = exactOf(ratio)
    const agreesIfScaled = (factor: Exact) =>
      pairs.every(([firstSpan, secondSpan, part]) =>
        spansMeet(scaleSpan(firstSpan, factor), secondSpan, part),
      )
    if (agreesIfScaled(factor) || agreesIfScaled(divide({ n: 1n, d: 1n }, factor))) {
      const code = 'quantity/printed-figures-slip'
      return {
        verdict: 'slip',
        slip,
        reasons: [{ code, params: { ...values, slip, ratio: formatRatio(ratio) } }],
      }
    }
  }
  const gaps = pairs.map(([firstSpan, secondSpan]) => calculateRelativeGap(firstSpan, secondSpan))
  const largestGap = gaps.reduce((largest, gap) => (compareExact(gap, largest) > 0 ? gap : largest))
  const isSmall = compareExact(largestGap, MAX_SMALL_MISS) <= 0
  const missPercent = Math.round(Math.min(findNearestDouble(largestGap), 1e6) * 10_000) / 100
  const code = isSmall ? 'quantity/printed-figures-differ-slightly' : 'quantity/printed-figures-differ'
  return {
    verdict: isSmall ? 'small miss' : 'differ',
    reasons: [{ code, params: { ...values, missPercent } }],
  }
}

type Part = keyof BandSpans
const PARTS: readonly Part[] = ['nominal', 'min', 'max']
type SpanPair = readonly [FigureSpan, FigureSpan, Part]

/** The parts that both values print; undefined if there are none, or if only one value has a limit. */
function pairSpans(first: BandSpans, second: BandSpans): SpanPair[] | undefined {
  const pairs: SpanPair[] = []
  for (const part of PARTS) {
    const firstSpan = first[part]
    const secondSpan = second[part]
    if (firstSpan && secondSpan) pairs.push([firstSpan, secondSpan, part])
    else if ((firstSpan || secondSpan) && part !== 'nominal' && !(first.nominal && second.nominal))
      return undefined
  }
  return pairs.length > 0 ? pairs : undefined
}

function convertSpans(spans: BandSpans, from: Unit, to: Unit): BandSpans {
  if (from === to) return spans
  const { ratio, offset } = findUnitPair(from, to)
  const converted: { -readonly [P in Part]?: FigureSpan } = {}
  for (const part of PARTS) {
    const span = spans[part]
    if (span === undefined) continue
    const scaled = scaleSpan(span, ratio)
    converted[part] = offset.n === 0n ? scaled : { ...scaled, center: add(scaled.center, offset) }
  }
  return converted
}

function scaleSpan(span: FigureSpan, factor: Exact): FigureSpan {
  return {
    center: multiply(span.center, factor),
    halfWidth: multiply(span.halfWidth, factor),
    lastPlaceUnit: multiply(span.lastPlaceUnit, factor),
  }
}

function spansMeet(first: FigureSpan, second: FigureSpan, part: Part): boolean {
  const gap = subtract(second.center, first.center)
  const size = toAbsolute(gap)
  if (compareExact(size, add(first.halfWidth, second.halfWidth)) <= 0) return true
  if (part === 'nominal') return false
  // the limit further inside is the converted one, which was rounded inward by less than one digit
  const isSecondInside = part === 'min' ? gap.n > 0n : gap.n < 0n
  const allowed = isSecondInside
    ? add(first.halfWidth, second.lastPlaceUnit)
    : add(second.halfWidth, first.lastPlaceUnit)
  return compareExact(size, allowed) < 0
}

/** The gap between the ranges as a share of the first value; 0 if they meet. */
function calculateRelativeGap(first: FigureSpan, second: FigureSpan): Exact {
  const gap = subtract(
    toAbsolute(subtract(second.center, first.center)),
    add(first.halfWidth, second.halfWidth),
  )
  if (gap.n <= 0n) return { n: 0n, d: 1n }
  return first.center.n === 0n ? { n: 10n ** 6n, d: 1n } : divide(gap, toAbsolute(first.center))
}

function toAbsolute(value: Exact): Exact {
  return value.n < 0n ? { n: -value.n, d: value.d } : value
}

function formatRatio(ratio: string): string {
  return String(Math.round(findNearestDouble(exactOf(ratio)) * 1e5) / 1e5)
}
