import type { Param } from '../../base/index.js'
import type { FillCodes } from '../../fill/index.js'
import type { Say, Texts } from '../catalogue.js'
import { capitalize } from '../phrases.js'

function writeLimits({ min, max }: { min?: Param; max?: Param }, say: Say): string {
  if (min === undefined) return `at most ${say.quantity(max)}`
  return max === undefined ? `at least ${say.quantity(min)}` : `${say.quantity(min)} to ${say.quantity(max)}`
}

/** `0.09 L less than` or `0.09 L more than`: a minus sign in a sentence is easily missed. */
function writeDifference(
  { value, unit }: FillCodes['fill/refill-level-decides']['difference'],
  say: Say,
): string {
  const size = { value: Math.abs(Number(value)), unit }
  return `${say.quantity(size)} ${Number(value) < 0 ? 'less' : 'more'} than`
}

const METHOD_NAMES: Readonly<Record<string, string>> = {
  'to level hole': 'level hole',
  dipstick: 'dipstick',
  'sight glass': 'sight glass',
}

export const fillTexts: Texts<FillCodes> = {
  'fill/hose-not-below-funnel': () =>
    'The end of the hose is not below the funnel, so the hose never empties. Raise the funnel.',
  'fill/drop-longer-than-hose': ({ drop, length }, say) =>
    `The hose is ${say.quantity(length)} long, less than its drop of ${say.quantity(drop)}. Correct the toolbox.`,
  'fill/bore-wider-than-funnel': ({ bore, diameter }, say) =>
    `The bore of the hose, ${say.quantity(bore)}, is not smaller than the diameter of the funnel, ${say.quantity(diameter)}. Correct the toolbox.`,
  'fill/measure-outside-range': ({ name, given, min, max }, say) =>
    `${name} is ${say.quantity(given)}; the pouring time can be calculated only from ${say.quantity(min)} to ${say.quantity(max)}.`,
  'fill/flow-not-laminar': ({ reynolds, limit }, say) =>
    `The flow may not be laminar (Reynolds number ${say.number(reynolds, 0)}, limit ${say.number(limit)}), so no pouring time is calculated.`,
  'fill/entrance-longer-than-hose': ({ entrance, length }, say) =>
    `The flow becomes steady only after ${say.quantity(entrance)}, but the hose is ${say.quantity(length)} long, so no pouring time is calculated.`,
  'fill/funnel-too-small': ({ fillings, limit }, say) =>
    `The funnel must be filled ${say.number(fillings)} times (limit ${say.number(limit)}), so no pouring time is calculated. Use a larger funnel.`,
  'fill/flow-laminar': ({ reynolds, limit }, say) =>
    `The flow is laminar: Reynolds number ${say.number(reynolds, 1)}, limit ${say.number(limit)}.`,
  'fill/kinetic-correction': ({ seconds }, say) =>
    `Acceleration and the hose entrance add ${say.number(seconds, 1)} s.`,
  'fill/several-fillings': ({ fillings, funnel }, say) =>
    `The funnel holds ${say.quantity(funnel)} and is filled ${say.count(fillings, 'time', 'times')}, each time after it has run empty. It pours faster if you keep it topped up.`,
  'fill/hose-never-full': ({ hose }, say) =>
    `The hose holds ${say.quantity(hose)}, more than the amount poured, so it never fills.`,
  'fill/wall-film-not-counted': () =>
    'The oil film in the funnel and the hose is not included. Let it drip off.',
  'fill/fill-opening-closed': () =>
    'The fill plug is still in, so air cannot enter: no draining time is calculated. Take it out.',
  'fill/drain-is-the-only-opening': () =>
    'Air can enter only through the drain opening: no draining time is calculated.',
  'fill/breather-blocked': () => 'The breather is blocked. Clear it first.',
  'fill/breather-not-checked': () => 'The breather has not been checked. Make sure that it is clear.',
  'fill/drain-time-is-a-minimum': () => 'The draining time is a minimum: no gearcase drains faster.',
  'fill/wait-for-single-drips': () => 'Let it drain until it only drips.',
  'fill/no-containers': ({ short }, say) => `No suitable oil in stock. Get ${say.quantity(short)}.`,
  'fill/opened-first': ({ container, taken }, say) =>
    `Use ${say.quantity(taken)} from the opened ${container} first.`,
  'fill/containers-left-over': ({ oil, left }, say) =>
    `${say.quantity(left)} of ${oil} is left in the last container.`,
  'fill/containers-exact': ({ oil }) => `No ${oil} is left over.`,
  'fill/containers-short': ({ oil, short }, say) =>
    `Not enough ${oil} in stock: ${say.quantity(short)} short. Buy it.`,
  'fill/containers-not-searched-fully': ({ tried }, say) =>
    `Too many ways to combine the containers: the best of the first ${say.number(tried)} is used.`,
  'fill/other-oil-not-mixed': ({ oil, other }) => `${other} stays in stock: it is not mixed with ${oil}.`,
  'fill/no-vessel': () => 'There is no measuring jug. Get one.',
  'fill/vessel-too-coarse': ({ vessel, error, tolerance }, say) =>
    `${capitalize(vessel)} is not accurate enough: its error may be ${say.quantity(error)}; the limit is ${say.quantity(tolerance)}.`,
  'fill/vessel-without-marks': ({ vessel }) =>
    `${capitalize(vessel)} has no graduation marks. Correct the toolbox.`,
  'fill/vessel-too-large': ({ vessel, lowestMark }, say) =>
    `The amount is below the lowest mark of ${vessel}, ${say.quantity(lowestMark)}.`,
  'fill/vessel-too-many-pours': ({ vessel, limit }, say) =>
    `${capitalize(vessel)} must be filled more than ${say.number(limit)} times.`,
  'fill/vessel-accurate-enough': ({ vessel, error, tolerance }, say) =>
    `${capitalize(vessel)} measures to within ${say.quantity(error)}; the limit is ${say.quantity(tolerance)}.`,
  'fill/vessel-in-several-pours': ({ vessel, pours }, say) =>
    `Measure with ${vessel} in ${say.count(pours, 'pour', 'pours')}.`,
  'fill/tolerance-not-stated': ({ error }, say) =>
    `The manual states no tolerance for the refill. The best vessel measures to within ${say.quantity(error)}.`,
  'fill/no-pan': () => 'There is no drain pan. Get one.',
  'fill/pan-large-enough': ({ pan, total, size }, say) =>
    `${pan} holds ${say.quantity(size)}; this visit drains ${say.quantity(total)}.`,
  'fill/pan-nearly-full': ({ pan, percent }, say) =>
    `${pan} will be ${say.number(percent)} % full. Carry it with care, or empty it between drains.`,
  'fill/empty-pan-between-drains': ({ pan, total, size }, say) =>
    `This visit drains ${say.quantity(total)}; ${pan} holds ${say.quantity(size)}. Empty it between drains.`,
  'fill/pan-too-small': ({ largest, size }, say) =>
    `${say.quantity(largest)} drains at once; the largest pan holds ${say.quantity(size)}. Get a larger pan.`,
  'fill/refill-not-stated': () => 'The sheet states no refill quantity. See the manual.',
  'fill/refill-as-printed': ({ refilled, printed }, say) =>
    `Refilled ${say.quantity(refilled)}; the manual states ${say.quantity(printed)}.`,
  'fill/refill-inside-band': ({ refilled, ...band }, say) =>
    `Refilled ${say.quantity(refilled)}; the manual allows ${writeLimits(band, say)}.`,
  'fill/refill-outside-band': ({ refilled, min, max }, say) =>
    `Refilled ${say.quantity(refilled)}; the manual allows ${writeLimits({ ...(min && { min }), ...(max && { max }) }, say)}. Correct the quantity.`,
  'fill/refill-band-not-stated': ({ refilled, printed, difference }, say) =>
    `Refilled ${say.quantity(refilled)}, ${writeDifference(difference, say)} the ${say.quantity(printed)} that the manual states without a tolerance.`,
  'fill/refill-level-decides': ({ difference, method }, say) =>
    Number(difference.value) === 0
      ? `The ${METHOD_NAMES[method] ?? method} decides; exactly the stated quantity was refilled.`
      : `The ${METHOD_NAMES[method] ?? method} decides; ${writeDifference(difference, say)} the stated quantity was refilled.`,
  'fill/refill-far-off': ({ difference, percent, limit }, say) =>
    `Stop: ${writeDifference(difference, say)} the stated quantity was refilled (${say.number(percent, 0)} %; the limit is ${say.number(limit)} %). Check that the machine is level and that no old oil stayed in.`,
}
