import { quoteValue, type Reason, refuse, requireObject } from '../base/index.js'
import { convert, type Quantity } from '../quantity/index.js'
import type { ORing } from '../spec/index.js'
import { type SealCodes, sealReason } from './codes.js'
import { normalizeRingNumber } from './compareSeals.js'

export interface ORingVerdict {
  /**
   * `found`: only a size was given, and it is in the table; `not in the table`: the ring may still be right.
   */
  readonly verdict: 'agrees' | 'differs' | 'found' | 'not in the table' | 'cannot tell'
  readonly row?: {
    readonly designation: string
    readonly inside: Quantity<'mm'>
    readonly section: Quantity<'mm'>
    /** Inside diameter plus twice the section. */
    readonly outside: Quantity<'mm'>
  }
  readonly reasons: readonly Reason<keyof SealCodes>[]
}

/**
 * Checks whether an o-ring's number and its printed size mean the same ring, in sheets and stock. The table
 * has only some rows; for other numbers, see AS568 or JIS B 2401.
 *
 * A figure agrees if the row's value is within half of its last printed digit, plus half a hundredth of a
 * millimetre (half a thousandth of an inch) for the rounding of charts.
 *
 * @param ring - `designation` as printed (`-214`, `214`, `AS568-214`, `P22`, `G45`) and `size`, either or both
 * @returns the verdict, and the row in mm if one was found
 * @throws TypeError if `ring` has the wrong shape
 *
 * Source: AS568 sizes, 0xx, 1xx and 2xx rows from seal makers' charts (a secondary source). JIS B 2401 P and G rows
 * from memory.
 *
 * @example
 * ```ts
 * import { checkORing } from 'drivetrain-service/v1/seal'
 * // Is a -214 ring 24.99 mm inside with a 3.53 mm section?
 * checkORing({ designation: '-214', size: { inside: '24.99', section: '3.53', unit: 'mm' } }).verdict // => 'agrees'
 * ```
 */
export function checkORing(ring: Pick<ORing, 'designation' | 'size'>): ORingVerdict {
  requireObject('ring', ring)
  const { designation, size } = ring
  if (designation !== undefined && typeof designation !== 'string')
    throw refuse('ring.designation', designation, 'a string')
  if (size !== undefined) requireObject('ring.size', size)
  for (const figure of size === undefined ? [] : [size.inside, size.section]) {
    if (typeof figure !== 'string' || !(Number(figure) > 0))
      throw new TypeError(`ring.size must contain printed figures above 0, got ${quoteValue(figure)}`)
  }
  if (designation === undefined && size === undefined)
    return { verdict: 'cannot tell', reasons: [sealReason('seal/o-ring-not-described', {})] }
  if (designation === undefined) {
    const found = listRings().find((row) => size !== undefined && hasSize(row, size))
    return found === undefined
      ? { verdict: 'not in the table', reasons: [sealReason('seal/o-ring-size-not-in-table', {})] }
      : {
          verdict: 'found',
          row: found,
          reasons: [sealReason('seal/o-ring-found', { designation: found.designation })],
        }
  }
  const number = normalizeRingNumber(designation)
  const row = listRings().find((candidate) => candidate.designation.replace('-', '') === number)
  if (row === undefined) {
    const params = { designation: designation.slice(0, 40) }
    return { verdict: 'not in the table', reasons: [sealReason('seal/o-ring-not-in-table', params)] }
  }
  const params = { designation: row.designation, inside: row.inside, section: row.section }
  return size === undefined || hasSize(row, size)
    ? { verdict: 'agrees', row, reasons: [sealReason('seal/o-ring-agrees', params)] }
    : { verdict: 'differs', row, reasons: [sealReason('seal/o-ring-differs', params)] }
}

type RingRow = NonNullable<ORingVerdict['row']>

function hasSize(row: RingRow, size: NonNullable<ORing['size']>): boolean {
  return (
    agreesWithTable(size.inside, row.inside, size.unit) &&
    agreesWithTable(size.section, row.section, size.unit)
  )
}

function agreesWithTable(figure: string, length: Quantity<'mm'>, unit: 'mm' | 'in'): boolean {
  const decimals = (figure.split('.')[1] ?? '').length
  const chartRounding = unit === 'in' ? 0.0005 : 0.005
  // 1e-9 for the binary rounding of the sum
  return (
    Math.abs(Number(figure) - convert(length, unit).value) <= 0.5 * 10 ** -decimals + chartRounding + 1e-9
  )
}

function listRings(): readonly RingRow[] {
  const makeLength = (value: number) => ({ value, unit: 'mm' as const })
  const row = (designation: string, inside: number, section: number): RingRow => {
    const outside = makeLength(inside + 2 * section)
    return { designation, inside: makeLength(inside), section: makeLength(section), outside }
  }
  const inchesToMillimetres = (value: number) => convert({ value, unit: 'in' }, 'mm').value
  return [
    ...AS568_ROWS.map(([dash, inside, section]) =>
      row(`-${dash}`, inchesToMillimetres(inside), inchesToMillimetres(section)),
    ),
    ...JIS_ROWS.flatMap(([series, numbers, less, section]) =>
      numbers.split(' ').map((number) => {
        const inside = Number((Number.parseInt(number, 10) - less).toFixed(1))
        return row(`${series}${number}`, inside, section)
      }),
    ),
  ]
}

/** JIS B 2401, from memory: series, numbers, difference between number and inside diameter, section; mm. */
const JIS_ROWS: readonly (readonly [string, string, number, number])[] = [
  ['P', '3 4 5 6 7 8 9 10', 0.2, 1.9],
  ['P', '10A 12 14 15 16 18 20 21 22', 0.2, 2.4],
  ['P', '22A 24 25 26 28 30 32 34 35 38 40 42 45 50', 0.3, 3.5],
  ['G', '25 30 35 40 45 50 55 60 65 70 75 80 85 90 95 100', 0.6, 3.1],
]

/**
 * Rows of AS568 from a chart, a secondary source: dash number, inside diameter and section in inches. Only the 0xx, 1xx and
 * 2xx rows: the chart's 3xx rows and its -200 contradict other sources.
 */
const AS568_ROWS: readonly (readonly [string, number, number])[] = [
  ['001', 0.029, 0.04],
  ['004', 0.07, 0.07],
  ['008', 0.176, 0.07],
  ['010', 0.239, 0.07],
  ['012', 0.364, 0.07],
  ['014', 0.489, 0.07],
  ['016', 0.614, 0.07],
  ['020', 0.864, 0.07],
  ['024', 1.114, 0.07],
  ['030', 1.614, 0.07],
  ['110', 0.362, 0.103],
  ['120', 0.987, 0.103],
  ['210', 0.734, 0.139],
  ['214', 0.984, 0.139],
  ['218', 1.234, 0.139],
  ['222', 1.484, 0.139],
  ['226', 1.984, 0.139],
  ['230', 2.484, 0.139],
]
