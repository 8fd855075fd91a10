import { type Reason, requireObject, requireOneOf } from '../base/index.js'
import { convert, type Quantity, type TemperatureUnit, UNITS_BY_MEASURE } from '../quantity/index.js'
import type { Elastomer } from '../spec/index.js'
import { type SealCodes, sealReason } from './codes.js'

type SealMedium = 'mineral gear oil' | 'hypoid EP oil'

export interface MaterialVerdict {
  /**
   * `ask`: poor, needs a special compound, or has unknown limits; `cannot tell`: the rubber family is not
   * stated.
   */
  readonly verdict: 'yes' | 'no' | 'ask' | 'cannot tell'
  readonly reasons: readonly Reason<keyof SealCodes>[]
}

interface Row {
  /** Resistance to oil and grease, from A (best) to E (not recommended). */
  readonly oil: 'A' | 'B' | 'C' | 'E'
  readonly min: number
  readonly max: number
  /** Temperature limits of special compounds. */
  readonly specialMin?: number
  readonly specialMax?: number
}

/**
 * Maximum continuous temperature in hypoid EP oil, °C, for about 10,000 h of operation: a seal maker's chart,
 * as quoted in a secondary source (chart not seen). Above it each compound must be tested. General tables
 * allow more.
 */
const HYPOID_LIMITS: Readonly<Partial<Record<Elastomer, number>>> = { NBR: 80, HNBR: 120, FKM: 150 }

/** Temperatures in °C: a seal maker's table, from a secondary source; without ACM. */
const ELASTOMER_ROWS: Readonly<Partial<Record<Elastomer, Row>>> = {
  NBR: { oil: 'B', min: -30, max: 100, specialMin: -50, specialMax: 120 },
  HNBR: { oil: 'B', min: -30, max: 150, specialMin: -40 },
  EPDM: { oil: 'E', min: -45, max: 130 },
  VMQ: { oil: 'C', min: -55, max: 200, specialMax: 250 },
  FVMQ: { oil: 'B', min: -55, max: 175 },
  FKM: { oil: 'A', min: -15, max: 200, specialMin: -35 },
  AU: { oil: 'B', min: -40, max: 100 },
  CR: { oil: 'C', min: -40, max: 100, specialMin: -50 },
  FFKM: { oil: 'A', min: -15, max: 260, specialMax: 330 },
}

const ELASTOMERS: readonly Elastomer[] = [
  'NBR',
  'HNBR',
  'FKM',
  'ACM',
  'EPDM',
  'VMQ',
  'FVMQ',
  'AU',
  'CR',
  'FFKM',
  'not stated',
]

/**
 * Judges whether a rubber family withstands gear oil at a temperature, limits included; ask the ring's maker about its
 * compound. In hypoid EP oil, the temperature is the continuous one. Source: a seal maker's table of elastomers and
 * another's chart for hypoid oils, both from secondary sources. ACM gives `ask`, since we know its suitability only
 * from memory.
 */
export function judgeSealMaterial(
  material: Elastomer,
  medium: SealMedium,
  temperature: Quantity<TemperatureUnit>,
): MaterialVerdict {
  requireOneOf('material', material, ELASTOMERS)
  requireOneOf('medium', medium, ['mineral gear oil', 'hypoid EP oil'])
  requireObject('temperature', temperature)
  requireOneOf('temperature.unit', temperature.unit, UNITS_BY_MEASURE.temperature)
  const celsius = convert(temperature, 'degC').value
  if (material === 'not stated')
    return { verdict: 'cannot tell', reasons: [sealReason('seal/material-not-stated', {})] }
  const row = ELASTOMER_ROWS[material]
  if (row === undefined) {
    return { verdict: 'ask', reasons: [sealReason('seal/material-limits-not-known', { material })] }
  }
  if (row.oil === 'E') {
    return { verdict: 'no', reasons: [sealReason('seal/material-unsuitable', { material, medium })] }
  }
  const makeTemperature = (value: number) => ({ value, unit: 'degC' as const })
  const widestRange = { min: row.specialMin ?? row.min, max: row.specialMax ?? row.max }
  const statedRange = { min: makeTemperature(row.min), max: makeTemperature(row.max) }
  const maxContinuous = medium === 'hypoid EP oil' ? HYPOID_LIMITS[material] : undefined
  if (maxContinuous !== undefined && celsius > maxContinuous) {
    const params = { material, medium, temperature, max: makeTemperature(maxContinuous) }
    const reasons = [sealReason('seal/above-continuous-limit', params)]
    return { verdict: celsius > widestRange.max ? 'no' : 'ask', reasons }
  }
  if (celsius < widestRange.min || celsius > widestRange.max) {
    const params = {
      material,
      temperature,
      min: makeTemperature(widestRange.min),
      max: makeTemperature(widestRange.max),
    }
    return { verdict: 'no', reasons: [sealReason('seal/temperature-outside-material', params)] }
  }
  const reasons: Reason<keyof SealCodes>[] = []
  if (celsius < row.min || celsius > row.max) {
    const params = { material, temperature, ...statedRange }
    reasons.push(sealReason('seal/temperature-needs-special-compound', params))
  }
  if (row.oil === 'C') reasons.push(sealReason('seal/material-poor', { material, medium }))
  return reasons.length > 0
    ? { verdict: 'ask', reasons }
    : {
        verdict: 'yes',
        reasons: [sealReason('seal/material-suitable', { material, medium, ...statedRange })],
      }
}
