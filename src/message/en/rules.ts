import type { RuleCodes } from '../../rules/index.js'
import type { Say, Texts } from '../catalogue.js'
import { writeUnitName } from '../phrases.js'
import { METER_NAMES } from './words.js'

interface Suggestion {
  readonly known: readonly string[]
  readonly more: number
  readonly meant: string | undefined
}

/** The probable name, or the known names. Starts with a space; empty if no name is known. */
function writeSuggestion({ meant, known, more }: Suggestion, say: Say): string {
  if (meant !== undefined) return ` Did you mean “${meant}”?`
  if (known.length === 0) return ''
  const names = known.map((name) => `“${name}”`)
  const moreText = more > 0 ? [`${say.number(more)} more`] : []
  return ` There ${known.length === 1 ? 'is' : 'are'} ${say.list([...names, ...moreText])}.`
}

type Volume = RuleCodes['record/refill-outside-tolerance']['refilled']

const WARRANTY_FACT_NAMES: Readonly<
  Record<RuleCodes['record/warranty-facts-missing']['lacks'][number], string>
> = {
  'who did it': 'who did the work',
  photos: 'photos',
  'oil batch': 'the batch of the oil',
  'part numbers': 'the numbers of the new parts',
  'wrench certificate': 'the certificate of each torque wrench',
  signature: 'a signature',
}

function writeRefillFix({ value, unit }: Volume, byLevel: boolean, say: Say): string {
  if (byLevel)
    return 'make sure that the machine is level and the oil was fully drained, then set the level at its mark.'
  const amount = say.quantity({ value: Math.abs(value), unit })
  return `${value > 0 ? `take ${amount} out` : `add ${amount}`}, then check the level.`
}

const UNMEASURED_TEXTS: Readonly<Record<RuleCodes['record/tightening-not-measured']['done'], string>> = {
  'by hand': 'tightened only by hand. Tighten it as the sheet states before the machine moves',
  'without a wrench': 'tight, but the torque was not measured. Set it with a torque wrench',
  'not checked': 'its tightness was not checked. Check it before the machine moves',
  'not known': 'it is not known whether it is tight. Check it before the machine moves',
}

const SERIAL_MISTAKES: Readonly<Record<RuleCodes['spec/serial-range-wrong']['what'], string>> = {
  'prefix repeated': 'the number repeats the prefix. Omit the prefix there',
  'not a number': 'both ends must contain only digits. Put letters into the prefix',
  'different widths': 'both ends need the same number of digits. Write the leading zeros',
  'ends before it starts': 'the range ends before it starts',
}

const MEASURE_NAMES: Readonly<Record<string, string>> = {
  temperatureDifference: 'temperature difference',
  kinematicViscosity: 'kinematic viscosity',
  dynamicViscosity: 'dynamic viscosity',
}

