// Exports for other modules.

export type { FigureSlip, QuantityCodes } from './codes.js'
export { comparePrintedFigures, type PrintedComparison } from './comparePrintedFigures.js'
export { compareFigures, compareQuantities } from './compareQuantities.js'
export { convert } from './convert.js'
export { convertColumn } from './convertColumn.js'
export { convertFigure } from './convertFigure.js'
export type { Exact } from './exact.js'
export {
  add,
  compareExact,
  divide,
  exactOf,
  findNearestDouble,
  formatExact,
  minExact,
  multiply,
  roundExact,
  subtract,
} from './exact.js'
export { countDecimals, figureToNumber, isFigure } from './figure.js'
export { convertAmount, convertExact, exactIn, findNearestQuantity } from './findUnitPair.js'
export { formatNumber, type NumberDigits, type NumberMarks } from './formatNumber.js'
export { formatQuantity } from './formatQuantity.js'
export { findDifferenceUnit, isUnit, measureOf } from './measureOf.js'
export { parseQuantity, type ReadingOptions } from './parseQuantity.js'
export type { Band } from './readBand.js'
export { chooseSide, chooseSingleFigure, getStatedEnds, readBand, readBandAsPrinted } from './readBand.js'
export { requireBand, requireQuantity, requireQuantityOf, requireUnitOf } from './requireQuantity.js'
export { secondUnit } from './secondUnit.js'
export type * from './unit.js'
export { UNIT_FACTORS, UNITS_BY_MEASURE } from './unit.js'
export { ANGLE_FACTORS, LENGTH_FACTORS, TORQUE_FACTORS } from './unitFactors.js'
export { listSpellings, unitSymbol } from './unitSymbol.js'
