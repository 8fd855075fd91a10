import { type Reason, requireKnownKeys, requireObject, requireOneOf } from '../base/index.js'
import { compareQuantities, convertAmount, type Quantity, type VolumeUnit } from '../quantity/index.js'
import type { FunnelAndHose } from '../spec/index.js'
import { type FillCodes, fillReason } from './codes.js'
import { type HoseFlow, KINETIC_FACTOR } from './hoseFlow.js'
import { requireAmount } from './volumeAmount.js'

export interface PourInput {
  readonly funnel: FunnelAndHose['funnel']
  readonly hose: Required<FunnelAndHose['hose']>
  /** The viscosity of the oil at the temperature of pouring. */
  readonly kinematicViscosity: Quantity<'mm2/s'>
  readonly volume: Quantity<VolumeUnit>
}

/** House rule: no workshop funnel or hose is outside these limits, and inside them every result is finite. */
const MIN_LENGTH = { value: 0.0001, unit: 'm' } as const
const MAX_LENGTH = { value: 100, unit: 'm' } as const
const MIN_VISCOSITY = { value: 0.1, unit: 'mm2/s' } as const
const MAX_VISCOSITY = { value: 2e7, unit: 'mm2/s' } as const
const MIN_VOLUME = { value: 1e-6, unit: 'L' } as const
const MAX_VOLUME = { value: 1000, unit: 'L' } as const

/** The input in metres and m²/s, or a reason if a figure is outside its range; misuse throws. */
export function readPourInput(
  input: PourInput,
): { flow: HoseFlow; volume: number } | Reason<keyof FillCodes> {
  requireKnownKeys('input', input, ['funnel', 'hose', 'kinematicViscosity', 'volume'])
  const { funnel, hose, kinematicViscosity, volume } = input
  requireObject('funnel', funnel)
  requireObject('hose', hose)
  requireOneOf('funnel.shape', funnel.shape, ['cylinder', 'cone'])
  const lengths = {
    'funnel.diameter': funnel.diameter,
    'funnel.depth': funnel.depth,
    'hose.bore': hose.bore,
    'hose.length': hose.length,
  }
  for (const [name, length] of Object.entries(lengths)) requireAmount(name, length, 'length')
  requireAmount('hose.drop', hose.drop, 'length')
  requireAmount('kinematicViscosity', kinematicViscosity, 'kinematicViscosity')
  requireAmount('volume', volume, 'volume')
  const lengthRange = { min: MIN_LENGTH, max: MAX_LENGTH }
  for (const [name, length] of Object.entries({ ...lengths, 'hose.drop': hose.drop })) {
    const isLevel = name === 'hose.drop' && length.value === 0
    if (!isLevel && isOutside(length, lengthRange)) return makeRangeReason(name, length, lengthRange)
  }
  const viscosityRange = { min: MIN_VISCOSITY, max: MAX_VISCOSITY }
  if (isOutside(kinematicViscosity, viscosityRange)) {
    return makeRangeReason('kinematicViscosity', kinematicViscosity, viscosityRange)
  }
  const volumeRange = { min: MIN_VOLUME, max: MAX_VOLUME }
  if (isOutside(volume, volumeRange)) return makeRangeReason('volume', volume, volumeRange)
  const toMetres = (length: Quantity) => convertAmount(length, 'm').value
  const bore = toMetres(hose.bore)
  const topDiameter = toMetres(funnel.diameter)
  return {
    volume: convertAmount(volume, 'L').value / 1000,
    flow: {
      topDiameter,
      bottomDiameter: funnel.shape === 'cone' ? bore : topDiameter,
      depth: toMetres(funnel.depth),
      bore,
      length: toMetres(hose.length),
      drop: toMetres(hose.drop),
      viscosity: kinematicViscosity.value * 1e-6,
      kineticFactor: KINETIC_FACTOR,
    },
  }
}

interface Limits {
  readonly min: Quantity
  readonly max: Quantity
}

function isOutside(quantity: Quantity, { min, max }: Limits): boolean {
  return compareQuantities(quantity, min) < 0 || compareQuantities(quantity, max) > 0
}

function makeRangeReason(name: string, given: Quantity, limits: Limits) {
  return fillReason('fill/measure-outside-range', { name, given, ...limits })
}
