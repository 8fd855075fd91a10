import { type Reason, requireObject } from '../base/index.js'
import type { TorqueUnit } from '../quantity/index.js'
import {
  chooseSingleFigure,
  findNearestDouble,
  multiply,
  readBandAsPrinted,
  requireBand,
  TORQUE_FACTORS,
} from '../quantity/index.js'
import type { StatedValue } from '../spec/index.js'
import type { PlugHousing, PlugTorqueBand } from '../thread/index.js'
import { torqueReason } from './codes.js'
import { findNearestTorque, findTorqueRatio } from './exactTorque.js'
import { findPlugBand } from './findTorqueSlip.js'

export interface PlugTorque {
  readonly torque: StatedValue<TorqueUnit>
  /** Designation as printed; absent: not stated. */
  readonly thread?: string
  readonly housing: PlugHousing
}

export interface SwapVerdict {
  readonly verdict: 'looks swapped' | 'no sign' | 'cannot tell'
  readonly reasons: readonly Reason[]
}

const MIN_IMPROVEMENT = 1.5

/** The geometric mean of the lowest and the highest published figure, N·m. */
function calculateUsualTorque(band: PlugTorqueBand & { verdict: 'band' }): number {
  const figures = band.published.map(({ value }) => value)
  return Math.sqrt(Math.min(...figures) * Math.max(...figures))
}

/** The larger torque divided by the smaller. */
function calculateDeviationRatio(torque: number, usual: number): number {
  return torque > usual ? torque / usual : usual / torque
}

/**
 * Checks whether the torques of a gearcase's fill and drain plugs were swapped. Only for plugs with different threads or
 * housings.
 *
 * Source: the tables of {@link findPlugTorqueBand}. The factor of 1.5 is a house rule: correct manuals differ from the
 * tables by about that much.
 */
export function checkPlugsSwapped(fill: PlugTorque, drain: PlugTorque): SwapVerdict {
  const [fillPlug, drainPlug] = [readPlug('fill', fill), readPlug('drain', drain)]
  const missing = [fillPlug, drainPlug].flatMap(({ band }) =>
    band.verdict === 'cannot tell' ? band.reasons : [],
  )
  if (fillPlug.band.verdict === 'cannot tell' || drainPlug.band.verdict === 'cannot tell')
    return { verdict: 'cannot tell', reasons: missing }
  const usualFill = calculateUsualTorque(fillPlug.band)
  const usualDrain = calculateUsualTorque(drainPlug.band)
  const threads = { fillThread: fillPlug.designation, drainThread: drainPlug.designation }
  if (usualFill === usualDrain)
    return { verdict: 'cannot tell', reasons: [torqueReason('torque/same-plug-figures', threads)] }
  const printedDeviation =
    calculateDeviationRatio(fillPlug.value, usualFill) * calculateDeviationRatio(drainPlug.value, usualDrain)
  const swappedDeviation =
    calculateDeviationRatio(drainPlug.value, usualFill) * calculateDeviationRatio(fillPlug.value, usualDrain)
  const torques = { fill: fillPlug.asQuantity, drain: drainPlug.asQuantity }
  if (printedDeviation / swappedDeviation >= MIN_IMPROVEMENT)
    return {
      verdict: 'looks swapped',
      reasons: [torqueReason('torque/swapped-torques-fit-better', { ...torques, ...threads })],
    }
  return { verdict: 'no sign', reasons: [torqueReason('torque/plugs-not-swapped', torques)] }
}

function readPlug(name: string, plug: PlugTorque) {
  requireObject(name, plug)
  requireBand(`${name}.torque`, plug.torque, TORQUE_FACTORS)
  const { unit } = plug.torque
  const figure = chooseSingleFigure(readBandAsPrinted(plug.torque))
  return {
    ...findPlugBand(plug.thread, plug.housing),
    value: findNearestDouble(multiply(figure, findTorqueRatio(unit, 'N.m'))),
    asQuantity: findNearestTorque(figure, unit),
  }
}
