import type { Tightening, TorqueWrench } from '../spec/index.js'
import { judgeWrench } from './judgeWrench.js'
import { requireTightening, requireWrench, requireWrenchOptions } from './requireInput.js'
import type { WrenchOptions, WrenchVerdict } from './wrenchVerdict.js'

/**
 * Checks whether a torque wrench covers a tightening, and finds the mark to set. To choose among several
 * wrenches, use {@link chooseWrenches}.
 *
 * Marks are at lowest + n × step. Among the marks inside the stated band and the usable range, it prefers a
 * scale in the sheet's unit, then the mark nearest to the nominal (the middle of two limits); ties go to the
 * lower torque, then to the order of the scales. For a nominal without tolerance it takes the nearest mark of
 * all scales, if that is within the wrench's permissible error. The usable range is the maker's declared
 * range; without one it starts at the lowest mark (2017) or at 20 % of full scale (2003). The true torque at
 * setting S with error a of reading is S/(1+a) … S/(1−a); with error e of full scale M it is S − e·M … S +
 * e·M. The true band decides only between `fits` and `fits with care`.
 *
 * @param wrench - as in a toolbox; a number means its shortest decimal, so that comparisons are exact. Values
 *   must be from 0 to 1e9, percentages above 0 and below 100
 * @param tightening - as in a sheet, resolved for one machine; the first printed figure of each torque is
 *   used
 * @param options - `iso6789` is required; `tolerancePercent` is a tolerance for nominals without one, and the
 *   reasons state it; `adaptor` corrects the setting for a crowfoot, and needs the wrench's `leverLength`
 * @returns `fits`, `fits with care` (the true band exceeds the stated band, the nominal has no tolerance, or the setting
 *   is below 20 % of full scale under 2017), `does not fit` or `cannot tell`, with every reason; if it fits, the mark and
 *   the true band (nearest doubles)
 * @throws TypeError or RangeError naming the argument, for invalid documents or options
 *
 * Source: ISO 6789:2003 and ISO 6789-1:2017 clause 5.1.3, both as quoted by torque-tool makers (the standard itself was
 * not read). House rules: the nearest mark, ties, and `fits with care`. A mark outside the band is never set,
 * and an error that can leave the band is reported.
 *
 * @example
 * ```ts
 * import { checkWrench } from 'drivetrain-service/v1/torque'
 * const wrench = {
 *   name: 'Half-inch click wrench', type: 'click', drive: '1/2 in',
 *   scales: [{ unit: 'N.m', lowest: 10, highest: 100, graduation: 1 }], accuracy: { kind: 'ISO 6789' },
 * } as const
 * const plug = {
 *   kind: 'torque', threadCondition: 'dry',
 *   torque: { kind: 'nominal with tolerance', value: '40', minus: '4', plus: '4', unit: 'N.m' },
 * } as const
 * // Which mark, and between which torques is the true one if the wrench is ±4 %?
 * const { verdict, setting } = checkWrench(wrench, plug, { iso6789: '2017' })
 * verdict // => 'fits'
 * setting?.setting.value // => 40
 * setting?.trueBand.newtonMetres.min.value.toFixed(2) // => '38.46'
 * setting?.trueBand.newtonMetres.max.value.toFixed(2) // => '41.67'
 * ```
 */
export function checkWrench(
  wrench: TorqueWrench,
  tightening: Tightening,
  options: WrenchOptions,
): WrenchVerdict {
  requireWrench('wrench', wrench)
  requireTightening('tightening', tightening)
  requireWrenchOptions(options)
  return judgeWrench(wrench, tightening, options)
}
