import type { RoomRuleCodes } from '../../../rules/index.js'
import type { Texts } from '../../catalogue.js'

/** Rules on seals, oils and quantities. */
export const partRuleTexts: Texts<RoomRuleCodes<'seal' | 'oil' | 'fill'>> = {
  'seal/crush-washer-kept': ({ part }) =>
    `${part}: a crush washer is to be replaced only “on condition”. Once crushed it is hard; take a new one at every opening, or waive this with the manual's page.`,
  'seal/material-not-for-oil': ({ part, material }) =>
    `${part}: gear oil destroys ${material}. Look for the right ring in the parts list.`,
  'seal/o-ring-size-differs': ({ part, reason }, say) =>
    `${part}: number and size name two different rings. ${say.reason(reason)}`,
  'seal/zero-size': ({ part, size }) =>
    `${part}: a seal with 0 mm of ${size}. Leave the size out where it is not known.`,
  'seal/washer-does-not-fit': ({ part, reason }, say) => `${part}: ${say.reason(reason)}`,
  'seal/none-at-opening': ({ part }) =>
    `${part}: no seal is listed. Enter the washer or the sealant; write “none” where there is none and “not stated” where the manual is silent.`,
  'seal/none-beside-seal': ({ part }) => `${part}: a seal and “none” are both listed. Take one of them out.`,
  'seal/none-on-parallel-thread': ({ part, thread }) =>
    `${part}: ${thread} is a parallel thread and does not seal by itself. Look for the washer; waive this for a plug with a metal cone.`,
  'oil/additive-counted-twice': ({ additive, volume, refill, dryFill }, say) =>
    `${say.quantity(refill)} and ${say.quantity(volume)} of “${additive}” on top do not go into ${say.quantity(dryFill)}. The refill seems to count the additive already.`,
  'oil/additive-exceeds-refill': ({ additive, volume, refill }, say) =>
    `${say.quantity(volume)} of “${additive}” is as much as the refill of ${say.quantity(refill)}. Look for a wrong unit.`,
  'oil/ambient-gap': ({ from, to }, say) =>
    `Between ${say.quantity(from)} and ${say.quantity(to)} no oil of this list is permitted. Look whether a band was misread.`,
  'oil/unknown-edition': ({ grade, system, edition, known }, say) =>
    `${system}, edition “${edition}”: the limits of ${grade} are not known here. Known editions: ${say.list(known)}.`,
  'oil/unknown-grade': ({ grade, system, others }, say) =>
    `${system} has no grade “${grade}”.${others.length === 0 ? '' : ` ${say.list(others)} ${others.length === 1 ? 'has' : 'have'} it.`}`,
  'oil/viscosity-outside-grade': ({ oil, grade, viscosity }, say) =>
    `${oil}: ${say.quantity(viscosity)} lies outside the grade ${grade}. Read the data sheet again.`,
  'fill/portion-larger-than-refill': ({ gearcase, portion, refill }, say) =>
    `${gearcase}: a portion of ${say.quantity(portion)} is more than the whole refill of ${say.quantity(refill)}. Look for a wrong unit.`,
  'fill/refill-larger-than-dry-fill': ({ gearcase, refill, dryFill }, say) =>
    `${gearcase}: the refill of ${say.quantity(refill)} is more than the dry fill of ${say.quantity(dryFill)}, though some oil always stays behind. Look whether the two were exchanged.`,
}
