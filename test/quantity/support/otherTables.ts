import configureMeasurements from 'convert-units'
import force from 'convert-units/definitions/force'
import length from 'convert-units/definitions/length'
import mass from 'convert-units/definitions/mass'
import pressure from 'convert-units/definitions/pressure'
import speed from 'convert-units/definitions/speed'
import torque from 'convert-units/definitions/torque'
import volume from 'convert-units/definitions/volume'
import Qty from 'js-quantities'
import { unit as mathUnit } from 'mathjs'
import { convertFigure } from '../../../src/quantity/convertFigure.js'
import type { Unit } from '../../../src/v1/quantity.js'

/** Names of our units in the tables of general-purpose libraries, if they have them. */
interface Names {
  readonly unit: Unit
  /** Our unit, and theirs, in which the size is stated. */
  readonly per: Unit
  readonly convertUnits?: readonly [from: string, to: string]
  readonly mathjs?: readonly [from: string, to: string]
  readonly jsQuantities?: readonly [from: string, to: string]
}

const NAMES: readonly Names[] = [
  {
    unit: 'lbf.ft',
    per: 'N.m',
    convertUnits: ['lbf-ft', 'Nm'],
    mathjs: ['lbf ft', 'N m'],
    jsQuantities: ['lbf*ft', 'N*m'],
  },
  {
    unit: 'lbf.in',
    per: 'N.m',
    convertUnits: ['lbf-in', 'Nm'],
    mathjs: ['lbf in', 'N m'],
    jsQuantities: ['lbf*in', 'N*m'],
  },
  { unit: 'ozf.in', per: 'N.m', convertUnits: ['ozf-in', 'Nm'] },
  { unit: 'kgf.m', per: 'N.m', convertUnits: ['kgm', 'Nm'], mathjs: ['kgf m', 'N m'] },
  { unit: 'lbf', per: 'N', convertUnits: ['lbf', 'N'], mathjs: ['lbf', 'N'], jsQuantities: ['lbf', 'N'] },
  {
    unit: 'psi',
    per: 'kPa',
    convertUnits: ['psi', 'kPa'],
    mathjs: ['psi', 'kPa'],
    jsQuantities: ['psi', 'kPa'],
  },
  { unit: 'in', per: 'mm', convertUnits: ['in', 'mm'], mathjs: ['in', 'mm'], jsQuantities: ['in', 'mm'] },
  { unit: 'ft', per: 'm', convertUnits: ['ft', 'm'], mathjs: ['ft', 'm'], jsQuantities: ['ft', 'm'] },
  { unit: 'mi', per: 'km', convertUnits: ['mi', 'km'], mathjs: ['mi', 'km'], jsQuantities: ['mi', 'km'] },
  { unit: 'lb', per: 'kg', convertUnits: ['lb', 'kg'], mathjs: ['lbm', 'kg'], jsQuantities: ['lb', 'kg'] },
  { unit: 'oz', per: 'g', convertUnits: ['oz', 'g'], mathjs: ['oz', 'g'], jsQuantities: ['oz', 'g'] },
  {
    unit: 'fl_oz_us',
    per: 'mL',
    convertUnits: ['fl-oz', 'ml'],
    mathjs: ['floz', 'ml'],
    jsQuantities: ['floz', 'ml'],
  },
  { unit: 'pt_us', per: 'L', convertUnits: ['pnt', 'l'], mathjs: ['pint', 'l'], jsQuantities: ['pt', 'l'] },
  { unit: 'qt_us', per: 'L', convertUnits: ['qt', 'l'], mathjs: ['qt', 'l'], jsQuantities: ['qt', 'l'] },
  { unit: 'gal_us', per: 'L', convertUnits: ['gal', 'l'], mathjs: ['gal', 'l'], jsQuantities: ['gal', 'l'] },
  {
    unit: 'mph',
    per: 'km/h',
    convertUnits: ['mph', 'km/h'],
    mathjs: ['mi/h', 'km/h'],
    jsQuantities: ['mph', 'kph'],
  },
]

export interface TableError {
  readonly unit: Unit
  readonly per: Unit
  readonly exact: string
  /** Relative error of each table, or null if it lacks the unit. */
  readonly convertUnits: number | null
  readonly mathjs: number | null
  readonly jsQuantities: number | null
}

/**
 * The difference of each library's table from the exact factor. Below 1e-15 it comes from the doubles, not from the
 * table.
 */
export function otherTables(): TableError[] {
  const convertUnits = configureMeasurements<string, string, string>({
    force,
    length,
    mass,
    pressure,
    speed,
    torque,
    volume,
  } as unknown as Parameters<typeof configureMeasurements<string, string, string>>[0])
  return NAMES.map((names) => {
    const exact = convertFigure('1', names.unit, names.per).digits
    const error = (value: number): number => Math.abs(value / Number(exact) - 1)
    const cu = names.convertUnits
    const mj = names.mathjs
    const jq = names.jsQuantities
    return {
      unit: names.unit,
      per: names.per,
      exact,
      convertUnits: cu ? error(convertUnits(1).from(cu[0]).to(cu[1])) : null,
      mathjs: mj ? error(mathUnit(1, mj[0]).toNumber(mj[1])) : null,
      jsQuantities: jq ? error(Qty(1, jq[0]).to(jq[1]).scalar) : null,
    }
  })
}
