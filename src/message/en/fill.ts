import type { Param } from '../../base/index.js'
import type { FillCodes } from '../../fill/index.js'
import type { Say, Texts } from '../catalogue.js'

function limits({ min, max }: { min?: Param; max?: Param }, say: Say): string {
  if (min === undefined) return `at most ${say.quantity(max)}`
  return max === undefined ? `at least ${say.quantity(min)}` : `${say.quantity(min)} to ${say.quantity(max)}`
}

/** `0.09 L less than` or `0.09 L more than`: a minus sign in a sentence is overlooked. */
function apart({ value, unit }: FillCodes['fill/refill-level-decides']['difference'], say: Say): string {
  const size = { value: Math.abs(Number(value)), unit }
  return `${say.quantity(size)} ${Number(value) < 0 ? 'less' : 'more'} than`
}

const METHODS: Readonly<Record<string, string>> = {
  'to level hole': 'level hole',
  dipstick: 'dipstick',
  'sight glass': 'sight glass',
}

export const fillTexts: Texts<FillCodes> = {
  'fill/hose-has-no-drop': () =>
    'The lower end of the hose is as high as the funnel’s floor, so the hose never runs empty. Raise the funnel.',
  'fill/drop-longer-than-hose': ({ drop, length }, say) =>
    `A hose of ${say.quantity(length)} cannot reach ${say.quantity(drop)} down. Correct the toolbox.`,
  'fill/bore-wider-than-funnel': ({ bore, diameter }, say) =>
    `The hose’s bore of ${say.quantity(bore)} is not smaller than the funnel, ${say.quantity(diameter)} across. Correct the toolbox.`,
  'fill/measure-outside-range': ({ name, given, min, max }, say) =>
    `${name} is ${say.quantity(given)}; pouring is worked out from ${say.quantity(min)} to ${say.quantity(max)}.`,
  'fill/flow-not-laminar': ({ reynolds, limit }, say) =>
    `The flow may not be laminar (Reynolds number ${say.number(reynolds, 0)}, limit ${say.number(limit)}), so no pouring time is given.`,
  'fill/entrance-longer-than-hose': ({ entrance, length }, say) =>
    `The flow settles only after ${say.quantity(entrance)}, and the hose is ${say.quantity(length)} long, so no pouring time is given.`,
  'fill/funnel-too-small': ({ fillings, limit }, say) =>
    `The funnel would have to be filled ${say.number(fillings)} times; beyond ${say.number(limit)} no pouring time is given. Take a larger funnel.`,
  'fill/flow-laminar': ({ reynolds, limit }, say) =>
    `The flow is laminar: Reynolds number ${say.number(reynolds, 1)}, limit ${say.number(limit)}.`,
  'fill/kinetic-correction': ({ seconds }, say) =>
    `Getting the oil moving and into the hose adds ${say.number(seconds, 1)} s.`,
  'fill/several-fillings': ({ fillings, funnel }, say) =>
    `The funnel holds ${say.quantity(funnel)} and is filled ${say.count(fillings, 'time', 'times')}, each time when it has just run empty. Kept topped up, it is faster.`,
  'fill/hose-never-full': ({ hose }, say) =>
    `The hose holds ${say.quantity(hose)}, more than is poured, so it is never full.`,
  'fill/wall-film-not-counted': () =>
    'Oil that clings to the walls of funnel and hose is not counted. Let it drip off.',
  'fill/fill-opening-not-out': () =>
    'The fill plug is still in: no air follows the oil, so no draining time is given. Take it out.',
  'fill/drain-is-the-only-opening': () =>
    'Air must come in where the oil goes out, so no draining time is given.',
  'fill/breather-blocked': () => 'The breather is blocked. Clear it first.',
  'fill/breather-not-checked': () => 'The breather has not been checked. Look whether it is clear.',
  'fill/drain-time-is-a-minimum': () => 'The draining time is a minimum: no gearcase empties faster.',
  'fill/wait-for-single-drips': () => 'Let it drain until only single drips fall.',
  'fill/no-containers': ({ short }, say) =>
    `No container of a suitable oil is on the shelf. Get ${say.quantity(short)}.`,
  'fill/opened-first': ({ container, taken }, say) =>
    `Take ${say.quantity(taken)} from the opened ${container} first.`,
  'fill/containers-left-over': ({ oil, left }, say) =>
    `${say.quantity(left)} of ${oil} is left over in the last container.`,
  'fill/containers-exact': ({ oil }) => `No ${oil} is left over.`,
  'fill/containers-short': ({ oil, short }, say) =>
    `The shelf lacks ${say.quantity(short)} of ${oil}. Buy it.`,
  'fill/containers-not-searched-fully': ({ tried }, say) =>
    `There are too many ways to combine the containers: after ${say.number(tried)} of them the best one so far was taken.`,
  'fill/other-oil-not-mixed': ({ oil, other }) => `${other} stays on the shelf: it is not mixed with ${oil}.`,
  'fill/no-vessel': () => 'There is no measuring vessel. Get one.',
  'fill/vessel-too-coarse': ({ vessel, error, tolerance }, say) =>
    `${vessel} is too coarse: it may be ${say.quantity(error)} off, and ${say.quantity(tolerance)} is allowed.`,
  'fill/vessel-without-marks': ({ vessel }) => `${vessel} has no marks to measure by. Correct the toolbox.`,
  'fill/vessel-too-large': ({ vessel, lowestMark }, say) =>
    `${vessel} has no mark for so little; its lowest is ${say.quantity(lowestMark)}.`,
  'fill/vessel-too-many-pours': ({ vessel, limit }, say) =>
    `${vessel} would have to be filled more than ${say.number(limit)} times.`,
  'fill/vessel-fine-enough': ({ vessel, error, tolerance }, say) =>
    `${vessel} measures it to ${say.quantity(error)}, and ${say.quantity(tolerance)} is allowed.`,
  'fill/vessel-in-several-pours': ({ vessel, pours }, say) =>
    `Measure with ${vessel} in ${say.count(pours, 'pour', 'pours')}.`,
  'fill/tolerance-not-stated': ({ error }, say) =>
    `The manual states no tolerance for the refill. The best vessel measures it to ${say.quantity(error)}.`,
  'fill/no-pan': () => 'There is no drain pan. Get one.',
  'fill/pan-large-enough': ({ pan, total, size }, say) =>
    `${pan} holds ${say.quantity(size)}, and ${say.quantity(total)} runs out at this visit.`,
  'fill/pan-nearly-full': ({ pan, percent }, say) =>
    `${pan} will be ${say.number(percent)} % full. Carry it with care, or empty it in between.`,
  'fill/pan-empty-between': ({ pan, total, size }, say) =>
    `${say.quantity(total)} runs out at this visit, and ${pan} holds ${say.quantity(size)}. Empty it in between.`,
  'fill/pan-too-small': ({ largest, size }, say) =>
    `${say.quantity(largest)} runs out at once, and the largest pan holds ${say.quantity(size)}. Get a larger pan.`,
  'fill/refill-not-stated': () => 'The manual does not state the refill: see the manual.',
  'fill/refill-as-printed': ({ refilled, printed }, say) =>
    `${say.quantity(refilled)} went in, and the manual states ${say.quantity(printed)}.`,
  'fill/refill-inside-band': ({ refilled, ...band }, say) =>
    `${say.quantity(refilled)} went in, and the manual allows ${limits(band, say)}.`,
  'fill/refill-outside-band': ({ refilled, min, max }, say) =>
    `${say.quantity(refilled)} went in, and the manual allows ${limits({ ...(min && { min }), ...(max && { max }) }, say)}. Correct it.`,
  'fill/refill-band-not-stated': ({ refilled, printed, difference }, say) =>
    `${say.quantity(refilled)} went in, ${apart(difference, say)} the ${say.quantity(printed)} that the manual states without a tolerance.`,
  'fill/refill-level-decides': ({ difference, method }, say) =>
    Number(difference.value) === 0
      ? `The ${METHODS[method] ?? method} decides; just the stated quantity went in.`
      : `The ${METHODS[method] ?? method} decides; ${apart(difference, say)} the stated quantity went in.`,
  'fill/refill-far-off': ({ difference, percent, limit }, say) =>
    `Stop: ${apart(difference, say)} the stated quantity went in (${say.number(percent, 0)} %, and ${say.number(limit)} % is the most). See whether the machine stands level and whether old oil stayed in.`,
  'fill/drained-not-judged': () => 'How much ran out is not judged: after suction some oil stays in.',
  'fill/drained-not-comparable': () => 'How much ran out cannot be compared: no quantity is stated.',
  'fill/drained-as-expected': ({ drained, expected }, say) =>
    `${say.quantity(drained)} ran out, and ${say.quantity(expected)} belongs in.`,
  'fill/drained-less': ({ drained, expected, percent }, say) =>
    `${say.quantity(drained)} ran out where ${say.quantity(expected)} belongs in, ${say.number(percent, 0)} % less. Look for leaks, and at the last refill, before filling.`,
  'fill/drained-more': ({ drained, expected, percent }, say) =>
    `${say.quantity(drained)} ran out where ${say.quantity(expected)} belongs in, ${say.number(percent, 0)} % more. Look whether water or other oil has come in.`,
}
