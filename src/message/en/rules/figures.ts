import type { RoomRuleCodes } from '../../../rules/index.js'
import type { Texts } from '../../catalogue.js'

/** Rules on printed figures: second units, threads and torques. */
export const figureRuleTexts: Texts<RoomRuleCodes<'quantity' | 'thread' | 'torque'>> = {
  'quantity/interval-distances-differ': ({ first, second }, say) =>
    `${say.quantity(first)} and ${say.quantity(second)} are more than a tenth apart. The earlier one decides.`,
  'quantity/second-unit-disagrees': (params, say) =>
    say.reason({ code: `quantity/printed-figures-${params.how}`, params }),
  'quantity/second-unit-slip': (params, say) => say.reason({ code: 'quantity/printed-figures-slip', params }),
  'thread/designation-not-read': ({ thread, part, because }, say) =>
    `${part}: the thread “${thread}” cannot be read.${because === null ? '' : ` ${say.reason(because)}`}`,
  'torque/above-proof-load': ({ part, thread, propertyClass, torque, load, proof }, say) =>
    `${part}: ${say.quantity(torque)} would load a bolt (${thread}, class ${propertyClass}) with about ${say.quantity({ value: Math.round(load.value / 100) / 10, unit: 'kN' })}; its proof load is ${say.quantity({ value: Math.round(proof.value / 100) / 10, unit: 'kN' })}. Check unit and class.`,
  'torque/fill-and-drain-swapped': ({ gearcase, fill, drain }, say) =>
    `${gearcase}: ${say.quantity(fill)} at the fill plug and ${say.quantity(drain)} at the drain plug fit each other's threads better. Check whether they were exchanged; waive this if the manual prints them so.`,
  'torque/slip-at-plug': ({ part, thread, torque, factor, becomes, meant }, say) =>
    `${part}: ${say.quantity(torque)} is unusual for a plug of thread ${thread}; ${factor} it is ${say.quantity({ value: Number(becomes.value.toPrecision(3)), unit: becomes.unit })}.${meant === undefined ? '' : ` The figure may be in ${say.quantity({ value: '1', unit: meant }).replace(/^1\s*/, '')}.`} Check the manual before anyone uses it.`,
  'torque/stages-not-rising': ({ part, before, step }, say) =>
    `${part}: ${say.quantity(step)} follows ${say.quantity(before)}. Each stage must be above the one before.`,
  'torque/turns-on-parallel-thread': ({ part, thread }) =>
    `${part}: ${thread} is a parallel thread. Turns past finger tight are for taper threads and would strip it.`,
  'torque/turns-reversed': ({ part, min, max }) =>
    `${part}: minimum ${min} turns exceeds maximum ${max}. Correct the sheet.`,
}
