import type { RoomRuleCodes } from '../../../rules/index.js'
import type { Say, Texts } from '../../catalogue.js'
import { meantWords } from './meantWords.js'

const unitName = (unit: string, say: Say): string => say.quantity({ value: '1', unit }).replace(/^1\s*/, '')

export const specRuleTexts: Texts<RoomRuleCodes<'spec'>> = {
  'spec/condition-empty': ({ holds }) =>
    holds === 'always'
      ? 'This condition asks for nothing, so it holds for every machine. Say what it is for, or leave it out.'
      : 'This list names nobody, so the condition never holds. Fill the list, or leave it out.',
  'spec/dangling-reference': ({ to, id, ...names }, say) =>
    `The sheet has no ${to} “${id}”.${meantWords(names, say)}`,
  'spec/id-used-twice': ({ kind, id }) =>
    `Another ${kind} of this set has the id “${id}” too. Give each document an id of its own.`,
  'spec/instances-without-per': ({ gearcase, count }, say) =>
    `There are ${say.number(count)} of “${gearcase}”, and the quantity does not say whether it is for one or for all. Add “per”.`,
  'spec/interval-empty': () =>
    'This interval has neither hours, distance nor period, so the service would never be due. Give one, or say “not stated”.',
  'spec/limits-empty': ({ unit }, say) =>
    `These limits (${unitName(unit, say)}) have neither a least nor a greatest figure. Give one, or say “not stated”.`,
  'spec/limits-reversed': ({ min, max, unit }, say) =>
    `The least figure, ${say.quantity({ value: min, unit })}, is above the greatest, ${say.quantity({ value: max, unit })}. Look at the manual again.`,
  'spec/model-years-reversed': ({ from, to }) =>
    `The model years end in ${to} before they start in ${from}. No machine can meet this.`,
  'spec/no-fill-opening': ({ gearcase }) =>
    `No opening fills “${gearcase}”. Give one the use “fill”, or nobody could refill it after draining.`,
  'spec/no-way-to-empty': ({ gearcase }) =>
    `A service changes the oil of “${gearcase}”, and the sheet has no way to empty it. Name a drain plug, a cover or suction.`,
  'spec/oil-space-chain': ({ gearcase, with: owner }) =>
    `“${gearcase}” shares the oil of “${owner}”, which does not own its oil either. Name the gearcase that owns it.`,
  'spec/opening-lacks-role': ({ opening, role, use }) =>
    `“${opening}” is named here for “${use}”, and its own entry does not have the use “${role}”. One of the two names the wrong opening.`,
  'spec/overlapping-overrides': ({ target, with: other }) =>
    `This override and ${other} set ${target} for the same machine. Narrow one of the conditions: the last one does not win.`,
  'spec/override-of-other-kind': ({ target, kind, there }) =>
    `This override says it sets a ${kind}, and ${target} is a ${there}.`,
  'spec/override-target-missing': ({ target }) =>
    `There is no whole leaf at ${target} that an override could set. Look for a slip in the pointer.`,
  'spec/period-as-hours': ({ hours, months }, say) =>
    `${hours} h look like ${say.count(months, 'month', 'months')} written as hours. An hour meter counts work, not the calendar: write the period as P${months}M.`,
  'spec/serial-range-wrong': ({ what, prefix = '', from = '…', to = '…' }) =>
    `Serials ${prefix}${from} to ${prefix}${to}: ${SERIAL_MISTAKES[what]}.`,
  'spec/sheet-not-found': ({ id, ...names }, say) =>
    `No sheet “${id}” is in this set.${meantWords(names, say)}`,
  'spec/sheet-of-other-revision': ({ id, revision, known }, say) =>
    `This was kept against revision “${revision}” of the sheet “${id}”; the set holds ${say.list(known.map((one) => `“${one}”`))}. Compare the two, then name the one that holds.`,
  'spec/tolerance-too-large': ({ value, minus, plus, unit }, say) =>
    `A tolerance of − ${minus} + ${plus} on ${say.quantity({ value, unit })} is as large as the value. Look for a lost decimal point.`,
  'spec/unit-of-other-measure': ({ unit, measure, wanted }, say) =>
    `${unitName(unit, say)} measures ${MEASURES[measure] ?? measure}, and this place wants ${MEASURES[wanted] ?? wanted}.`,
  'spec/unknown-variant': ({ id, ...names }, say) =>
    `The sheet has no variant “${id}”.${meantWords(names, say)}`,
  'spec/variants-overlap': ({ variant, with: other }) =>
    `A machine can be both “${variant}” and “${other}” by these conditions. Narrow them until one is left.`,
  'spec/waiver-without-finding': ({ code, waived }) =>
    `Nothing is found as ${code} at ${waived === '' ? 'the whole document' : waived}, so this waiver waives nothing. Take it out, or point it right.`,
}

const SERIAL_MISTAKES: Readonly<Record<RoomRuleCodes<'spec'>['spec/serial-range-wrong']['what'], string>> = {
  'prefix repeated': 'the number repeats the prefix. Leave the prefix out of it',
  'not a number': 'both ends must be digits alone. Put letters into the prefix',
  'different widths': 'both ends need the same number of digits. Write the leading zeros',
  'ends before it starts': 'the range ends before it starts',
}

const MEASURES: Readonly<Record<string, string>> = {
  temperatureDifference: 'a temperature difference',
  kinematicViscosity: 'a kinematic viscosity',
  dynamicViscosity: 'a dynamic viscosity',
}
