import type { RoomRuleCodes } from '../../../rules/index.js'
import type { Texts } from '../../catalogue.js'
import { meantWords } from './meantWords.js'

/** Rules on logs, toolboxes and stocks. */
export const workshopRuleTexts: Texts<RoomRuleCodes<'log' | 'toolbox' | 'stock'>> = {
  'log/date-in-the-future': ({ date, today }, say) =>
    `${say.date(date)} is after today, ${say.date(today)}. Check year and month.`,
  'log/pause-reversed': ({ from, to }, say) =>
    `The pause ends on ${say.date(to)}, before it starts on ${say.date(from)}.`,
  'log/record-of-other-machine': ({ machine, log, record }) =>
    `The record “${record}” belongs to the machine “${machine}”, but this is the log of “${log}”.`,
  'log/unknown-part': ({ id, ...names }, say) => `The sheet has no “${id}” here.${meantWords(names, say)}`,
  'log/used-before-commissioned': ({ date, commissioned }, say) =>
    `${say.date(date)} is before the first use on ${say.date(commissioned)}. Correct one of the two dates.`,
  'log/variant-contradicted': ({ variant, candidates }, say) => {
    const others =
      candidates.length === 0
        ? 'they fit no variant of the sheet'
        : `they fit ${say.list(candidates.map((one) => `“${one}”`))}`
    return variant === undefined
      ? 'Serial, model year and market fit no variant of the sheet. Check the plate.'
      : `Serial, model year and market exclude the stated variant “${variant}”: ${others}. Check the plate.`
  },
  'toolbox/implausible-accuracy': ({ wrench, percent }, say) =>
    `${wrench}: ${say.number(percent)} % is implausible for a torque wrench. Check its certificate.`,
  'toolbox/calibration-in-the-future': ({ wrench, date, today }, say) =>
    `${wrench} was calibrated on ${say.date(date)}, after today, ${say.date(today)}. Check the certificate.`,
  'toolbox/declared-range-reversed': ({ wrench, min, max }, say) =>
    `${wrench}: the declared range ends at ${say.quantity(max)}, at or below its start of ${say.quantity(min)}.`,
  'toolbox/scale-wrong': ({ wrench, lowest, highest, graduation, unit }, say) =>
    `${wrench}: a scale from ${say.number(lowest)} to ${say.quantity({ value: highest, unit })} in steps of ${say.number(graduation)} is impossible.`,
  'toolbox/scales-disagree': ({ wrench, first, other }, say) =>
    `${wrench}: one scale ends at ${say.quantity(first)} and the other at ${say.quantity(other)}. Scales of one wrench end at the same torque; check the units.`,
  'toolbox/vessel-graduation': ({ vessel, size, mark }, say) =>
    `${vessel}: graduation or lowest mark ${say.quantity(mark)} exceeds the capacity of ${say.quantity(size)}.`,
  'stock/opened-larger-than-size': ({ container, opened, size }, say) =>
    `${container}: ${say.quantity(opened)} left in a container of ${say.quantity(size)}. List full containers separately, or check the unit.`,
  'stock/viscosities-swapped': ({ container, kv40, kv100 }, say) =>
    `${container}: ${say.quantity(kv100)} at 100 °C is not below ${say.quantity(kv40)} at 40 °C. Oil thins as it warms; the two may be exchanged.`,
}
