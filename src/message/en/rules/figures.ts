import type { RoomRuleCodes } from '../../../rules/index.js'
import type { Texts } from '../../catalogue.js'

/** Rules on printed figures: second units, threads and torques. */
export const figureRuleTexts: Texts<RoomRuleCodes<'quantity' | 'thread' | 'torque'>> = {
  'quantity/interval-distances-differ': ({ first, second }, say) =>
    `${say.quantity(first)} and ${say.quantity(second)} are more than a tenth apart. Whichever comes earlier decides.`,
  'quantity/second-unit-disagrees': (params, say) =>
    say.reason({ code: `quantity/printed-figures-${params.how}`, params }),
  'quantity/second-unit-slip': (params, say) => say.reason({ code: 'quantity/printed-figures-slip', params }),
  'thread/designation-not-read': ({ thread, part, because }, say) =>
    `${part}: the thread “${thread}” cannot be read.${because === null ? '' : ` ${say.reason(because)}`}`,
  'torque/above-proof-load': ({ part, thread, propertyClass, torque, load, proof }, say) =>
    `${part}: ${say.quantity(torque)} would pull an ${thread} bolt of class ${propertyClass} with about ${say.quantity({ value: Math.round(load.value / 100) / 10, unit: 'kN' })}, and it bears ${say.quantity({ value: Math.round(proof.value / 100) / 10, unit: 'kN' })}. Look for a wrong unit or class.`,
  'torque/fill-and-drain-swapped': ({ gearcase, fill, drain }, say) =>
    `${gearcase}: ${say.quantity(fill)} at the fill plug and ${say.quantity(drain)} at the drain plug fit the other one's thread better. Look whether two lines were exchanged; waive this if the manual prints it so.`,
  'torque/slip-at-plug': ({ part, thread, torque, factor, becomes, meant }, say) =>
    `${part}: ${say.quantity(torque)} is far from what an ${thread} plug gets; ${factor} it would be ${say.quantity({ value: Number(becomes.value.toPrecision(3)), unit: becomes.unit })}.${meant === undefined ? '' : ` Perhaps the figure is in ${say.quantity({ value: '1', unit: meant }).replace(/^1\s*/, '')}.`} Look at the manual before anyone works to it.`,
  'torque/stages-not-rising': ({ part, before, step }, say) =>
    `${part}: ${say.quantity(step)} follows ${say.quantity(before)}. Each stage must be above the one before.`,
  'torque/turns-on-parallel-thread': ({ part, thread }) =>
    `${part}: ${thread} is a parallel thread, which stops on its washer. Turns past finger tight are for taper threads: they would strip it.`,
  'torque/turns-reversed': ({ part, min, max }) =>
    `${part}: at least ${min} turns and at most ${max} cannot both hold.`,
}
