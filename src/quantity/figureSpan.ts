import { type Exact, exactOf, plus, powerOfTen, times } from './exact.js'
import { decimalsOf, figureOf } from './figureOf.js'
import type { PrintedBand } from './printed.js'
import type { Figure } from './unit.js'

/** The range of the true value of a printed figure, `center` ± `halfWidth`; `lastPlaceUnit` is one unit of its last place. */
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

/** The spans of a printed value in its unit. The last place of a printed fraction (`7 1/2`) is one over its denominator. */
export function bandSpans(value: PrintedBand): BandSpans {
  if (value.kind === 'nominal') return { nominal: fractionSpan(value.asPrinted) ?? spanOf(value.value) }
  if (value.kind === 'limits') {
    return {
      ...(value.min !== undefined && { min: spanOf(value.min) }),
      ...(value.max !== undefined && { max: spanOf(value.max) }),
    }
  }
  const nominal = spanOf(value.value)
  return {
    nominal,
    min: addTolerance(nominal, spanOf(value.minus), -1n),
    max: addTolerance(nominal, spanOf(value.plus), 1n),
  }
}

function spanOf(figure: Figure): FigureSpan {
  const lastPlaceUnit = powerOfTen(-decimalsOf(figure))
  return { center: figureOf(figure), halfWidth: times(lastPlaceUnit, HALF), lastPlaceUnit }
}

function addTolerance(nominal: FigureSpan, tolerance: FigureSpan, sign: bigint): FigureSpan {
  const halfWidth = plus(nominal.halfWidth, tolerance.halfWidth)
  return {
    center: plus(nominal.center, times(tolerance.center, { n: sign, d: 1n })),
    halfWidth,
    lastPlaceUnit: halfWidth,
  }
}

const FRACTION = /^\D*?(?:([0-9]{1,9})[\s\u00a0-])?([0-9]{1,3})\/([1-9][0-9]{0,2})(?![0-9/])/
const FRACTION_CHARACTERS = '½1/2¼1/4¾3/4⅓1/3⅔2/3⅛1/8⅜3/8⅝5/8⅞7/8'

function fractionSpan(printed: string | undefined): FigureSpan | undefined {
  if (printed === undefined || printed.length > 60) return undefined
  const spelledText = printed.replace(/[½¼¾⅓⅔⅛⅜⅝⅞]/, (sign) => {
    const at = FRACTION_CHARACTERS.indexOf(sign)
    return ` ${FRACTION_CHARACTERS.slice(at + 1, at + 4)}`
  })
  const [, whole = '0', top, bottom] = FRACTION.exec(spelledText.replace(/ {2,}/, ' ')) ?? []
  if (top === undefined || bottom === undefined) return undefined
  const lastPlaceUnit = { n: 1n, d: BigInt(bottom) }
  return {
    center: plus(exactOf(whole), { n: BigInt(top), d: lastPlaceUnit.d }),
    halfWidth: times(lastPlaceUnit, HALF),
    lastPlaceUnit,
  }
}
