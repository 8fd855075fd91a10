import type { Param } from '../../base/index.js'
import type { TorqueCodes } from '../../torque/index.js'
import type { Say, Texts } from '../catalogue.js'

type Ends = { min: Param; max: Param }

function band({ min, max }: Ends, say: Say): string {
  return `${say.quantity(min)} to ${say.quantity(max)}`
}

function error(percent: number, of: string, say: Say): string {
  return `±${say.number(percent)} % of ${of}`
}

function turns(min: string, max?: string): string {
  return max === undefined ? `at least ${min} turns` : `${min} to ${max} turns`
}

function angle({ nominal, min, max }: { nominal?: string; min?: string; max?: string }, say: Say): string {
  const degrees = (value: string) => say.quantity({ value, unit: 'deg' })
  if (nominal !== undefined) return degrees(nominal)
  if (min !== undefined && max !== undefined) return `${degrees(min)} to ${degrees(max)}`
  if (min !== undefined) return `at least ${degrees(min)}`
  return max === undefined ? '–' : `at most ${degrees(max)}`
}

function beside(below: Param | undefined, above: Param | undefined, say: Say): string {
  const marks = [below, above].flatMap((mark) => (mark === undefined ? [] : [say.quantity(mark)]))
  return marks.length === 0 ? '' : ` Marks beside it: ${say.list(marks)}.`
}

