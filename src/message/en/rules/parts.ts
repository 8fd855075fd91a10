import type { RoomRuleCodes } from '../../../rules/index.js'
import type { Texts } from '../../catalogue.js'

/** Rules on seals, oils and quantities. */
export const partRuleTexts: Texts<RoomRuleCodes<'seal' | 'oil' | 'fill'>> = {
  'seal/crush-washer-kept': ({ part }) =>
    `${part}: crush washer replaced only “on condition”. It hardens once crushed: fit a new one at every opening, or waive this with the manual's page.`,
  'seal/material-not-for-oil': ({ part, material }) =>
    `${part}: gear oil destroys ${material}. Check the parts list.`,
  'seal/o-ring-size-differs': ({ part, reason }, say) =>
    `${part}: number and size name two different rings. ${say.reason(reason)}`,
  'seal/washer-does-not-fit': ({ part, reason }, say) => `${part}: ${say.reason(reason)}`,
  'seal/none-at-opening': ({ part }) =>
    `${part}: no seal is listed. List the washer or the sealant, “none” where there is none, or “not stated” where the manual is silent.`,
  'seal/none-beside-seal': ({ part }) => `${part}: a seal and “none” are both listed. Remove one.`,
  'seal/none-on-parallel-thread': ({ part, thread }) =>
    `${part}: ${thread} is a parallel thread and does not seal by itself. List the washer; waive this for a plug with a metal cone.`,
  'oil/additive-counted-twice': ({ additive, volume, refill, dryFill }, say) =>
    `Refill ${say.quantity(refill)} plus ${say.quantity(volume)} of “${additive}” exceeds the dry fill of ${say.quantity(dryFill)}. The refill seems to include the additive.`,
  'oil/additive-exceeds-refill': ({ additive, volume, refill }, say) =>
    `${say.quantity(volume)} of “${additive}” is as much as the refill of ${say.quantity(refill)}. Check the unit.`,
  'oil/ambient-gap': ({ from, to }, say) =>
    `Between ${say.quantity(from)} and ${say.quantity(to)} no oil in this list is permitted. Check the bands.`,
  'oil/unknown-edition': ({ grade, system, edition, known }, say) =>
    `${system}, edition “${edition}”: limits of ${grade} unknown. Known editions: ${say.list(known)}.`,
  'oil/unknown-grade': ({ grade, system, others }, say) =>
    `${system} has no grade “${grade}”.${others.length === 0 ? '' : ` ${say.list(others)} ${others.length === 1 ? 'has' : 'have'} it.`}`,
  'oil/viscosity-outside-grade': ({ oil, grade, viscosity }, say) =>
    `${oil}: ${say.quantity(viscosity)} is outside grade ${grade}. Check the data sheet.`,
  'fill/portion-larger-than-refill': ({ gearcase, portion, refill }, say) =>
    `${gearcase}: portion ${say.quantity(portion)} exceeds the whole refill of ${say.quantity(refill)}. Check the unit.`,
  'fill/refill-larger-than-dry-fill': ({ gearcase, refill, dryFill }, say) =>
    `${gearcase}: refill ${say.quantity(refill)} exceeds dry fill ${say.quantity(dryFill)}, although some oil always stays in. Check whether the two were exchanged.`,
}
