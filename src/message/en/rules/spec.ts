import type { RoomRuleCodes } from '../../../rules/index.js'
import type { Texts } from '../../catalogue.js'
import { unitName } from '../words.js'
import { meantWords } from './meantWords.js'

export const specRuleTexts: Texts<RoomRuleCodes<'spec'>> = {
  'spec/condition-empty': ({ holds }) =>
    holds === 'always'
      ? 'Empty condition: it holds for every machine. Complete it, or omit it.'
      : 'Empty list: the condition never holds. Complete the list, or omit it.',
  'spec/dangling-reference': ({ to, id, ...names }, say) =>
    `The sheet has no ${to} “${id}”.${meantWords(names, say)}`,
  'spec/id-used-twice': ({ kind, id }) =>
    `Duplicate id “${id}” of a ${kind} in this set. Give each document its own id.`,
  'spec/instances-without-per': ({ gearcase, count }, say) =>
    `The machine has ${say.number(count)} of “${gearcase}”: is the quantity for one or for all? Add “per”.`,
  'spec/limits-reversed': ({ min, max, unit }, say) =>
    `Minimum ${say.quantity({ value: min, unit })} exceeds maximum ${say.quantity({ value: max, unit })}. Check the manual.`,
  'spec/model-years-reversed': ({ from, to }) =>
    `Model years end in ${to}, before they start in ${from}. No machine can meet this.`,
  'spec/no-fill-opening': ({ gearcase }) =>
    `No opening fills “${gearcase}”. Give one the use “fill”, or it cannot be refilled after draining.`,
  'spec/no-way-to-empty': ({ gearcase }) =>
    `A service changes the oil of “${gearcase}”, but the sheet has no way to empty it. Name a drain plug, a cover or suction.`,
  'spec/oil-space-chain': ({ gearcase, with: owner }) =>
    `“${gearcase}” shares the oil of “${owner}”, which shares its oil too. Name the gearcase that owns it.`,
  'spec/opening-lacks-role': ({ opening, role, use }) =>
    `“${opening}” is named here for “${use}”, but its entry lacks the use “${role}”. Correct one of the two.`,
  'spec/overlapping-overrides': ({ target, with: other }) =>
    `This override and ${other} set ${target} for the same machine. Narrow one of the conditions; the last one does not win.`,
  'spec/override-of-other-kind': ({ target, kind, there }) =>
    `This override is of the kind “${kind}”, but ${target} is of the kind “${there}”.`,
  'spec/override-target-missing': ({ target }) =>
    `No leaf at ${target} that an override could set. Check the pointer.`,
  'spec/period-as-hours': ({ hours, months }, say) =>
    `${hours} h looks like ${say.count(months, 'month', 'months')} written as hours. An hour meter counts work, not the calendar: write the period as P${months}M.`,
  'spec/serial-range-wrong': ({ what, prefix = '', from = '…', to = '…' }) =>
    `Serials ${prefix}${from} to ${prefix}${to}: ${SERIAL_MISTAKES[what]}.`,
  'spec/sheet-not-found': ({ id, ...names }, say) =>
    `No sheet “${id}” is in this set.${meantWords(names, say)}`,
  'spec/sheet-of-other-revision': ({ id, revision, known }, say) =>
    `This names revision “${revision}” of the sheet “${id}”; the set has ${say.list(known.map((one) => `“${one}”`))}. Compare the two, then name the right one.`,
  'spec/tolerance-too-large': ({ value, minus, plus, unit }, say) =>
    `A tolerance of − ${minus} + ${plus} on ${say.quantity({ value, unit })} is as large as the value. Check the decimal point.`,
  'spec/unit-of-other-measure': ({ unit, measure, wanted }, say) =>
    `Expected ${MEASURES[wanted] ?? wanted}, found ${MEASURES[measure] ?? measure} (${unitName(unit, say)}).`,
  'spec/unknown-variant': ({ id, ...names }, say) =>
    `The sheet has no variant “${id}”.${meantWords(names, say)}`,
  'spec/variants-overlap': ({ variant, with: other }) =>
    `These conditions let a machine be both “${variant}” and “${other}”. Narrow them until one is left.`,
  'spec/waiver-without-finding': ({ code, waived }) =>
    `No finding ${code} at ${waived === '' ? 'the whole document' : waived}: this waiver waives nothing. Remove it, or correct its pointer.`,
}

const SERIAL_MISTAKES: Readonly<Record<RoomRuleCodes<'spec'>['spec/serial-range-wrong']['what'], string>> = {
  'prefix repeated': 'the number repeats the prefix. Leave the prefix out of it',
  'not a number': 'both ends must be digits alone. Put letters into the prefix',
  'different widths': 'both ends need the same number of digits. Write the leading zeros',
  'ends before it starts': 'the range ends before it starts',
}

const MEASURES: Readonly<Record<string, string>> = {
  temperatureDifference: 'temperature difference',
  kinematicViscosity: 'kinematic viscosity',
  dynamicViscosity: 'dynamic viscosity',
}
