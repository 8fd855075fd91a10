import type { JsonPointer } from '../../base/index.js'
import { findStatedValues, type PrintedValue, type SpecSheet } from '../../spec/index.js'

/** One printed value, the first or one beside it. */
export interface FigureAt {
  readonly path: JsonPointer
  readonly figure: PrintedValue
}

/** Every value of a sheet as printed, those printed beside a first one and those of overrides too. */
export function sheetFigures(sheet: SpecSheet): readonly FigureAt[] {
  return findStatedValues(sheet).flatMap(({ path, value }) => [
    { path, figure: value },
    ...(value.printed ?? []).map((figure, place) => ({ path: `${path}/printed/${place}`, figure })),
  ])
}
