import type { JsonPointer } from '../../base/index.js'
import { measureOf, type PrintedAgreement, printedFiguresAgree } from '../../quantity/index.js'
import { findStatedValues, type PrintedValue, type SpecSheet, type StatedValue } from '../../spec/index.js'
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
 * Every second printed value of a sheet that does not agree with the first. Where the second ones agree among
 * themselves, the first is the odd one out and gets the only complaint.
 */
export function disagreeingFigures(sheet: SpecSheet): readonly DisagreementAt[] {
  return findStatedValues(sheet).flatMap(({ path, value }) => disagreementsOf(path, value))
}

function disagreementsOf(path: JsonPointer, value: StatedValue): readonly DisagreementAt[] {
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
