import type { Param } from '../../base/index.js'
import type { TorqueCodes } from '../../torque/index.js'
import type { Say, Texts } from '../catalogue.js'
import { writeUnitName } from '../phrases.js'
import { addArticle } from './words.js'

type BandEnds = { min: Param; max: Param }

function writeBand({ min, max }: BandEnds, say: Say): string {
  return `${say.quantity(min)} to ${say.quantity(max)}`
}

function writeError(percent: number, of: string, say: Say): string {
  return `±${say.number(percent)} % of ${of}`
}

function turnsText(min: string, max?: string): string {
  return max === undefined ? `at least ${min} turns` : `${min} to ${max} turns`
}

function writeAngle(
  { nominal, min, max }: { nominal?: string; min?: string; max?: string },
  say: Say,
): string {
  const writeDegrees = (value: string) => say.quantity({ value, unit: 'deg' })
  if (nominal !== undefined) return writeDegrees(nominal)
  if (min !== undefined && max !== undefined) return `${writeDegrees(min)} to ${writeDegrees(max)}`
  if (min !== undefined) return `at least ${writeDegrees(min)}`
  return max === undefined ? '–' : `at most ${writeDegrees(max)}`
}

function writeNearestMarks(below: Param | undefined, above: Param | undefined, say: Say): string {
  const marks = [below, above].flatMap((mark) => (mark === undefined ? [] : [say.quantity(mark)]))
  return marks.length === 0 ? '' : ` Nearest marks: ${say.list(marks)}.`
}

