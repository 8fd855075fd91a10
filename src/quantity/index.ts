// Exports for other rooms.

export { asDifference } from './asDifference.js'
export type { FigureSlip, QuantityCodes } from './codes.js'
export { compareFigures } from './compareFigures.js'
export { compareQuantities } from './compareQuantities.js'
export { convert } from './convert.js'
export { convertAmount } from './convertAmount.js'
export { convertColumn } from './convertColumn.js'
export { convertFigure } from './convertFigure.js'
export {
  compareExact,
  type Exact,
  exactOf,
  exactText,
  lowerExact,
  minus,
  over,
  plus,
  roundExact,
  times,
} from './exact.js'
export { exactIn, nearestQuantity } from './exactIn.js'
export { decimalsOf } from './figureOf.js'
export { figureToNumber } from './figureToNumber.js'
export { formatNumber, type NumberDigits, type NumberMarks } from './formatNumber.js'
export { formatQuantity } from './formatQuantity.js'
export { isFigure } from './isFigure.js'
export { isUnit } from './isUnit.js'
export { measureOf } from './measureOf.js'
export { nearestDouble } from './nearestDouble.js'
export { parseQuantity, type ReadingOptions } from './parseQuantity.js'
export type { PrintedBand } from './printed.js'
export { type PrintedAgreement, printedFiguresAgree } from './printedFiguresAgree.js'
export { type Band, readBand, readBandAsPrinted, sideOfBand, singleFigure, statedEnds } from './readBand.js'
export { requireBand } from './requireBand.js'
export { requireQuantity, requireQuantityOf, requireUnitOf } from './requireQuantity.js'
export { secondUnit } from './secondUnit.js'
export { spellingsOf } from './spellingsOf.js'
export {
  type DistanceUnit,
  type Figure,
  type LengthUnit,
  type MassUnit,
  type Measure,
  type PrintedQuantity,
  type Quantity,
  type TemperatureUnit,
  type TorqueUnit,
  UNIT_FACTORS,
  UNITS_BY_MEASURE,
  type Unit,
  type UnitOf,
  type VolumeUnit,
} from './unit.js'
export { ANGLE, LENGTH, TORQUE } from './unitFactors.js'
export { exactlyIn } from './unitPair.js'
export { unitSymbol } from './unitSymbol.js'
