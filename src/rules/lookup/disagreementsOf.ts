import type { JsonPointer } from '../../base/index.js'
import { measureOf, type PrintedAgreement, printedFiguresAgree } from '../../quantity/index.js'
import type { PrintedValue, StatedValue } from '../../spec/index.js'
import { firstPrinted } from './firstPrinted.js'
import { hasFigure } from './hasFigure.js'

/** A printed value that does not agree with the one before it, and how. */
export interface DisagreementAt {
  readonly path: JsonPointer
  readonly first: PrintedValue
  readonly second: PrintedValue
  readonly agreement: PrintedAgreement
}

/**
 * The printed values that disagree with the one they are printed beside. Where all of them agree among themselves, the
 * first is the odd one out and is the only one listed.
 */
export function disagreementsOf(path: JsonPointer, value: StatedValue): readonly DisagreementAt[] {
  const seconds = (value.printed ?? [])
    .map((second, place) => ({ second, path: `${path}/printed/${place}` }))
    .filter(({ second }) => measureOf(second.unit) === measureOf(value.unit))
    .filter(({ second }) => hasFigure(second) && hasFigure(value))
  const first = firstPrinted(value)
  const found = seconds
    .map((one) => ({ ...one, first, agreement: printedFiguresAgree(first, one.second) }))
    .filter(({ agreement }) => agreement.verdict !== 'agree')
  const [odd, ...others] = found
  const firstIsOdd =
    odd !== undefined &&
    others.length > 0 &&
    found.length === seconds.length &&
    others.every(({ second }) => printedFiguresAgree(odd.second, second).verdict === 'agree')
  return firstIsOdd ? [{ ...odd, path }] : found
}