export const torqueTexts: Texts<TorqueCodes> = {
  'torque/setting-chosen': ({ setting, aim, from }, say) =>
    `Set ${say.quantity(setting)}: the mark inside the band nearest to ${from === 'nominal' ? 'the nominal' : 'its middle'}, ${say.quantity(aim)}.`,
  'torque/true-band-inside': ({ trueBand, band: stated, percent, of }, say) =>
    `With ${error(percent, of, say)} the true torque is ${band(trueBand, say)}, inside ${band(stated, say)}.`,
  'torque/true-band-leaves': ({ trueBand, band: stated, percent, of }, say) =>
    `With ${error(percent, of, say)} the true torque may be ${band(trueBand, say)}, which leaves ${band(stated, say)}. A more accurate wrench would stay inside.`,
  'torque/low-on-scale': ({ setting, highest, sharePercent }, say) =>
    `${say.quantity(setting)} is only ${say.number(sharePercent, 1)} % of full scale (${say.quantity(highest)}). A smaller wrench would be better.`,
  'torque/below-lowest-mark': ({ wanted, lowest }, say) =>
    `${say.quantity(wanted)} is below the wrench's lowest mark, ${say.quantity(lowest)}.`,
  'torque/below-fifth-of-scale': ({ wanted, from, highest }, say) =>
    `${say.quantity(wanted)} is below ${say.quantity(from)}, 20 % of full scale (${say.quantity(highest)}).`,
  'torque/below-declared-range': ({ wanted, from }, say) =>
    `${say.quantity(wanted)} is below the range that the wrench's maker declares, which starts at ${say.quantity(from)}.`,
  'torque/above-highest-mark': ({ wanted, highest }, say) =>
    `${say.quantity(wanted)} is above the wrench's highest mark, ${say.quantity(highest)}.`,
  'torque/above-declared-range': ({ wanted, to }, say) =>
    `${say.quantity(wanted)} is above the range that the wrench's maker declares, which ends at ${say.quantity(to)}.`,
  'torque/no-mark-inside': ({ band: { min, max }, below, above, unit }, say) =>
    min.value === max.value
      ? `No mark of the wrench stands at ${say.quantity(min)}.${beside(below, above, say)}`
      : `No mark of the wrench's ${unitName(unit, say)} scale lies inside ${band({ min, max }, say)}.${beside(below, above, say)}`,
  'torque/resolution-too-coarse': ({ wanted, from, step }, say) =>
    `At ${say.quantity(wanted)} the display's step of ${say.quantity(step)} is more than a quarter of the permissible error; it is fine enough from ${say.quantity(from)} up.`,
  'torque/error-as-large-as-setting': ({ wanted, error: size }, say) =>
    `At ${say.quantity(wanted)} the wrench's error of full scale, ${say.quantity(size)}, is as large as the torque itself.`,
  'torque/band-not-stated': ({ nominal }, say) =>
    `The manual prints ${say.quantity(nominal)} without a tolerance: band not stated.`,
  'torque/tolerance-from-caller': ({ nominal, percent, band: made }, say) =>
    `The manual prints ${say.quantity(nominal)} without a tolerance; ±${say.number(percent)} % was allowed for this check: ${band(made, say)}. It is not the manual's.`,
  'torque/one-limit-only': ({ limit, which }, say) =>
    `The manual gives only ${which === 'least' ? 'a least' : 'a most'} torque, ${say.quantity(limit)}: no setting can be chosen. See the manual.`,
  'torque/band-empty': ({ band: { min, max } }, say) =>
    `The stated band is empty: its least, ${say.quantity(min)}, is above its most, ${say.quantity(max)}. Mend the sheet.`,
  'torque/not-stated': () => 'Torque not stated: see the manual.',
  'torque/by-turns': ({ min, max }) =>
    `Tightened by turns, not by torque: ${turns(min, max)} past finger tight.`,
  'torque/then-angle': ({ angle: size }, say) =>
    `After the torque turn on by ${angle(size, say)}; a torque wrench does not measure that.`,
  'torque/iso-figure-unknown': ({ type }) =>
    `The permissible error of a ${type} wrench by ISO 6789 is not known here. Write its maker's accuracy in per cent into the toolbox.`,
  'torque/stage': ({ stage, stages, reason }, say) =>
    `Stage ${say.number(stage)} of ${say.number(stages)}: ${say.reason(reason)}`,
  'torque/adaptor-changes-setting': ({ setting, torque, ratio }, say) =>
    `With the adaptor the wrench reads ${say.number(ratio, 4)} of the torque: ${say.quantity(setting)} on the scale are ${say.quantity(torque)} at the fastener.`,
  'torque/extension-missing': () =>
    'The extension of the adaptor is missing, so the setting cannot be corrected. Measure from the centre of the square to the centre of the fastener.',
  'torque/lever-length-missing': ({ extension }, say) =>
    `The wrench's lever length is missing: without it an adaptor of ${say.quantity(extension)} cannot be allowed for. Measure from the centre of the square to where the hand pulls.`,
  'torque/drive-does-not-reach': ({ wrench, wanted }) =>
    `The wrench's ${wrench} square does not reach a ${wanted} socket with one drive adaptor of this toolbox.`,
  'torque/inside-plug-band': ({ torque, band: usual, thread }, say) =>
    `${say.quantity(torque)} is usual for a plug of ${thread} (${band(usual, say)}).`,
  'torque/outside-plug-band': ({ torque, band: usual, thread }, say) =>
    `${say.quantity(torque)} is unusual for a plug of ${thread} (${band(usual, say)}).`,
  'torque/slip': ({ torque, factor, becomes, meant }, say) =>
    `${say.quantity(torque)} ${factor} would be ${say.quantity(becomes)}, a usual figure${meant === undefined ? '' : `: perhaps ${say.quantity({ value: torque.value, unit: meant })} was meant`}. Check the manual.`,
  'torque/thread-missing': () => 'The thread is not stated, so the torque cannot be compared with others.',
  'torque/thread-unreadable': ({ thread }) =>
    `The thread “${thread}” cannot be read, so the torque cannot be compared with others.`,
  'torque/swapped-fits-better': ({ fill, drain, fillThread, drainThread }, say) =>
    `Fill plug ${fillThread} ${say.quantity(fill)}, drain plug ${drainThread} ${say.quantity(drain)}: exchanged they would fit their threads better. Check the manual.`,
  'torque/not-swapped': ({ fill, drain }, say) =>
    `Fill plug ${say.quantity(fill)} and drain plug ${say.quantity(drain)} show no sign of being exchanged.`,
  'torque/same-plug-figures': ({ fillThread, drainThread }) =>
    `Fill plug ${fillThread} and drain plug ${drainThread} usually get the same torque, so an exchange would not show.`,
  'torque/class-unknown': ({ propertyClass }) => `No proof stress was read for class “${propertyClass}”.`,
  'torque/class-not-for-size': ({ propertyClass, thread, from, to }) =>
    `Class ${propertyClass} is known here from ${from} to ${to}; ${thread} is not among its sizes.`,
  'torque/class-not-for-thread': ({ propertyClass, thread }) =>
    `Class ${propertyClass} belongs to the other system of threads than ${thread}.`,
  'torque/proof-load': ({ stressMPa, area, load }, say) =>
    `Proof load ${say.quantity(load)}: ${say.number(stressMPa, 0)} MPa over ${say.number(area, 1)} mm².`,
  'torque/clamp-load': ({ torque, nutFactor, force }, say) =>
    `${say.quantity(torque)} with K ${say.number(nutFactor)} makes a clamp load of about ${say.quantity(force)}.`,
  'torque/above-proof': ({ most, proof }, say) =>
    `With the scatter the clamp load may reach ${say.quantity(most)}, above the proof load of ${say.quantity(proof)}.`,
  'torque/below-proof': ({ most, proof }, say) =>
    `Even with the scatter the clamp load stays at ${say.quantity(most)}, not above the proof load of ${say.quantity(proof)}.`,
  'torque/cycles-run-out': ({ used, limit }, say) =>
    `${say.number(used)} of ${say.number(limit)} cycles are used: send the wrench for calibration.`,
  'torque/cycles-left': ({ used, limit }, say) =>
    `${say.number(used)} of ${say.number(limit)} cycles are used.`,
  'torque/cycles-not-kept': ({ limit }, say) =>
    `Nobody counts this wrench's cycles (limit ${say.number(limit)}); the months decide.`,
  'torque/calibration-date-missing': () =>
    'The date of the last calibration is missing. Write it into the toolbox.',
  'torque/by-torque': () => 'Tightened by torque, not by turns.',
  'torque/turns': ({ min, max }) => `Tighten ${turns(min, max)} past finger tight.`,
  'torque/turns-open': ({ min }) =>
    `Tighten at least ${min} turns past finger tight; the manual gives no most.`,
  'torque/turns-inside': ({ turns: done, min, max }, say) =>
    `${say.number(done)} turns are right (${turns(min, max)}).`,
  'torque/turns-too-few': ({ turns: done, min }, say) =>
    `${say.number(done)} turns are too few: the manual says at least ${min}.`,
  'torque/turns-too-many': ({ turns: done, max }, say) =>
    `${say.number(done)} turns are too many: the manual says at most ${max}. Look for a crack before using it again.`,
  'torque/set-inside': ({ set, band: stated }, say) => `${say.quantity(set)} is inside ${band(stated, say)}.`,
  'torque/set-outside': ({ set, band: stated }, say) =>
    `${say.quantity(set)} is outside ${band(stated, say)}. Do it again by the manual.`,
  'torque/set-not-a-mark': ({ set, below, above }, say) =>
    `${say.quantity(set)} is no mark of this wrench.${beside(below, above, say)}`,
}

/** A scale's unit as its symbol: what stands behind the number of a quantity. */
function unitName(unit: string, say: Say): string {
  return say.quantity({ value: '1', unit }).replace(/^1\s*/, '')
}
