import { type Measure, UNITS_BY_MEASURE } from '../../quantity/index.js'
import { drive, interval, oils, place, seal, severeUse, tightening, window } from './leafNotations.js'
import { makeNotations } from './notation.js'
import {
  access,
  axle,
  bolts,
  condition,
  documentSource,
  emptying,
  fasteners,
  fill,
  filterHold,
  level,
  method,
  oilSpace,
  support,
  uses,
  variant,
} from './partNotations.js'
import { SHEET_SLIPS } from './sheetSlips.js'
import { amount, amountOfMeasure, bareSource, value } from './valuePieces.js'

const makeValueOf = (measure: Measure) => () => value(amountOfMeasure(measure, UNITS_BY_MEASURE[measure]))

/** The notations of a sheet. */
export const sheetNotations = () =>
  makeNotations(
    {
      volume: makeValueOf('volume'),
      length: makeValueOf('length'),
      temperature: makeValueOf('temperature'),
      mass: makeValueOf('mass'),
      minutes: () => value(amount('duration', ['min'])),
      tightening,
      oils,
      seal,
      interval,
      window,
      place,
      severeUse,
      access,
      oilSpace,
      fill,
      method,
      level,
      uses,
      emptying,
      filterHold,
      drive,
      fasteners,
      bolts,
      condition,
      variant,
      support,
      axle,
      documentSource,
      source: bareSource,
    },
    SHEET_SLIPS,
  )

export type SheetNotation = keyof ReturnType<typeof sheetNotations>
