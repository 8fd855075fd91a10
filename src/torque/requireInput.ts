import { quoteValue, requireKnownKeys, requireNumber, requireObject, requireOneOf } from '../base/index.js'
import {
  ANGLE_FACTORS,
  isFigure,
  LENGTH_FACTORS,
  requireBand,
  requireQuantityOf,
  requireUnitOf,
  TORQUE_FACTORS,
} from '../quantity/index.js'
import type { Tightening, TorqueWrench } from '../spec/index.js'
import type { WrenchOptions } from './wrenchVerdict.js'

const PERCENT_RANGE = { above: 0, below: 100 }

export function requireDesignation(name: string, value: unknown): void {
  if (typeof value !== 'string')
    throw new TypeError(`${name} must be a designation such as '1/2 in', got ${quoteValue(value)}`)
}

export function requireWrench(name: string, wrench: TorqueWrench): void {
  requireObject(name, wrench)
  const { type, scales, declaredRange, accuracy } = wrench
  requireOneOf(`${name}.type`, type, ['click', 'dial', 'beam', 'electronic'])
  if (!Array.isArray(scales) || scales.length === 0)
    throw new TypeError(`${name}.scales must be a list with at least one scale, got ${quoteValue(scales)}`)
  for (const [at, scale] of wrench.scales.entries()) {
    const scaleName = `${name}.scales[${at}]`
    requireObject(scaleName, scale)
    requireUnitOf(TORQUE_FACTORS, `${scaleName}.unit`, scale.unit)
    requireNumber(`${scaleName}.lowest`, scale.lowest, { min: 0 })
    requireNumber(`${scaleName}.graduation`, scale.graduation, { above: 0 })
    requireNumber(`${scaleName}.highest`, scale.highest, { above: 0, min: scale.lowest })
  }
  if (declaredRange !== undefined) {
    requireQuantityOf(TORQUE_FACTORS, `${name}.declaredRange.min`, declaredRange.min, { min: 0 })
    requireQuantityOf(TORQUE_FACTORS, `${name}.declaredRange.max`, declaredRange.max, { above: 0 })
  }
  requireObject(`${name}.accuracy`, accuracy)
  requireOneOf(`${name}.accuracy.kind`, accuracy.kind, ['ISO 6789', 'of reading', 'of full scale'])
  if (accuracy.kind !== 'ISO 6789') requireNumber(`${name}.accuracy.percent`, accuracy.percent, PERCENT_RANGE)
}

/** Throws if the value is not a tightening of a sheet. */
export function requireTightening(name: string, tightening: Tightening): void {
  requireObject(name, tightening)
  requireOneOf(`${name}.kind`, tightening.kind, ['torque', 'turns', 'not stated'])
  if (tightening.kind === 'turns')
    for (const key of ['min', 'max'] as const) {
      const figure = tightening[key]
      if (!isFigure(figure) && (key === 'min' || figure !== undefined))
        throw new TypeError(`${name}.${key} must be a figure such as '12.5', got ${quoteValue(figure)}`)
    }
  if (tightening.kind !== 'torque') return
  requireBand(`${name}.torque`, tightening.torque, TORQUE_FACTORS)
  for (const [at, stage] of (tightening.stages ?? []).entries())
    requireBand(`${name}.stages[${at}]`, stage, TORQUE_FACTORS)
}

/** Throws if the options are not those of {@link checkWrench} or {@link chooseWrenches}. */
export function requireWrenchOptions(options: WrenchOptions, more: 'adaptor' | 'adaptors' = 'adaptor'): void {
  requireKnownKeys('options', options, ['iso6789', 'tolerancePercent', more])
  const { iso6789, tolerancePercent, adaptor } = options
  requireOneOf('options.iso6789', iso6789, ['2017', '2003'])
  if (tolerancePercent !== undefined)
    requireNumber('options.tolerancePercent', tolerancePercent, PERCENT_RANGE)
  if (adaptor === undefined) return
  requireObject('options.adaptor', adaptor)
  const { kind = 'crowfoot', extension, angle } = adaptor
  requireOneOf('options.adaptor.kind', kind, ['crowfoot', 'straight extension', 'drive adaptor'])
  if (extension !== undefined)
    requireQuantityOf(LENGTH_FACTORS, 'options.adaptor.extension', extension, { min: 0 })
  if (angle !== undefined)
    requireQuantityOf(ANGLE_FACTORS, 'options.adaptor.angle', angle, { min: 0, max: 180 })
}
