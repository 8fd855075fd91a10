import { add, type Exact, exactOf, multiply, powerOfTen } from './exact.js'
import { countDecimals, requireFigure } from './figure.js'
import type { Figure, PrintedBand } from './unit.js'

/**
 * The range of a printed figure's true value, `center` ± `halfWidth`; `lastPlaceUnit` is one unit of its last
 * place.
 */
export interface FigureSpan {
  readonly center: Exact
  readonly halfWidth: Exact
  readonly lastPlaceUnit: Exact
}

/** The spans of the figures of a printed value. */
export interface BandSpans {
  readonly nominal?: FigureSpan
  readonly min?: FigureSpan
  readonly max?: FigureSpan
}

const HALF: Exact = { n: 1n, d: 2n }

/**
 * The spans of a printed value in its unit. The last place of a printed fraction (`7 1/2`) is 1/denominator.
 */
export function readBandSpans(value: PrintedBand): BandSpans {
  if (value.kind === 'nominal') return { nominal: readFractionSpan(value.asPrinted) ?? makeSpan(value.value) }
  if (value.kind === 'limits') {
    return {
      ...(value.min !== undefined && { min: makeSpan(value.min) }),
      ...(value.max !== undefined && { max: makeSpan(value.max) }),
    }
  }
  const nominal = makeSpan(value.value)
  return {
    nominal,
    min: addTolerance(nominal, makeSpan(value.minus), -1n),
    max: addTolerance(nominal, makeSpan(value.plus), 1n),
  }
}

function makeSpan(figure: Figure): FigureSpan {
  const lastPlaceUnit = powerOfTen(-countDecimals(figure))
  return { center: requireFigure(figure), halfWidth: multiply(lastPlaceUnit, HALF), lastPlaceUnit }
}

function addTolerance(nominal: FigureSpan, tolerance: FigureSpan, sign: bigint): FigureSpan {
  const halfWidth = add(nominal.halfWidth, tolerance.halfWidth)
  return {
    center: add(nominal.center, multiply(tolerance.center, { n: sign, d: 1n })),
    halfWidth,
    lastPlaceUnit: halfWidth,
  }
}

const FRACTION_PATTERN = /^\D*?(?:([0-9]{1,9})[\s\u00a0-])?([0-9]{1,3})\/([1-9][0-9]{0,2})(?![0-9/])/
const FRACTION_CHARACTERS = '½1/2¼1/4¾3/4⅓1/3⅔2/3⅛1/8⅜3/8⅝5/8⅞7/8'

function readFractionSpan(printed: string | undefined): FigureSpan | undefined {
  if (printed === undefined || printed.length > 60) return undefined
  const plainText = printed.replace(/[½¼¾⅓⅔⅛⅜⅝⅞]/, (sign) => {
    const at = FRACTION_CHARACTERS.indexOf(sign)
    return ` ${FRACTION_CHARACTERS.slice(at + 1, at + 4)}`
  })
  const [, whole = '0', numerator, denominator] = FRACTION_PATTERN.exec(plainText.replace(/ {2,}/, ' ')) ?? []
  if (numerator === undefined || denominator === undefined) return undefined
  const lastPlaceUnit = { n: 1n, d: BigInt(denominator) }
  return {
    center: add(exactOf(whole), { n: BigInt(numerator), d: lastPlaceUnit.d }),
    halfWidth: multiply(lastPlaceUnit, HALF),
    lastPlaceUnit,
  }
}