export const rulesTexts: Texts<RuleCodes> = {
  // Sheets, and references to them.
  'spec/condition-empty': ({ holds }) =>
    holds === 'always'
      ? 'Empty condition: every machine meets it. Complete it, or remove it.'
      : 'Empty list: no machine meets the condition. Complete the list, or remove it.',
  'spec/dangling-reference': ({ to, id, ...names }, say) =>
    `The sheet has no ${to} “${id}”.${writeSuggestion(names, say)}`,
  'spec/id-used-twice': ({ kind, id }) =>
    `Duplicate id “${id}” of a ${kind} in this set. Give each document its own id.`,
  'spec/instances-without-per': ({ gearcase, count }, say) =>
    `The machine has ${say.number(count)} of “${gearcase}”. Is the quantity for one or for all? Add “per”.`,
  'spec/limits-reversed': ({ min, max, unit }, say) =>
    `Minimum ${say.quantity({ value: min, unit })} exceeds maximum ${say.quantity({ value: max, unit })}. Check the manual.`,
  'spec/model-years-reversed': ({ from, to }) =>
    `Model years end in ${to}, before they start in ${from}, so no machine meets this condition. Correct the years.`,
  'spec/no-fill-opening': ({ gearcase }) =>
    `“${gearcase}” has no fill opening, so it cannot be refilled after draining. Give an opening the use “fill”.`,
  'spec/no-way-to-empty': ({ gearcase }) =>
    `A service changes the oil of “${gearcase}”, but the sheet has no way to empty it. Name a drain plug, a cover or suction.`,
  'spec/oil-space-chain': ({ gearcase, with: owner }) =>
    `“${gearcase}” shares the oil of “${owner}”, which itself shares the oil of another gearcase. Name the gearcase that owns the oil.`,
  'spec/opening-without-role': ({ opening, role, use }) =>
    `“${opening}” is named here for “${use}”, but its entry does not have the use “${role}”. Correct one of the two.`,
  'spec/overlapping-overrides': ({ target, with: other }) =>
    `This override and ${other} set ${target} for the same machine. Narrow one of the conditions; the order of overrides does not decide.`,
  'spec/override-of-other-kind': ({ target, kind, there }) =>
    `This override is of the kind “${kind}”, but ${target} is of the kind “${there}”.`,
  'spec/override-target-missing': ({ target }) =>
    `The sheet has no figure at ${target} for the override to set. Check the pointer.`,
  'spec/part-supersedes-itself': ({ partNumber, numbers }) =>
    `Part ${partNumber} is superseded by itself (${numbers.join(' → ')}), so there is no number to buy. Correct one of them.`,
  'spec/period-as-hours': ({ hours, months }, say) =>
    `${hours} h looks like ${say.count(months, 'month', 'months')} written as hours. An hour meter counts work, not the calendar: write the period as P${months}M.`,
  'spec/serial-range-wrong': ({ what, prefix = '', from = '…', to = '…' }) =>
    `Serials ${prefix}${from} to ${prefix}${to}: ${SERIAL_MISTAKES[what]}.`,
  'spec/sheet-not-found': ({ id, ...names }, say) =>
    `No sheet “${id}” is in this set.${writeSuggestion(names, say)}`,
  'spec/sheet-of-other-revision': ({ id, revision, known }, say) =>
    `This names revision “${revision}” of the sheet “${id}”; the set has ${say.list(known.map((knownRevision) => `“${knownRevision}”`))}. Compare the two, then name the right revision.`,
  'spec/tolerance-too-large': ({ value, minus, plus, unit }, say) =>
    `A tolerance of − ${minus} + ${plus} on ${say.quantity({ value, unit })} is as large as the value. Check the decimal point.`,
  'spec/unit-of-other-measure': ({ unit, measure, required }, say) =>
    `Expected ${MEASURE_NAMES[required] ?? required}, found ${MEASURE_NAMES[measure] ?? measure} (${writeUnitName(unit, say)}).`,
  'spec/unknown-variant': ({ id, ...names }, say) =>
    `The sheet has no variant “${id}”.${writeSuggestion(names, say)}`,
  'spec/variants-overlap': ({ variant, with: other }) =>
    `These conditions let a machine be both “${variant}” and “${other}”. Narrow them so that only one applies.`,
  'spec/waiver-without-finding': ({ code, waived }) =>
    `This waiver matches no finding: there is no ${code} at ${waived === '' ? 'the whole document' : waived}. Remove it, or correct its pointer.`,
  'spec/support-on-another-axle': ({ gearcase, axle, lifted }, say) =>
    `“${gearcase}” is on the ${axle}, but its supports lift the ${say.list(lifted)}: the machine would be raised at the wrong end. Check the manual.`,
  'spec/drain-at-mark-up': ({ opening }) =>
    `“${opening}” drains with the mark up: the opening is then at the top, and the oil stays in. Check the manual.`,
  'spec/wheel-mark-missing': ({ opening }) =>
    `“${opening}” fills, drains and shows the level, but the sheet does not give the wheel position for each. Add “wheelMark” to its uses.`,
  'spec/implausible-drain-temperature': ({ gearcase, temperature }, say) =>
    `${gearcase}: draining at ${say.quantity(temperature)} would burn whoever opens the plug. ${temperature.unit === 'degC' ? 'Was the figure printed in °F? ' : ''}Check the manual.`,
  'spec/drain-not-named': ({ opening, gearcase }) =>
    `${gearcase}: “${opening}” is a drain, but no method of emptying names it: it would stay closed and old oil would stay in. Name it, or remove the use “drain”.`,
  'spec/gearcase-without-change': ({ gearcase }) =>
    `No service changes the oil of “${gearcase}”. Add it to one, or waive this if the manual fills it for life.`,
  'spec/filter-without-change': ({ gearcase }) =>
    `No oil change includes the filters of “${gearcase}”, because it is never emptied. Move them to the gearcase that owns the oil, or state how it is emptied.`,
  'spec/position-contradicts-place': ({ part, place, position }) =>
    `${part}: the words of the place say ${place}, the position says ${position}. Check the manual, and correct one of them.`,
  'spec/position-off-face': ({ part, face, coordinate }) =>
    coordinate === 'offset'
      ? `${part}: an offset is a distance to one side. Add “across”, such as left.`
      : `${part}: the ${face} face has no such “${coordinate}”. Remove it, or correct the face.`,
  'spec/level-on-raised-end': ({ gearcase, raised }) =>
    raised === 'nothing'
      ? `${gearcase}: the level is read on stands, but the machine stays on the ground. Correct one of the two.`
      : `${gearcase}: the level is read on stands, but they lift one end only, and a tilted machine shows a wrong level. Check the manual.`,
  'spec/implausible-mass': ({ mass }, say) =>
    `A machine of ${say.quantity(mass)} is implausible, and the rating of stands is compared with it. Were tonnes and kilograms mixed up?`,
  'spec/source-date-in-the-future': ({ date, today }, say) =>
    `This source is dated ${say.date(date)}, after today, ${say.date(today)}. Check the year.`,
  'spec/override-far-from-base': ({ figure, base }, say) =>
    `${say.quantity(figure)} on some machines and ${say.quantity(base)} on the others differ widely. Check the decimal point and the unit.`,
  'spec/size-spelling': ({ size, meant }) => `Sizes are compared as text: write “${meant}”, not “${size}”.`,
  'spec/override-equals-base': ({ target }) =>
    `This override sets the value that the sheet already has at ${target}. Remove it, or check the figure.`,
  'spec/model-year-gap': ({ from, to }) =>
    `No variant covers the model years ${from === to ? from : `${from} to ${to}`}. Check whether any machine was built then.`,
  // Printed figures: second units, threads and torques.
  'quantity/interval-distances-differ': ({ first, second }, say) =>
    `${say.quantity(first)} and ${say.quantity(second)} differ by more than a tenth. The shorter one decides.`,
  'quantity/second-unit-disagrees': (params, say) =>
    say.reason({
      code: `quantity/printed-figures-${params.how === 'miss' ? 'differ-slightly' : params.how}`,
      params,
    }),
  'quantity/second-unit-slip': (params, say) => say.reason({ code: 'quantity/printed-figures-slip', params }),
  'quantity/distance-converted-wrong-way': ({ first, second }, say) =>
    `${say.quantity(first)} and ${say.quantity(second)}: a distance in miles is the smaller number, so it was converted the wrong way. Check the manual; the shorter one decides.`,
  'thread/designation-unreadable': ({ thread, part, because }, say) =>
    `${part}: the thread “${thread}” cannot be read.${because === null ? '' : ` ${say.reason(because)}`}`,
  'torque/above-proof-load': ({ part, thread, propertyClass, torque, load, proof }, say) =>
    `${part}: ${say.quantity(torque)} would load a bolt (${thread}, class ${propertyClass}) with about ${say.quantity({ value: Math.round(load.value / 100) / 10, unit: 'kN' })}; its proof load is ${say.quantity({ value: Math.round(proof.value / 100) / 10, unit: 'kN' })}. Check unit and class.`,
  'torque/fill-and-drain-swapped': ({ gearcase, fill, drain }, say) =>
    `${gearcase}: ${say.quantity(fill)} at the fill plug and ${say.quantity(drain)} at the drain plug fit each other's threads better. Check whether they were swapped; waive this if the manual prints them so.`,
  'torque/slip-at-plug': ({ part, thread, torque, factor, becomes, meant }, say) =>
    `${part}: ${say.quantity(torque)} is unusual for a plug of thread ${thread}; ${factor} it is ${say.quantity({ value: Number(becomes.value.toPrecision(3)), unit: becomes.unit })}.${meant === undefined ? '' : ` The figure may be in ${say.quantity({ value: '1', unit: meant }).replace(/^1\s*/, '')}.`} Check the manual before use.`,
  'torque/stages-not-rising': ({ part, before, step }, say) =>
    `${part}: ${say.quantity(step)} follows ${say.quantity(before)}. Each stage must be above the one before.`,
  'torque/turns-on-parallel-thread': ({ part, thread }) =>
    `${part}: ${thread} is a parallel thread. Turns past finger tight are for taper threads and would strip it.`,
  'torque/turns-reversed': ({ part, min, max }) =>
    `${part}: minimum ${min} turns exceeds maximum ${max}. Correct the sheet.`,
  'torque/large-for-drive': ({ part, drive, torque, limit }, say) =>
    `${part}: ${say.quantity(torque)} is far too much for a hexagon of ${drive}; at most about ${say.quantity({ value: Number(limit.value.toPrecision(2)), unit: limit.unit })} would be expected. Check the unit.`,
  'torque/fill-and-drain-far-apart': ({ gearcase, high, low }, say) =>
    `${gearcase}: ${say.quantity(high)} at one plug and ${say.quantity(low)} at the other differ widely. Check the units.`,
  'torque/small-for-class': ({ part, thread, propertyClass, torque, load, proof }, say) =>
    `${part}: ${say.quantity(torque)} loads a bolt (${thread}, class ${propertyClass}) to only about ${say.number(Math.round((100 * load.value) / proof.value))} % of its proof load. Check unit and decimal point.`,
  'torque/implausible-turns': ({ part, turns }) =>
    `${part}: ${turns} turns past finger tight would split the housing. Check the decimal point.`,
  'torque/implausible-angle': ({ part, angle }, say) =>
    `${part}: ${say.quantity(angle)} is more than a whole turn and would break the bolt. Check the figure.`,
  'torque/unknown-class': ({ part, propertyClass, meant }) =>
    `${part}: no bolt has the class “${propertyClass}”.${meant === undefined ? ' Check the manual.' : ` Did you mean “${meant}”?`}`,
  // Seals, oils and quantities.
  'seal/crush-washer-reused': ({ part }) =>
    `${part}: the sheet replaces the crush washer only “on condition”. Crushing hardens it: fit a new one at every opening, or waive this with the manual's page.`,
  'seal/material-doubtful-in-oil': ({ part, reason }, say) => `${part}: ${say.reason(reason)}`,
  'seal/material-not-for-oil': ({ part, material }) =>
    `${part}: gear oil destroys ${material}. Check the parts list.`,
  'seal/o-ring-size-differs': ({ part, reason }, say) =>
    `${part}: number and size name two different rings. ${say.reason(reason)}`,
  'seal/washer-does-not-fit': ({ part, reason }, say) => `${part}: ${say.reason(reason)}`,
  'seal/none-at-opening': ({ part }) =>
    `${part}: no seal is listed. List the washer or the sealant, “none” if the plug has no seal, or “not stated” if the manual does not say.`,
  'seal/none-beside-seal': ({ part }) => `${part}: a seal and “none” are both listed. Remove one.`,
  'seal/none-on-parallel-thread': ({ part, thread }) =>
    `${part}: ${thread} is a parallel thread and does not seal by itself. List the washer; waive this for a plug with a metal cone.`,
  'seal/sealant-on-dry-thread': ({ part }) =>
    `${part}: a thread sealant is listed, but the tightening is for a dry thread. Check the manual.`,
  'seal/o-ring-far-from-plug': ({ part, inside, thread }, say) =>
    `${part}: an o-ring of ${say.quantity(inside)} inside does not belong on a plug ${thread}. Check the parts list.`,
  'seal/cure-of-zero': ({ part }) =>
    `${part}: a cure of zero means that oil may touch the sealant at once. Write “not stated” if the manual gives no time.`,
  'oil/additive-counted-twice': ({ additive, volume, refill, dryFill }, say) =>
    `Refill ${say.quantity(refill)} plus ${say.quantity(volume)} of “${additive}” exceeds the dry fill of ${say.quantity(dryFill)}. The refill seems to include the additive.`,
  'oil/additive-exceeds-refill': ({ additive, volume, refill }, say) =>
    `${say.quantity(volume)} of “${additive}” is as much as, or more than, the refill of ${say.quantity(refill)}. Check the unit.`,
  'oil/ambient-gap': ({ from, to }, say) =>
    `Between ${say.quantity(from)} and ${say.quantity(to)} no oil in this list is permitted. Check the bands.`,
  'oil/unknown-edition': ({ grade, system, edition, known }, say) =>
    `${system}, edition “${edition}”: the limits of ${grade} are not known. Known editions: ${say.list(known)}.`,
  'oil/unknown-grade': ({ grade, system, others }, say) =>
    `${system} has no grade “${grade}”.${others.length === 0 ? '' : ` ${say.list(others)} ${others.length === 1 ? 'has' : 'have'} it.`}`,
  'oil/viscosity-outside-grade': ({ oil, grade, viscosity }, say) =>
    `${oil}: ${say.quantity(viscosity)} is outside grade ${grade}. Check the data sheet.`,
  'oil/unknown-category': ({ category }) =>
    `There is no service category “${category}”: gear oils are GL-1 to GL-6. Check the manual.`,
  'fill/portion-larger-than-refill': ({ gearcase, portion, refill }, say) =>
    `${gearcase}: its portion of the shared oil, ${say.quantity(portion)}, exceeds the whole refill of ${say.quantity(refill)}. Check the unit.`,
  'fill/refill-larger-than-dry-fill': ({ gearcase, refill, dryFill }, say) =>
    `${gearcase}: refill ${say.quantity(refill)} exceeds dry fill ${say.quantity(dryFill)}, although some oil always stays in. Check whether the two were swapped.`,
  'fill/implausible-refill': ({ gearcase, refill, limit }, say) =>
    `${gearcase}: a refill of ${say.quantity(refill)} is implausible here; at most about ${say.quantity({ value: Number(limit.value.toPrecision(2)), unit: limit.unit })} would be expected. Check the unit.`,
  'fill/dry-fill-far-above-refill': ({ gearcase, dryFill, refill }, say) =>
    `${gearcase}: dry fill ${say.quantity(dryFill)} is more than five times the refill of ${say.quantity(refill)}. Check the decimal point and the unit.`,
  'fill/minutes-with-engine-running': ({ gearcase }) =>
    `${gearcase}: the level cannot be read with the engine running and some minutes after it stopped. Correct one of the two.`,
  'fill/implausible-level-depth': ({ gearcase, below }, say) =>
    `${gearcase}: a level ${say.quantity(below)} below the hole is implausible. Check the decimal point and the unit.`,
  'spec/implausible-hours': ({ hours }, say) =>
    `${say.quantity({ value: hours, unit: 'h' })} between two services is implausible. Check the decimal point.`,
  // Logs, toolboxes and stocks.
  'log/date-in-the-future': ({ date, today }, say) =>
    `${say.date(date)} is after today, ${say.date(today)}. Check year and month.`,
  'log/oil-not-permitted': ({ gearcase, oil, permitted }, say) =>
    `${gearcase}: topped up with “${oil}”, not a permitted oil (${say.list(permitted)}). Change the oil before the machine works again.`,
  'log/pause-reversed': ({ from, to }, say) =>
    `The pause ends on ${say.date(to)}, before it starts on ${say.date(from)}.`,
  'log/record-of-other-machine': ({ machine, log, record }) =>
    `The record “${record}” belongs to the machine “${machine}”, but this is the log of “${log}”.`,
  'log/unknown-part': ({ id, ...names }, say) =>
    `The sheet has no “${id}” here.${writeSuggestion(names, say)}`,
  'log/used-before-commissioned': ({ date, commissioned }, say) =>
    `${say.date(date)} is before the first use on ${say.date(commissioned)}. Correct one of the two dates.`,
  'log/variant-contradicted': ({ variant, candidates }, say) => {
    const others =
      candidates.length === 0
        ? 'they fit no variant of the sheet'
        : `they fit ${say.list(candidates.map((candidate) => `“${candidate}”`))}`
    return variant === undefined
      ? 'Serial, model year and market fit no variant of the sheet. Check the plate.'
      : `Serial, model year and market exclude the stated variant “${variant}”: ${others}. Check the plate.`
  },
  'log/meter-through-pause': ({ meter, first, last }, say) =>
    `The reading of ${METER_NAMES[meter] ?? meter} rose from ${say.number(first)} to ${say.number(last)} during this pause. Check the dates of the pause.`,
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
  'toolbox/implausible-load-rating': ({ tool, rating }, say) =>
    `${tool}: a rating of ${say.quantity(rating)} is implausible. Read the plate again: were tonnes and kilograms mixed up?`,
  'stock/opened-larger-than-size': ({ container, opened, size }, say) =>
    `${container}: ${say.quantity(opened)} left in a container of ${say.quantity(size)}. List full containers separately, or check the unit.`,
  'stock/viscosities-swapped': ({ container, kv40, kv100 }, say) =>
    `${container}: ${say.quantity(kv100)} at 100 °C is not below ${say.quantity(kv40)} at 40 °C. Oil thins as it warms; check whether the two were swapped.`,
  'stock/implausible-density': ({ container, density }, say) =>
    `${container}: no oil has a density of ${say.quantity(density)}. Check the unit.`,
  'stock/implausible-pour-point': ({ container, pourPoint }, say) =>
    `${container}: a pour point of ${say.quantity(pourPoint)} is implausible for a gear oil. Was the minus sign lost?`,
  // Service records.
  'record/corrects-itself': ({ id }) =>
    `Correcting “${id}” leads back to this record. Name the record of the service itself.`,
  'record/corrects-unknown-record': ({ id, ...names }, say) =>
    `The log of this machine has no record “${id}” to correct.${writeSuggestion(names, say)}`,
  'record/date-in-the-future': ({ date, today }, say) =>
    `The record is dated ${say.date(date)}, after today, ${say.date(today)}. Check year and month.`,
  'record/leak-left': ({ gearcase, found }) =>
    `${gearcase}: closed while ${found}. A plug with a washer needs a new washer, never more torque; a taper plug may be tightened within its turns.`,
  'record/level-not-right': ({ gearcase, level }) =>
    level === 'not checked'
      ? `${gearcase}: level not checked. Check it before the machine works.`
      : `${gearcase}: level ${level} the mark. Correct it before the machine works.`,
  'record/machine-not-found': ({ id, ...names }, say) =>
    `No log of the machine “${id}” is in this set.${writeSuggestion(names, say)}`,
  'record/metal-in-the-oil': ({ gearcase, found }) =>
    `${gearcase}: ${found === 'metallic' ? 'metal in the oil' : `${found} on the magnet or in a filter`}, but it was refilled. Stop the machine and have the gearcase opened.`,
  'record/oil-not-permitted': ({ gearcase, oil, permitted }, say) =>
    `${gearcase}: filled with “${oil}”, not a permitted oil (${say.list(permitted)}). Drain it before the machine works.`,
  'record/part-not-on-machine': ({ part }) =>
    `This machine has no “${part}”, by its variant, serial, model year or market. Check whether the record belongs to another machine.`,
  'record/plug-not-tightened': ({ part }) =>
    `${part}: opened, but not recorded as tightened. Check the plug before the machine moves.`,
  'record/reading-contradicts-log': ({ reason }, say) =>
    `This reading contradicts the machine's log. ${say.reason(reason)}`,
  'record/reading-missing': ({ meter }) =>
    `The reading of ${METER_NAMES[meter] ?? meter} is missing; the next service cannot be counted from this record.`,
  'record/refill-not-recorded': ({ gearcase }) =>
    `${gearcase}: oil change without a refilled quantity. Check the level, then record the quantity.`,
  'record/refill-outside-tolerance': ({ gearcase, refilled, printedRefill, byLevel, reason }, say) =>
    `${gearcase}: ${say.quantity(refilled)} was refilled, but the sheet states ${say.quantity(printedRefill)}: ${writeRefillFix(reason.params['difference'] as Volume, byLevel, say)}`,
  'record/seal-not-new': ({ part, seal, usedAgain }) =>
    usedAgain
      ? `${part}: the ${seal} was reused. It must be new at every opening; fit a new one.`
      : `${part}: opened, but no new ${seal} is recorded. Check the plug; fit a new one if in doubt.`,
  'record/tightening-method-differs': ({ part, done, required }) =>
    `${part}: tightened by ${done === 'turns' ? 'turns' : 'torque'}; the sheet states ${required === 'turns' ? 'turns' : 'a torque'}.`,
  'record/tightening-not-measured': ({ part, done }) => `${part}: ${UNMEASURED_TEXTS[done]}.`,
  'record/torque-outside-band': ({ part, set, stated, side }, say) =>
    `${part}: set to ${say.quantity(set)}; the sheet states ${say.quantity(stated)}. ${
      side === 'above'
        ? 'Take it out, inspect the thread, fit a new washer if it has one, and tighten it again.'
        : 'Tighten it to the stated torque.'
    }`,
  'record/turns-outside-band': ({ part, turns, min, max }, say) =>
    `${part}: ${say.count(turns, 'turn', 'turns')} past finger tight; the sheet states ${max === undefined ? `at least ${min}` : `${min} to ${max}`}.`,
  'record/unknown-container': ({ id, ...names }, say) =>
    `No container “${id}” is in this set.${writeSuggestion(names, say)}`,
  'record/unknown-part': ({ id, ...names }, say) =>
    `The sheet has no “${id}” here.${writeSuggestion(names, say)}`,
  'record/unknown-tool': ({ id, ...names }, say) =>
    `No torque wrench “${id}” is in this set.${writeSuggestion(names, say)}`,
  'record/water-in-the-oil': ({ gearcase }) =>
    `${gearcase}: milky oil. Find where the water enters, then change the oil again after a short run.`,
  'record/wrench-cannot-reach': ({ part, wrench, torque, because }, say) =>
    [
      `${part}: the ${wrench} cannot be set to ${say.quantity(torque)}.`,
      ...because.map((reason) => say.reason(reason)),
      'Tighten it again with a suitable wrench.',
    ].join(' '),
  'record/drain-not-opened': ({ gearcase }) =>
    `${gearcase}: oil change without an opened drain. The old oil may still be inside; check before the machine works.`,
  'record/drained-far-below-refill': ({ gearcase, drained, refilled }, say) =>
    `${gearcase}: ${say.quantity(drained)} drained, ${say.quantity(refilled)} refilled. Either oil was lost (find the leak), or old oil stayed in (check the level).`,
  'record/wrench-out-of-calibration': ({ wrench, calibrated, date }, say) =>
    `${wrench}: last calibrated on ${say.date(calibrated)}, so its calibration had expired on ${say.date(date)}. Have it tested; if it fails, set these torques again.`,
  'record/warranty-facts-missing': ({ lacks }, say) =>
    `The warranty requires facts that this record lacks: ${say.list(lacks.map((fact) => WARRANTY_FACT_NAMES[fact]))}. Add them with a correction while they can still be found.`,
  'record/certificate-expired': ({ wrench, certificate, validTo, date }, say) =>
    `${wrench}: certificate ${certificate} was valid to ${say.date(validTo)}, before the work on ${say.date(date)}. Name the certificate of that day, or have the wrench tested.`,
  'record/filter-not-changed': ({ part, change }) =>
    `${part}: no record that it was ${change === 'every change' ? 'renewed' : 'cleaned'} with the oil. Do the work, or record it.`,
  'record/shield-not-refitted': ({ shield, gearcase }) =>
    `${gearcase}: no record that “${shield}” was refitted. Check the machine before it runs.`,
  'record/other-part-number': ({ part, fitted, stated }) =>
    `${part}: seal ${fitted} was fitted; the sheet states ${stated}. Check whether it fits, or whether the maker changed the number.`,
  'record/more-than-container-held': ({ container, used, held }, say) =>
    `${container}: ${say.quantity(used)} recorded from it, but the stock had only ${say.quantity(held)}. Check the container and the unit.`,
}