export const torqueTexts: Texts<TorqueCodes> = {
  'torque/setting-chosen': ({ setting, aim, from }, say) =>
    `Set ${say.quantity(setting)}: the mark inside the band nearest to ${from === 'nominal' ? 'the nominal' : 'its middle'}, ${say.quantity(aim)}.`,
  'torque/nearest-mark': ({ setting, nominal, percent }, say) => {
    const difference = Math.abs(percent) < 0.05 ? 'less than 0.1' : say.number(Math.abs(percent), 1)
    return `Set ${say.quantity(setting)}: the nearest mark, ${difference} % ${percent < 0 ? 'below' : 'above'} the manual's ${say.quantity(nominal)}.`
  },
  'torque/actual-torque-in-band': ({ trueBand, band: stated, percent, of }, say) =>
    `With ${writeError(percent, of, say)} the actual torque is ${writeBand(trueBand, say)}, inside ${writeBand(stated, say)}.`,
  'torque/actual-torque-out-of-band': ({ trueBand, band: stated, percent, of }, say) =>
    `With ${writeError(percent, of, say)} the actual torque may be ${writeBand(trueBand, say)}, outside ${writeBand(stated, say)}. Use a more accurate wrench.`,
  'torque/low-on-scale': ({ setting, highest, sharePercent }, say) =>
    `${say.quantity(setting)} is only ${say.number(sharePercent, 1)} % of full scale (${say.quantity(highest)}). Use a smaller wrench if possible.`,
  'torque/below-lowest-mark': ({ required, lowest }, say) =>
    `${say.quantity(required)} is below the wrench's lowest mark, ${say.quantity(lowest)}.`,
  'torque/below-fifth-of-scale': ({ required, from, highest }, say) =>
    `${say.quantity(required)} is below ${say.quantity(from)}, 20 % of full scale (${say.quantity(highest)}).`,
  'torque/below-declared-range': ({ required, from }, say) =>
    `${say.quantity(required)} is below the wrench's declared range, which starts at ${say.quantity(from)}.`,
  'torque/above-highest-mark': ({ required, highest }, say) =>
    `${say.quantity(required)} is above the wrench's highest mark, ${say.quantity(highest)}.`,
  'torque/above-declared-range': ({ required, to }, say) =>
    `${say.quantity(required)} is above the wrench's declared range, which ends at ${say.quantity(to)}.`,
  'torque/no-mark-in-band': ({ band: { min, max }, below, above, unit, error: wrenchError }, say) =>
    min.value === max.value
      ? `${
          wrenchError === undefined
            ? `The wrench has no mark at ${say.quantity(min)}.`
            : `No mark of the wrench's ${writeUnitName(unit, say)} scale is within the wrench's error (${writeError(wrenchError.percent, wrenchError.of, say)}) of ${say.quantity(min)}.`
        }${writeNearestMarks(below, above, say)} If a larger error is permitted, give it as the tolerance (tolerancePercent, --tolerance).`
      : `No mark of the wrench's ${writeUnitName(unit, say)} scale is inside ${writeBand({ min, max }, say)}.${writeNearestMarks(below, above, say)}`,
  'torque/resolution-too-coarse': ({ required, from, step }, say) =>
    `At ${say.quantity(required)} the display's step of ${say.quantity(step)} is more than a quarter of the permissible error. Use this wrench only from ${say.quantity(from)} up.`,
  'torque/error-as-large-as-setting': ({ required, error: size }, say) =>
    `The wrench's error is a percentage of full scale: ${say.quantity(size)}, as large as ${say.quantity(required)}. Use a smaller wrench.`,
  'torque/band-not-stated': ({ nominal }, say) =>
    `The manual prints ${say.quantity(nominal)} without a tolerance.`,
  'torque/tolerance-from-caller': ({ nominal, percent, band: result }, say) =>
    `The manual prints ${say.quantity(nominal)} without a tolerance; ±${say.number(percent)} % gives ${writeBand(result, say)}. This tolerance is yours, not the manual's.`,
  'torque/one-limit-only': ({ limit, which }, say) =>
    `The manual gives only a ${which} torque, ${say.quantity(limit)}: no setting can be chosen. See the manual.`,
  'torque/band-empty': ({ band: { min, max } }, say) =>
    `Minimum ${say.quantity(min)} exceeds maximum ${say.quantity(max)}. Correct the sheet.`,
  'torque/not-stated': () => 'The sheet states no torque. See the manual.',
  'torque/by-turns': ({ min, max }) =>
    `Tighten by turns, not by torque: ${turnsText(min, max)} past finger tight.`,
  'torque/angle-after-torque': ({ angle: size }, say) =>
    `After the torque, turn a further ${writeAngle(size, say)}. A torque wrench does not measure the angle.`,
  'torque/iso-figure-unknown': ({ type }) =>
    `The permissible error in ISO 6789 is not known for wrench type ${type}. Enter the maker's accuracy in per cent in the toolbox.`,
  'torque/stage': ({ stage, stages, reason }, say) =>
    `Stage ${say.number(stage)} of ${say.number(stages)}: ${say.reason(reason)}`,
  'torque/adaptor-changes-setting': ({ setting, torque, ratio }, say) =>
    `With the adaptor, set ${say.quantity(setting)} to get ${say.quantity(torque)} at the fastener (factor ${say.number(ratio, 4)}).`,
  'torque/extension-missing': () =>
    'The length of the adaptor is missing, so the setting cannot be corrected. Measure from the centre of the square drive to the centre of the fastener.',
  'torque/lever-length-missing': ({ extension }, say) =>
    `The wrench's length is missing, so the setting cannot be corrected for an adaptor of ${say.quantity(extension)}. Measure from the centre of the square drive to the middle of the grip.`,
  'torque/drive-does-not-reach': ({ wrench, required }) =>
    `The wrench has a ${wrench} square drive, the socket needs ${required}, and no drive adaptor in the toolbox connects them.`,
  'torque/usual-for-plug': ({ torque, band: usual, thread }, say) =>
    `${say.quantity(torque)} is usual for ${addArticle(thread)} plug (${writeBand(usual, say)}).`,
  'torque/unusual-for-plug': ({ torque, band: usual, thread }, say) =>
    `${say.quantity(torque)} is unusual for ${addArticle(thread)} plug (${writeBand(usual, say)}).`,
  'torque/unit-slip': ({ torque, factor, becomes, meant }, say) =>
    `${say.quantity(torque)} ${factor} would be ${say.quantity(becomes)}, a usual figure.${meant === undefined ? '' : ` Did you mean ${say.quantity({ value: torque.value, unit: meant })}?`} Check the manual.`,
  'torque/thread-missing': () =>
    'The sheet states no thread, so the torque cannot be compared with usual figures.',
  'torque/thread-unreadable': ({ thread }) =>
    `Unknown thread “${thread}”, so the torque cannot be compared with usual figures.`,
  'torque/swapped-torques-fit-better': ({ fill, drain, fillThread, drainThread }, say) =>
    `Fill plug ${fillThread} ${say.quantity(fill)}, drain plug ${drainThread} ${say.quantity(drain)}: if swapped, they would fit their threads better. Check the manual.`,
  'torque/plugs-not-swapped': ({ fill, drain }, say) =>
    `Fill plug ${say.quantity(fill)} and drain plug ${say.quantity(drain)} show no sign of being swapped.`,
  'torque/same-plug-figures': ({ fillThread, drainThread }) =>
    `Fill plug ${fillThread} and drain plug ${drainThread} usually get the same torque, so a swap would not show.`,
  'torque/class-unknown': ({ propertyClass }) => `The proof stress of class “${propertyClass}” is not known.`,
  'torque/class-not-for-size': ({ propertyClass, thread, from, to }) =>
    `The proof stress of class ${propertyClass} is known from ${from} to ${to}; ${thread} is not one of its sizes.`,
  'torque/class-not-for-thread': ({ propertyClass, thread }) =>
    `Class ${propertyClass} does not apply to ${thread}: one is metric, the other inch.`,
  'torque/proof-load': ({ stressMPa, area, load }, say) =>
    `Proof load ${say.quantity(load)}: ${say.number(stressMPa, 0)} MPa over ${say.number(area, 1)} mm².`,
  'torque/clamp-load': ({ torque, nutFactor, force }, say) =>
    `${say.quantity(torque)} with nut factor ${say.number(nutFactor)} gives a clamp load of about ${say.quantity(force)}.`,
  'torque/above-proof': ({ max, proof }, say) =>
    `With scatter, the clamp load may reach ${say.quantity(max)}, above the proof load of ${say.quantity(proof)}.`,
  'torque/below-proof': ({ max, proof }, say) =>
    `Even with scatter, the clamp load is at most ${say.quantity(max)}, not above the proof load of ${say.quantity(proof)}.`,
  'torque/cycles-used-up': ({ used, limit }, say) =>
    `${say.number(used)} of ${say.number(limit)} cycles used: send the wrench for calibration.`,
  'torque/cycles-left': ({ used, limit }, say) => `${say.number(used)} of ${say.number(limit)} cycles used.`,
  'torque/cycles-not-counted': ({ limit }, say) =>
    `The cycles of this wrench are not counted (limit ${say.number(limit)}); the calendar limit decides.`,
  'torque/calibration-date-missing': () =>
    'The date of the last calibration is missing. Enter it in the toolbox.',
  'torque/by-torque': () => 'The sheet states a torque, not turns.',
  'torque/turns': ({ min, max }) => `Tighten ${turnsText(min, max)} past finger tight.`,
  'torque/turns-without-maximum': ({ min }) =>
    `Tighten at least ${min} turns past finger tight; the manual gives no maximum.`,
  'torque/turns-correct': ({ turns: done, min, max }, say) =>
    `${say.number(done)} turns: correct (${turnsText(min, max)}).`,
  'torque/turns-too-few': ({ turns: done, min }, say) =>
    `${say.number(done)} turns: too few; the manual says at least ${min}.`,
  'torque/turns-too-many': ({ turns: done, max }, say) =>
    `${say.number(done)} turns: too many; the manual says at most ${max}. Check for a crack before using it again.`,
  'torque/setting-not-a-mark': ({ set, below, above }, say) =>
    `This wrench has no mark at ${say.quantity(set)}.${writeNearestMarks(below, above, say)}`,
}
